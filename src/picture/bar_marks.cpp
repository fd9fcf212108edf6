#include "picture/bar_marks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "picture/ink.h"
#include "picture/styles.h"

namespace picture {
namespace {

using list::Role;

constexpr double thread_wide = 0.30;  // threads of the cloth: a loop that is seen one by one
constexpr double cap_height = 0.727;  // of the type's size, by Inter's own measures

void draw_number_box(list::List& list, const Rect& room, list::TypeStyle style, const list::Measure& measure) {
  const Point middle{room.x + room.w / 2, room.y + room.h / 2};
  add_frame(list, Role::key_mark, {middle.x - 2.4, middle.y - 2, 4.8, 4}, 0, 0.35, colour::now);
  const double width = measure.measure("1", style).width;
  add_text(list, Role::key_mark, {middle.x - width / 2, middle.y + cap_height / 2 * em(style)}, "1", style, colour::ink);
}

}  // namespace

void draw_worked(list::List& list, const std::vector<Point>& points, double unit) {
  add_stroke(list, Role::key_mark, points, (thread_wide + 0.18) * unit, colour::white, list::Dash::none, list::Cap::flat);
  add_stroke(list, Role::key_mark, points, thread_wide * unit, colour::now);
}

void draw_hidden(list::List& list, const std::vector<Point>& points, double unit) {
  add_stroke(list, Role::key_mark, points, 0.14 * unit, colour::now, list::Dash::back, list::Cap::flat);
}

void draw_point(list::List& list, Point at, int number, list::TypeStyle style, const list::Measure& measure) {
  const bool up = number % 2 != 0;
  const std::string text = std::to_string(number);
  const double width = measure.measure(text, style).width, radius = std::max(0.62 * em(style), width / 2 + 0.26 * em(style));
  add_disc(list, Role::key_mark, at, radius + 0.25, colour::white);
  add_disc(list, Role::key_mark, at, radius, up ? colour::ink : colour::white, 0.35, colour::ink);
  add_text(list, Role::number, {at.x - width / 2, at.y + cap_height / 2 * em(style)}, text, style, up ? colour::white : colour::ink);
}

void draw_cloth_thread(list::List& list, Point a, Point b, double unit) {
  add_line(list, Role::ground, a, b, 0.62 * unit, colour::grid_fourth, list::Cap::flat);
  add_line(list, Role::ground, a, b, 0.50 * unit, colour::white, list::Cap::flat);
}

void draw_done(list::List& list, Point a, Point b, double unit) {
  add_line(list, Role::key_mark, a, b, 0.34 * unit, colour::before);
}

void draw_arrow(list::List& list, Point tip, Point way, double size) {
  const double all = length(way);
  if (all <= 0) return;
  const Point on = times(size / all, way), across = times(0.5, Point{-on.y, on.x}), foot = minus(tip, on);
  add_fill(list, Role::key_mark, {tip, plus(foot, across), minus(foot, across)}, colour::now);
}

void draw_picot(list::List& list, Point edge, Point out, double radius) {
  const double all = length(out);
  if (all <= 0) return;
  const Point on = times(radius / all, out), across{-on.y, on.x};
  std::vector<Point> dome;
  constexpr int steps = 12;
  for (int k = 0; k <= steps; ++k) {
    const double turn = std::numbers::pi * k / steps;
    dome.push_back(plus(edge, plus(times(std::sin(turn), on), times(std::cos(turn), across))));
  }
  add_fill(list, Role::key_mark, dome, colour::now);
}

void draw_thread_begins(list::List& list, Point at) {
  add_disc(list, Role::key_mark, at, 1.25, colour::white);
  add_disc(list, Role::key_mark, at, 0.95, colour::accent);
}

void draw_bar_mark_sign(list::List& list, Mark mark, const Rect& room, double unit, list::TypeStyle style, const list::Measure& measure) {
  const Point middle{room.x + room.w / 2, room.y + room.h / 2}, left{room.x, middle.y}, right{room.x + room.w, middle.y};
  switch (mark) {
    case Mark::bar_number: return draw_number_box(list, room, style, measure);
    case Mark::bar_way: return draw_arrow(list, {middle.x + 1.4, middle.y}, {1, 0}, 2.6);
    case Mark::stem:
      add_disc(list, Role::key_mark, {middle.x - 0.8, middle.y}, 1.5, colour::white, 0.35, colour::now);
      return add_line(list, Role::key_mark, {middle.x + 0.7, middle.y}, right, 0.35, colour::now);
    case Mark::picot:
      draw_picot(list, {middle.x, middle.y + 0.2}, {0, -1}, 1.3);
      return add_line(list, Role::key_mark, {middle.x - 2.2, middle.y + 0.2}, {middle.x + 2.2, middle.y + 0.2}, 0.35, colour::now);
    case Mark::thread_begins: return draw_thread_begins(list, middle);
    case Mark::point_up: return draw_point(list, middle, 1, style, measure);
    case Mark::point_down: return draw_point(list, middle, 2, style, measure);
    case Mark::worked_thread: return draw_worked(list, {left, right}, unit);
    default: return draw_hidden(list, {left, right}, unit);
  }
}

}  // namespace picture
