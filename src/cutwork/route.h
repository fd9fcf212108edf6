// The order in which bars are worked: every bar once, from its end on to the next one behind the crossing where both end, at a right angle
// wherever there is a bar to turn into (staircase order, common practice, no source).
#pragma once

#include "cutwork/cutting.h"

namespace cutwork {

struct BarStep {
  int bar = 0;
  bool from_low = true;   ///< worked from its left or upper end to the other
  int behind = -1;        ///< the crossing behind which the thread comes from the bar before; -1: a new thread begins
  bool straight = false;  ///< the bar before lies in one line with this one
  friend bool operator==(const BarStep&, const BarStep&) = default;
};

/// The fewest threads there can be, and with them the fewest steps straight on. A thread goes on only where two bars end at one crossing,
/// so each piece that hangs together needs half as many threads as it has crossings and block ends with an odd number of bars, one at
/// least. Time grows with the bars.
[[nodiscard]] std::vector<BarStep> bar_route(const std::vector<Bar>& bars, int crossings);

}  // namespace cutwork
