// What the cloth looks like once threads are taken out: openings, bars between two of them, crossings at the ends of bars.
#pragma once

#include "cutwork/search.h"

namespace cutwork {

struct Pieces {
  std::vector<Opening> openings;  ///< by row, then column, of their topmost left crossing; so are the others
  std::vector<Bar> bars;
  std::vector<Crossing> crossings;
};

Pieces find_pieces(const Request& request, const Areas& areas, const std::vector<Taken>& taken, std::vector<Problem>& problems);

/// The corner holes of boxes that lie edge to edge, clockwise from the topmost left; a hole inside is not told.
std::vector<cloth::Hole> outline_of(const std::vector<cloth::Box>& boxes);

}  // namespace cutwork
