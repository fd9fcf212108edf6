// One small function for each kind of item. Nothing is chosen here: what has no width, no points or no letters leaves no mark.
#include "paint/cairo/play.h"

#include <algorithm>
#include <numbers>

#include "base/require.h"
#include "list/bounds.h"
#include "list/dashes.h"

namespace paint {

namespace {

void set_colour(cairo_t* cr, list::Colour c) { cairo_set_source_rgb(cr, c.r / 255.0, c.g / 255.0, c.b / 255.0); }

void trace(cairo_t* cr, const std::vector<list::Point>& points) {
  cairo_new_path(cr);
  for (const list::Point& p : points) cairo_line_to(cr, p.x, p.y);
}

void trace_panel(cairo_t* cr, const list::Rect& r, double radius) {
  constexpr double quarter = std::numbers::pi / 2;
  const double round = std::clamp(radius, 0.0, std::max(0.0, std::min(r.w, r.h) / 2));
  cairo_new_path(cr);
  if (round <= 0) return cairo_rectangle(cr, r.x, r.y, r.w, r.h);
  cairo_arc(cr, r.x + r.w - round, r.y + round, round, -quarter, 0);
  cairo_arc(cr, r.x + r.w - round, r.y + r.h - round, round, 0, quarter);
  cairo_arc(cr, r.x + round, r.y + r.h - round, round, quarter, 2 * quarter);
  cairo_arc(cr, r.x + round, r.y + round, round, 2 * quarter, 3 * quarter);
  cairo_close_path(cr);
}

void outline(cairo_t* cr, double width, list::Colour colour) {
  if (width <= 0) return cairo_new_path(cr);
  set_colour(cr, colour);
  cairo_set_line_width(cr, width);
  cairo_set_dash(cr, nullptr, 0, 0);
  cairo_stroke(cr);
}

void set_dash(cairo_t* cr, const list::Stroke& s) {
  if (s.dash == list::Dash::none) return cairo_set_dash(cr, nullptr, 0, 0);
  const list::Dashes dashes = list::dashes(s.width, s.cap);
  const double lengths[] = {dashes.on, dashes.off};
  cairo_set_dash(cr, lengths, 2, 0);
}

struct Player {
  cairo_t* cr;
  const Type::Inside& type;
  Lettering lettering;
  int clips = 0;

  void operator()(const list::Stroke& s) {
    if (s.points.empty() || s.width <= 0) return;
    trace(cr, s.points);
    if (s.points.size() == 1) cairo_line_to(cr, s.points[0].x, s.points[0].y);
    if (s.closed) cairo_close_path(cr);
    set_colour(cr, s.colour);
    cairo_set_line_width(cr, s.width);
    cairo_set_line_cap(cr, s.cap == list::Cap::round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    set_dash(cr, s);
    cairo_stroke(cr);
  }
  void operator()(const list::Fill& f) {
    trace(cr, f.points);
    cairo_close_path(cr);
    set_colour(cr, f.colour);
    cairo_fill(cr);
  }
  void operator()(const list::Disc& d) {
    cairo_new_path(cr);
    cairo_arc(cr, d.centre.x, d.centre.y, std::max(0.0, d.radius), 0, 2 * std::numbers::pi);
    cairo_close_path(cr);
    set_colour(cr, d.fill);
    cairo_fill_preserve(cr);
    outline(cr, d.line, d.line_colour);
  }
  void operator()(const list::Panel& p) {
    trace_panel(cr, p.rect, p.radius);
    set_colour(cr, p.fill);
    if (p.filled) cairo_fill_preserve(cr);
    outline(cr, p.line, p.line_colour);
  }
  void operator()(const list::Text& t) {
    if (t.text.empty()) return;
    const Line line = set_line(type, t.text, t.style);
    set_colour(cr, t.colour);
    show_line(cr, line, {list::left_end(t, line.width), t.at.y}, lettering);
  }
  void operator()(const list::ClipIn& c) {
    cairo_save(cr);
    trace_panel(cr, c.rect, c.radius);
    cairo_clip(cr);
    ++clips;
  }
  void operator()(const list::ClipOut&) {
    base::require(clips > 0, "a clip ends that never began");
    cairo_restore(cr);
    --clips;
  }
};

}  // namespace

void play(cairo_t* cr, const list::List& list, const Type::Inside& type, Lettering lettering) {
  Player player{cr, type, lettering};
  cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
  for (const list::Item& item : list.items) std::visit(player, item.what);
  base::require(player.clips == 0, "every clip ends");
}

}  // namespace paint
