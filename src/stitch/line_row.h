// One row of stitches along a line, and what a student finds of it: corners, free ends, legs.
#pragma once

#include <vector>

#include "stitch/kind.h"
#include "stitch/line.h"

namespace stitch {

/// One row: its corner holes, one more than legs, and its stitches.
struct Row {
  std::vector<cloth::Hole> corners;
  std::vector<cloth::Stitch> stitches;
  std::vector<int> legs;            ///< of each stitch
  std::vector<std::size_t> begins;  ///< first stitch of each leg, and the number of stitches at the end
};

/// `corners` as moved_row gives them; each stitch crosses `over` threads.
Row make_row(const Line& line, std::vector<cloth::Hole> corners, int over);
/// Corners and free ends of row `number`, by their stitches.
void add_features(Work& work, const Line& line, const Row& row, int number);
/// Its legs, to be counted.
void add_legs(Work& work, const Line& line, const Row& row, int number);

}  // namespace stitch
