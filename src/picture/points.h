// The needle's way through stitches of a trail, point by point, as they are numbered: odd where it comes up, even where it goes down.
#pragma once

#include <vector>

#include "picture/numbering.h"

namespace picture {

struct NeedlePoint {
  enum class Does {
    begins,  ///< the first point of all: the needle comes up
    up,
    down,
    loops,     ///< up on the ridge, over its own thread: the stitch is held
    old_down,  ///< on the ridge: a thread of looped stitches ends
    new_up,    ///< there the next one begins
    closes     ///< down on the ridge over the last loop
  };
  cloth::Hole hole;
  int number = 1;  ///< from 1
  int stitch = 0;  ///< at which it is
  int done = -1;   ///< the last stitch that lies on the cloth when the needle has been here
  Does does = Does::up;
  bool up() const { return number % 2 == 1; }
};

/// Of stitches first..last, in the order of their numbers.
std::vector<NeedlePoint> points_of(const trail::Trail& trail, int first, int last, Ending ending = Ending::left_out);

}  // namespace picture
