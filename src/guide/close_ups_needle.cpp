#include "guide/close_ups_needle.h"

#include <algorithm>
#include <cstdlib>

namespace guide {
namespace {

const stitch::Pass* pass_of(const course::Course& course, const PlacedTrail& trail) {
  const stitch::Work& work = course.parts[trail.part].work;
  if (trail.pass > work.passes_a_place() || trail.place >= work.places) return nullptr;
  return &work.pass(trail.pass, trail.place);
}

}  // namespace

Span common(const Span& a, const Span& b) { return {std::max(a.first, b.first), std::min(a.last, b.last)}; }

Needle::Needle(const course::Course& course, const PlacedTrail& trail) : trail_(&trail.trail) {
  const stitch::Pass* pass = pass_of(course, trail);
  if (!pass) return;
  turn_about_ = pass->order == stitch::Order::turn_about;
  scattered_ = pass->order == stitch::Order::scattered;
  single_row_ = stitch::stitch_by_stitch(*pass);
}

const trail::Worked& Needle::at(int stitch) const {
  const int n = size();
  const int k = stitch >= 0 && stitch < n ? stitch : (stitch % n + n) % n;
  return trail_->stitches[k];
}

Span Needle::block(int stitch) const {
  Span block{stitch, stitch};
  const int run = at(stitch).run;
  while (block.first > 0 && at(block.first - 1).run == run) --block.first;
  while (block.last + 1 < size() && at(block.last + 1).run == run) ++block.last;
  return block;
}

cloth::Way nearest_way(cloth::Hole step) {
  // A way is straight within 22.6 degrees (5 in 12) of an axis.
  const std::int64_t across = std::abs(step.x), down = std::abs(step.y);
  const int x = 12 * across <= 5 * down ? 0 : step.x > 0 ? 1 : -1;
  const int y = 12 * down <= 5 * across ? 0 : step.y > 0 ? 1 : -1;
  return cloth::way_between({0, 0}, {x, y}).value_or(cloth::Way::N);
}

int turn_eighths(cloth::Way from, cloth::Way to) {
  const int right = (static_cast<int>(to) - static_cast<int>(from) + 8) % 8;
  return right > 4 ? right - 8 : right;
}

}  // namespace guide
