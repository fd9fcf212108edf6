// Further rows beside a line: every leg moved to one side, neighbouring legs cut or lengthened to where they meet (mitred).
#pragma once

#include <span>
#include <vector>

#include "cloth/hole.h"
#include "stitch/line.h"

namespace stitch {

enum class RowsLie { right, left };  ///< of the way the path goes

/// The corners of the row `by` threads to that side: square to a straight leg; straight up or down from a slanted one. Free ends move with
/// their leg. One more than the line has legs. A leg between two of them may have shrunk to nothing or less: see `along`.
std::vector<cloth::Hole> moved_row(const Line& line, RowsLie lie, int by);

/// How many threads lead from a to b along the way; less than 0 where they lie the other way.
int along(cloth::Way way, cloth::Hole a, cloth::Hole b);

/// The stitches of a row, legs in order, each over `over` threads from corner to corner.
std::vector<cloth::Stitch> row_stitches(const Line& line, const std::vector<cloth::Hole>& corners, int over);

}  // namespace stitch
