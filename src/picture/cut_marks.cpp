#include "picture/cut_marks.h"

#include <algorithm>
#include <cmath>

#include "picture/bar_marks.h"
#include "picture/ink.h"
#include "picture/scissors.h"
#include "picture/styles.h"

namespace picture {
namespace {

using list::Role;

constexpr double cap_height = 0.727;  // of the type's size, by Inter's own measures

}  // namespace

void draw_hatch(list::List& list, const Rect& rect, double unit) {
  const double step = std::max(0.55 * unit, 0.7);
  for (double c = rect.x + rect.y + step / 2; c < rect.x + rect.w + rect.y + rect.h; c += step) {  // strokes on x + y = c
    const double x0 = std::max(rect.x, c - rect.y - rect.h), x1 = std::min(rect.x + rect.w, c - rect.y);
    if (x1 > x0) add_line(list, Role::caution, {x0, c - x0}, {x1, c - x1}, 0.05 * unit, colour::accent, list::Cap::flat);
  }
  add_frame(list, Role::caution, rect, 0, 0.06 * unit, colour::accent);
}

void draw_gone(list::List& list, const Rect& rect) { add_panel(list, Role::ground, rect, 0, colour::gone, 0, {}); }

void draw_snip(list::List& list, Point a, Point b, double unit) {
  add_line(list, Role::caution, a, b, 0.26 * unit, colour::accent, list::Cap::flat);
}

void draw_fence(list::List& list, Point a, Point b, double unit) {
  add_line(list, Role::key_mark, a, b, 0.10 * unit, colour::ink, list::Cap::flat);
  const double all = length(minus(b, a));
  if (all <= 0) return;
  const Point across = times(0.26 * unit / all, {a.y - b.y, b.x - a.x});
  const int posts = std::max(2, static_cast<int>(std::lround(all / unit)));
  for (int i = 0; i < posts; ++i) {
    const Point p = between(a, b, (i + 0.5) / posts);
    add_line(list, Role::key_mark, minus(p, across), plus(p, across), 0.10 * unit, colour::ink, list::Cap::flat);
  }
}

double cut_number_radius(const std::string& number, list::TypeStyle style, const list::Measure& measure) {
  return std::max(0.72 * em(style), measure.measure(number, style).width / 2 + 0.28 * em(style));
}

void draw_cut_number(list::List& list, Point middle, const std::string& number, list::TypeStyle style, const list::Measure& measure) {
  add_disc(list, Role::caution, middle, cut_number_radius(number, style, measure), colour::white, 0.3, colour::accent);
  const double width = measure.measure(number, style).width;
  add_text(list, Role::number, {middle.x - width / 2, middle.y + cap_height / 2 * em(style)}, number, style, colour::ink);
}

void draw_block_box(list::List& list, const Rect& rect) { add_panel(list, Role::key_mark, rect, 0.3, colour::white, 0.28, colour::before); }

void draw_cut_end(list::List& list, Point a, Point b) { add_line(list, Role::caution, a, b, 0.75, colour::accent, list::Cap::flat); }

void draw_woven_piece(list::List& list, Point a, Point b, double unit) { add_line(list, Role::caution, a, b, 0.30 * unit, colour::accent); }

void draw_woven_under(list::List& list, Point a, Point b, double unit) {
  add_stroke(list, Role::caution, {a, b}, 0.12 * unit, colour::accent, list::Dash::back, list::Cap::flat);
}

namespace {

void draw_number_sign(list::List& list, Mark mark, const Rect& room, list::TypeStyle style, const list::Measure& measure) {
  const Point middle{room.x + room.w / 2, room.y + room.h / 2};
  if (mark == Mark::cut_number) return draw_cut_number(list, middle, "1", style, measure);
  const Rect box{middle.x - room.h / 2 - 0.4, room.y - 0.4, room.h + 0.8, room.h + 0.4};
  draw_block_box(list, box);
  draw_cut_end(list, {box.x, box.y + box.h}, {box.x + box.w, box.y + box.h});
  const double width = measure.measure("1", style).width;
  add_text(list, Role::key_mark, {middle.x - width / 2, box.y + box.h / 2 + cap_height / 2 * em(style)}, "1", style, colour::ink);
}

}  // namespace

void draw_cut_mark_sign(list::List& list, Mark mark, const Rect& room, double unit, list::TypeStyle style, const list::Measure& measure) {
  const Point left{room.x, room.y + room.h / 2}, right{room.x + room.w, left.y};
  switch (mark) {
    case Mark::snip:
      draw_scissors(list, right, {1, 0}, 0.36 * unit, {5.2, 0.17});
      return draw_snip(list, {right.x - 0.8, right.y - 1.2}, {right.x - 0.8, right.y + 1.2}, unit * 0.8);
    case Mark::cut_thread:
      return draw_hatch(list, {room.x, room.y + 0.3, room.w, room.h - 0.6}, unit);
    case Mark::gone:
    case Mark::cut_band:
      return draw_gone(list, {room.x, room.y + 0.3, room.w, room.h - 0.6});
    case Mark::fence:
      return draw_fence(list, left, right, unit);
    case Mark::new_thread:
      for (const double t : {0.0, 0.38, 0.76}) draw_woven_piece(list, between(left, right, t), between(left, right, t + 0.24), unit);
      return;
    case Mark::old_end:
      return draw_woven_under(list, left, right, unit);
    case Mark::bar_number:
    case Mark::bar_way:
    case Mark::stem:
    case Mark::picot:
    case Mark::thread_begins:
    case Mark::point_up:
    case Mark::point_down:
    case Mark::worked_thread:
    case Mark::hidden_thread:
      return draw_bar_mark_sign(list, mark, room, unit, style, measure);
    default:
      return draw_number_sign(list, mark, room, style, measure);
  }
}

std::string_view cut_mark_key(Mark mark) {
  switch (mark) {
    case Mark::snip:
      return "page.key.snip";
    case Mark::cut_thread:
      return "page.key.cut-thread";
    case Mark::gone:
      return "page.key.gone";
    case Mark::cut_band:
      return "page.key.cut-band";
    case Mark::fence:
      return "page.key.fence";
    case Mark::cut_number:
      return "page.key.cut-number";
    case Mark::block_number:
      return "page.key.block-number";
    case Mark::new_thread:
      return "page.key.new-thread";
    case Mark::old_end:
      return "page.key.old-end";
    case Mark::bar_number:
      return "page.key.bar-number";
    case Mark::bar_way:
      return "page.key.bar-way";
    case Mark::stem:
      return "page.key.stem";
    case Mark::picot:
      return "page.key.picot";
    case Mark::thread_begins:
      return "page.key.thread-begins";
    case Mark::point_up:
      return "page.key.point-up";
    case Mark::point_down:
      return "page.key.point-down";
    case Mark::worked_thread:
      return "page.key.worked-thread";
    case Mark::hidden_thread:
      return "page.key.hidden-thread";
    default:
      return {};
  }
}

}  // namespace picture
