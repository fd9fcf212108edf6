// What a needle order is made of: stitches of one run that stay together. In a row every stitch is a unit of its own; a block is one unit.
// The order of units is laid down by the laws; what is left free is the way each is worked (see links.h).
#pragma once

#include <cstddef>
#include <vector>

#include "stitch/kind.h"

namespace trail {

struct Unit {
  int run = 0;
  int first = 0, count = 1;  ///< stitches of the run
  int leg = 0;
  bool each_way = true;      ///< a single stitch that may be a step back; else stitches all alike
  bool over = false;         ///< worked at a corner because the other row has none to offer there
  int from_corner = 0;       ///< in rows worked turn about: stitches between it and the nearest corner or end of its row
  bool beside_over = false;  ///< next in needle order to one that is over
};

using Units = std::vector<Unit>;
inline constexpr int far_from_corner = 1000;

/// Two rows worked turn about, in the order of laws 5 and 6: leg by leg; on a leg what lies before the first level pair, then pair by pair,
/// then what a row has left.
Units turn_about(const stitch::Pass& pass);

/// One run after another, as listed.
Units in_turn(const stitch::Pass& pass);

/// Fills in `from_corner` and `beside_over`, for rows worked turn about.
void mark_corners(const stitch::Pass& pass, Units& units);

/// The unit of a circle that lies farthest from any corner; in rows worked turn about one of the first row. Of equals the first.
std::size_t quietest(const stitch::Pass& pass, const Units& units);

}  // namespace trail
