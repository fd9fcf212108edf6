#include "picture/ink.h"

#include <utility>

namespace picture {
namespace {

template <class T>
T& added(list::List& list, list::Role role) {
  list::Item& item = list.items.emplace_back();
  item.role = role;
  return item.what.emplace<T>();
}

struct Move {
  Point by;
  void operator()(list::Stroke& s) const {
    for (Point& p : s.points) p = plus(p, by);
  }
  void operator()(list::Fill& f) const {
    for (Point& p : f.points) p = plus(p, by);
  }
  void operator()(list::Disc& d) const { d.centre = plus(d.centre, by); }
  void operator()(list::Panel& p) const { p.rect = moved(p.rect, by); }
  void operator()(list::Text& t) const { t.at = plus(t.at, by); }
  void operator()(list::ClipIn& c) const { c.rect = moved(c.rect, by); }
  void operator()(list::ClipOut&) const {}
};

}  // namespace

void add_line(list::List& list, list::Role role, Point a, Point b, double width, list::Colour colour, list::Cap cap) {
  add_stroke(list, role, {a, b}, width, colour, list::Dash::none, cap);
}

void add_stroke(list::List& list, list::Role role, std::vector<Point> points, double width, list::Colour colour, list::Dash dash,
                list::Cap cap) {
  auto& stroke = added<list::Stroke>(list, role);
  stroke.points = std::move(points);
  stroke.width = width;
  stroke.colour = colour;
  stroke.dash = dash;
  stroke.cap = cap;
}

void add_outline(list::List& list, list::Role role, std::vector<Point> points, double width, list::Colour colour) {
  add_stroke(list, role, std::move(points), width, colour);
  std::get<list::Stroke>(list.items.back().what).closed = true;
}

void add_fill(list::List& list, list::Role role, std::vector<Point> points, list::Colour colour) {
  auto& fill = added<list::Fill>(list, role);
  fill.points = std::move(points);
  fill.colour = colour;
}

void add_disc(list::List& list, list::Role role, Point centre, double radius, list::Colour fill, double line, list::Colour line_colour) {
  added<list::Disc>(list, role) = {centre, radius, fill, line, line_colour};
}

void add_panel(list::List& list, list::Role role, const Rect& rect, double radius, list::Colour fill, double line,
               list::Colour line_colour) {
  added<list::Panel>(list, role) = {rect, radius, true, fill, line, line_colour};
}

void add_frame(list::List& list, list::Role role, const Rect& rect, double radius, double line, list::Colour line_colour) {
  added<list::Panel>(list, role) = {rect, radius, false, {}, line, line_colour};
}

void add_text(list::List& list, list::Role role, Point at, std::string text, list::TypeStyle style, list::Colour colour,
              list::Align align) {
  auto& type = added<list::Text>(list, role);
  type.at = at;
  type.text = std::move(text);
  type.style = style;
  type.align = align;
  type.colour = colour;
}

void clip_in(list::List& list, const Rect& rect, double radius) { added<list::ClipIn>(list, list::Role::frame) = {rect, radius}; }
void clip_out(list::List& list) { added<list::ClipOut>(list, list::Role::frame); }

void put(list::List& page, const list::List& picture, Point by) {
  page.items.reserve(page.items.size() + picture.items.size());
  for (const list::Item& item : picture.items) {
    page.items.push_back(item);
    std::visit(Move{by}, page.items.back().what);
  }
  for (list::Place place : picture.places) {
    place.rect = moved(place.rect, by);
    page.places.push_back(std::move(place));
  }
  for (const list::Jump& jump : picture.jumps) page.jumps.push_back({moved(jump.rect, by), jump.to});
}

}  // namespace picture
