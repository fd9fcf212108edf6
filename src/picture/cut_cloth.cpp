#include "picture/cut_cloth.h"

#include <algorithm>
#include <cmath>

#include "picture/cut_marks.h"
#include "picture/grid.h"
#include "picture/ink.h"

namespace picture {
namespace {

constexpr double corner_radius = 1.6, letter_radius = 3.3;  // mm; the letter's for 13 pt
constexpr double off_side = 0.42;                           // threads from a block's last stitch to its fence

}  // namespace

CutCloth::CutCloth(const Sheet& sheet, const CutWork& work, const cloth::Box& window, double scale, int number)
    : sheet_(sheet), work_(work), view_(view_of(window, scale, sheet.voice.hand)), number_(number) {
  picture_.width = view_.width();
  picture_.height = view_.height();
  picture_.scale = scale;
  picture_.window = window;
  seen_ = stitches_in(sheet.course, sheet.plan, window.widened(1), {sheet.lesson.number, work.cut->item, -1, 0});
}

Rect CutCloth::rect(Point a, Point b) { return {std::min(a.x, b.x), std::min(a.y, b.y), std::abs(a.x - b.x), std::abs(a.y - b.y)}; }

void CutCloth::draw_ground() {
  add_panel(list(), list::Role::ground, view_.rect(), corner_radius, colour::white, 0, {});
  clip_in(list(), view_.rect(), corner_radius);
  draw_grid(list(), view_, sheet_.course.choices.line, grid_origin(sheet_.course));
  draw_gone_threads();
}

void CutCloth::draw_gone_threads() {
  for (const CutEnd& end : work_.ends) {
    if (end.number >= number_) break;
    if (end.opposite.empty() || end.opposite.front() < end.number || end.opposite.back() >= number_) continue;
    const Rect band = rect(at(end, 0, 0), at(end, end.snips(), end.length()));
    const Rect all = view_.rect();
    if (band.x >= all.w || band.y >= all.h || band.x + band.w <= 0 || band.y + band.h <= 0) continue;
    draw_gone(list(), band);
    use(Mark::gone);
  }
}

void CutCloth::draw_stitches() {
  const Rect inside = grown(view_.rect(), -0.4);
  for (const Stage stage : {Stage::later, Stage::before, Stage::now})
    for (const Seen& s : seen_) {
      if (s.stage != stage || !meet(inside, view_.capsule(s.stitch, 0.1))) continue;
      if (s.ridge) {
        draw_ridge(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, stage);
        continue;
      }
      draw_stitch(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, ratio::gap * view_.scale, stage, s.doubled);
      use(stage == Stage::later ? Mark::later : s.doubled ? Mark::before_double : stage == Stage::before ? Mark::before : Mark::now);
    }
}

/// Does another block go on at this side, with the same stitch?
bool CutCloth::shared(const cloth::Stitch& side, std::size_t block) const {
  const auto& blocks = work_.cut->blocks;
  for (std::size_t b = 0; b < blocks.size(); ++b)
    if (b != block &&
        std::any_of(blocks[b].stitches.begin(), blocks[b].stitches.end(), [&](const cloth::Stitch& s) { return s.normal() == side; }))
      return true;
  return false;
}

void CutCloth::draw_fences() {
  const auto& blocks = work_.cut->blocks;
  for (std::size_t b = 0; b < blocks.size(); ++b) {
    if (!even_block(blocks[b])) continue;
    const cloth::Box box = box_of(blocks[b]);
    if (box.x1 < view_.window.x0 || box.x0 > view_.window.x1 || box.y1 < view_.window.y0 || box.y0 > view_.window.y1) continue;
    const cloth::Stitch s = blocks[b].stitches.front().normal();
    const bool upright = s.a.x == s.b.x;
    for (const bool low : {true, false}) {
      const int side = upright ? (low ? box.x0 : box.x1) : low ? box.y0 : box.y1;
      const cloth::Stitch last = upright ? cloth::Stitch{{side, box.y0}, {side, box.y1}} : cloth::Stitch{{box.x0, side}, {box.x1, side}};
      if (shared(last.normal(), b)) continue;
      const double off = side + (low ? -off_side : off_side), in = 0.45;
      const Point a = upright ? view_.at(off, box.y0 + in) : view_.at(box.x0 + in, off);
      const Point c = upright ? view_.at(off, box.y1 - in) : view_.at(box.x1 - in, off);
      draw_fence(list(), a, c, view_.scale);
      use(Mark::fence);
    }
  }
}

void CutCloth::close(const std::string& letter) {
  clip_out(list());
  add_frame(list(), list::Role::frame, view_.rect(), corner_radius, 0.35, colour::ink);
  if (!letter.empty())
    draw_letter(list(), {0, 0}, letter_radius * sheet_.styles.letter.size_pt / 13, letter, sheet_.styles.letter, sheet_.measure);
}

}  // namespace picture
