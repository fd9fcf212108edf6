// The map of cuttings: every block as a box with the number of its cutting beside the end that is cut, the threads that come out as bands.
// What does not fit on one picture is parted by areas, then into pieces side by side.
#pragma once

#include "picture/cut_ends.h"
#include "picture/window.h"

namespace picture {

struct CutMap {
  Picture picture;
  std::vector<int> numbers;  ///< cuttings that it shows, rising
};

/// As few maps as hold all numbers at a size that can be read, in order; `width` and `height` in mm.
std::vector<CutMap> cut_maps(const Sheet& sheet, const CutWork& work, double width, double height);

}  // namespace picture
