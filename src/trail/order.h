// In which order two rows worked turn about take their stitches: the laws of level pairs and of finishing a leg fix it completely.
#pragma once

#include <vector>

#include "stitch/kind.h"

namespace trail {

struct Slot {
  int run = 0, place = 0;
  bool over = false;  ///< the other row has none to offer there
};

/// Every stitch of both rows once, leg by leg: first what lies before the first level pair, then pairs, the first row's stitch first, then what is left.
std::vector<Slot> turn_about_order(const stitch::Run& first, const stitch::Run& second);

/// Does the stitch touch a corner of its row?
bool at_corner(const stitch::Run& row, int place, bool closed);

}  // namespace trail
