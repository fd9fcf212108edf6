// The thread on the back as a broken line: straight from hole to hole, bowed out beside where it would lie under a stitch or through a
// mark.
#pragma once

#include <vector>

#include "cloth/hole.h"
#include "picture/view.h"

namespace picture {

/// What a line on the back must not be hidden by.
struct BackGround {
  std::vector<cloth::Stitch> stitches;  ///< front stitches that are drawn
  std::vector<cloth::Hole> marks;       ///< holes with a mark
};

/// The line in mm over these holes, its ends drawn back to the edge of the marks.
std::vector<Point> back_line(const std::vector<cloth::Hole>& way, const View& view, const BackGround& ground);

}  // namespace picture
