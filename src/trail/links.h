// How each unit may be worked, and what that costs: by itself and after the unit before it.
#pragma once

#include "trail/clear.h"
#include "trail/cost.h"
#include "trail/trail.h"
#include "trail/unit.h"

namespace trail {

/// A way of working a unit. A single stitch has two: forward, backward. Stitches all alike have four: in their order a to b, b to a, then
/// in the reversed order. Fixed ones have one. Of equals the lower one is taken, so forward comes first.
using Way = std::uint8_t;
inline constexpr int most_ways = 4;

class Links {
 public:
  /// Keeps references to all three.
  Links(const stitch::Pass& pass, const Units& units, const Rules& rules);
  std::size_t size() const { return units_.size(); }
  bool closed() const { return pass_.closed; }
  int ways(std::size_t unit) const {
    return units_[unit].each_way ? 2 : run(unit).freedom == stitch::Freedom::all_alike ? most_ways : 1;
  }
  /// The i-th stitch as worked: up at a, down at b.
  cloth::Stitch worked(std::size_t unit, Way way, int i) const;
  /// Its place in the run.
  int place(std::size_t unit, Way way, int i) const;
  Cost own(std::size_t unit, Way way) const;
  Cost link(std::size_t unit, Way way, std::size_t next, Way next_way) const;

 private:
  Cost back(cloth::Hole from, cloth::Hole to) const;
  Cost own_in_row(const Unit& unit, Way way) const;
  Cost own_all_alike(std::size_t unit, Way way) const;
  const stitch::Run& run(std::size_t unit) const { return pass_.runs[static_cast<std::size_t>(units_[unit].run)]; }

  const stitch::Pass& pass_;
  const Units& units_;
  Clear clear_;
  std::vector<cloth::Box> boxes_;  ///< of each run whose stitches are all alike
};

}  // namespace trail
