#include "trail/links.h"

#include <algorithm>

namespace trail {
namespace {

constexpr double finest = 1e6;  // parts of a thread in which back thread is compared

std::int64_t thread(cloth::Hole from, cloth::Hole to) { return static_cast<std::int64_t>(cloth::distance(from, to) * finest + 0.5); }

cloth::Box box_of(const stitch::Run& run) {
  if (run.stitches.empty()) return {};
  const cloth::Hole first = run.stitches[0].a;
  cloth::Box box{first.x, first.y, first.x, first.y};
  for (const cloth::Stitch& stitch : run.stitches) {
    box.grow(stitch.a);
    box.grow(stitch.b);
  }
  return box;
}

struct Fraction {
  std::int64_t over = 1, under = 1;  ///< under > 0
  friend bool operator<=(Fraction a, Fraction b) { return a.over * b.under <= b.over * a.under; }
};

/// Along one axis, where thread from `from` to `to` leaves the span it begins in and enters the one it ends in.
struct Passage {
  Fraction leaves{1, 1}, enters{0, 1};
};
Passage passage(std::int64_t from, std::int64_t to, int first_low, int first_high, int second_low, int second_high) {
  const std::int64_t way = to - from;
  if (way > 0) return {{first_high - from, way}, {second_low - from, way}};
  if (way < 0) return {{from - first_low, -way}, {from - second_high, -way}};
  return {};
}

/// Does straight thread from a hole of the first box to a hole of the second stay within the two?
bool stays_within(cloth::Hole from, cloth::Hole to, cloth::Box first, cloth::Box second) {
  const Passage x = passage(from.x, to.x, first.x0, first.x1, second.x0, second.x1);
  const Passage y = passage(from.y, to.y, first.y0, first.y1, second.y0, second.y1);
  const Fraction start{0, 1}, end{1, 1};
  for (const Fraction enters : {x.enters, y.enters, start})
    for (const Fraction leaves : {x.leaves, y.leaves, end})
      if (!(enters <= leaves)) return false;
  return true;
}

}  // namespace

Links::Links(const stitch::Pass& pass, const Units& units, const Rules& rules) : pass_(pass), units_(units), clear_(rules.keep_clear) {
  boxes_.resize(pass.runs.size());
  for (std::size_t r = 0; r < pass.runs.size(); ++r)
    if (pass.runs[r].freedom == stitch::Freedom::all_alike) boxes_[r] = box_of(pass.runs[r]);
}

int Links::place(std::size_t unit, Way way, int i) const {
  const Unit& u = units_[unit];
  const bool reversed = !u.each_way && way >= 2;
  return u.first + (reversed ? u.count - 1 - i : i);
}

cloth::Stitch Links::worked(std::size_t unit, Way way, int i) const {
  const cloth::Stitch stitch = run(unit).stitches[static_cast<std::size_t>(place(unit, way, i))];
  return way % 2 == 0 ? stitch : stitch.reversed();
}

Cost Links::back(cloth::Hole from, cloth::Hole to) const {
  Cost cost;
  cost.broken = from == to;
  cost.crossing = clear_.crossed(from, to);
  cost.thread = thread(from, to);
  return cost;
}

Cost Links::own_in_row(const Unit& unit, Way way) const {
  Cost cost;
  if (way == 0) return cost;
  cost.steps_back = 1;
  cost.off_corner = unit.from_corner;
  cost.far_back = unit.from_corner > 0 && !unit.over && !unit.beside_over;
  return cost;
}

Cost Links::own_all_alike(std::size_t unit, Way way) const {
  Cost cost;
  for (int i = 1; i < units_[unit].count; ++i) cost += back(worked(unit, way, i - 1).b, worked(unit, way, i).a);
  const stitch::DownSide down = way % 2 == 0 ? stitch::DownSide::b : stitch::DownSide::a;
  if (run(unit).down != stitch::DownSide::none && run(unit).down != down) cost.wrong_side = units_[unit].count;
  return cost;
}

Cost Links::own(std::size_t unit, Way way) const {
  return units_[unit].each_way ? own_in_row(units_[unit], way) : own_all_alike(unit, way);
}

Cost Links::link(std::size_t unit, Way way, std::size_t next, Way next_way) const {
  const cloth::Hole from = worked(unit, way, units_[unit].count - 1).b, to = worked(next, next_way, 0).a;
  Cost cost = back(from, to);
  const auto alike = [&](std::size_t u) { return run(u).freedom == stitch::Freedom::all_alike; };
  if (!alike(unit) || !alike(next)) return cost;
  cost.showing =
      !stays_within(from, to, boxes_[static_cast<std::size_t>(units_[unit].run)], boxes_[static_cast<std::size_t>(units_[next].run)]);
  return cost;
}

}  // namespace trail
