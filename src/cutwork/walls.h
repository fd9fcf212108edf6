// Blocks as walls on the lines of the cloth: for each row and column of crossings, which stretches lie under stitches, and where the end of
// such a stretch holds a cut thread.
#pragma once

#include <vector>

#include "cutwork/cutting.h"

namespace cutwork {

/// A stretch of one line (row of Axis::h, column of Axis::v). Without length it is a barrier on the line between two crossings.
struct Wall {
  int line = 0, from = 0, to = 0;
  int block = -1;                             ///< -1: closes a gap, holds nothing
  bool holds_from = false, holds_to = false;  ///< would a thread cut there stay held by the stitches within?
};

struct Walls {
  std::vector<Wall> rows, columns;
  std::vector<cloth::Box> boxes;  ///< of each block
  std::vector<Axis> grains;       ///< which way each block's stitches run
};

Walls walls_of(const std::vector<Bundle>& blocks);

}  // namespace cutwork
