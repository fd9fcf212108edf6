#include "picture/marks.h"

#include <algorithm>

#include "picture/ink.h"
#include "picture/styles.h"

namespace picture {
namespace {

list::Role role_of(Stage stage) {
  switch (stage) {
    case Stage::now:
      return list::Role::stitch_now;
    case Stage::before:
      return list::Role::stitch_before;
    case Stage::later:
      return list::Role::stitch_later;
  }
  return list::Role::stitch_later;
}

list::Colour colour_of(Stage stage) {
  switch (stage) {
    case Stage::now:
      return colour::now;
    case Stage::before:
      return colour::before;
    case Stage::later:
      return colour::later;
  }
  return colour::later;
}

/// The middle line of a stitch drawn back at both ends; never shorter than a fifth.
std::vector<Point> drawn_back(Point a, Point b, double by) {
  const double all = length(minus(b, a));
  const double part = all > 0 ? std::min(by / all, 0.4) : 0;
  return {between(a, b, part), between(b, a, part)};
}

void square(list::List& list, list::Role role, Point at, double half, list::Colour fill, double line) {
  add_panel(list, role, {at.x - half, at.y - half, 2 * half, 2 * half}, 0, fill, line, colour::ink);
}

}  // namespace

void Uses::add(const Uses& other) {
  marks.insert(other.marks.begin(), other.marks.end());
  if (both_example.empty()) both_example = other.both_example;
  often = often || other.often;
  many.insert(many.end(), other.many.begin(), other.many.end());
}

Capsule drawn_stitch(Point a, Point b, double width, double gap) {
  const std::vector<Point> line = drawn_back(a, b, gap + width / 2);
  return {line[0], line[1], width / 2};
}

void draw_stitch(list::List& list, Point a, Point b, double width, double gap, Stage stage, bool doubled) {
  const std::vector<Point> line = drawn_back(a, b, gap + width / 2);
  add_stroke(list, role_of(stage), line, width, colour_of(stage));
  if (doubled) add_stroke(list, role_of(stage), line, width * 0.36, colour::white, list::Dash::none, list::Cap::flat);
}

void draw_ridge(list::List& list, Point a, Point b, double width, Stage stage) { add_stroke(list, role_of(stage), {a, b}, width, colour_of(stage)); }

void draw_landmark(list::List& list, Point a, Point b, double width, double gap) {
  add_stroke(list, list::Role::landmark, drawn_back(a, b, gap + width / 2), width, colour::accent);
}

void draw_hole(list::List& list, Point at, HoleUse use, double unit) {
  const double r = ratio::dot * unit, line = 0.09 * unit;
  switch (use) {
    case HoleUse::up:
      add_disc(list, list::Role::hole_up, at, r, colour::ink);
      return;
    case HoleUse::down:
      add_disc(list, list::Role::hole_down, at, r - line / 2, colour::white, line, colour::ink);
      return;
    case HoleUse::both:
      add_disc(list, list::Role::hole_both, at, 0.31 * unit, colour::white, 0.06 * unit, colour::ink);
      add_disc(list, list::Role::hole_both, at, 0.19 * unit, colour::ink);
      return;
    case HoleUse::twice_up:
      square(list, list::Role::hole_up, at, 0.25 * unit, colour::ink, 0);
      return;
    case HoleUse::twice_down:
      square(list, list::Role::hole_down, at, 0.21 * unit, colour::white, line);
      return;
  }
}

void draw_back(list::List& list, const std::vector<Point>& points, double unit) {
  add_stroke(list, list::Role::back_thread, points, ratio::back * unit, colour::now, list::Dash::back, list::Cap::flat);
}

void draw_proof(list::List& list, Point at, double radius) {
  const std::vector<Point> corners{{at.x, at.y - radius}, {at.x + radius, at.y}, {at.x, at.y + radius}, {at.x - radius, at.y}};
  add_fill(list, list::Role::landmark, corners, colour::white);
  add_outline(list, list::Role::landmark, corners, radius * 0.3, colour::accent);
}

void draw_one_of_many(list::List& list, Point at) { add_disc(list, list::Role::map_mark, at, 0.62, colour::white, 0.3, colour::ink); }

void draw_corner_mark(list::List& list, Point at) {
  constexpr double half = 0.8;
  add_line(list, list::Role::map_mark, {at.x - half, at.y - half}, {at.x + half, at.y + half}, 0.4, colour::ink);
  add_line(list, list::Role::map_mark, {at.x - half, at.y + half}, {at.x + half, at.y - half}, 0.4, colour::ink);
}

void draw_letter(list::List& list, Point middle, double radius, const std::string& letter, list::TypeStyle style,
                 const list::Measure& measure) {
  add_disc(list, list::Role::letter, middle, radius, colour::ink);
  const double width = measure.measure(letter, style).width;
  add_text(list, list::Role::letter, {middle.x - width / 2, middle.y + 0.365 * em(style)}, letter, style, colour::white);
}

}  // namespace picture
