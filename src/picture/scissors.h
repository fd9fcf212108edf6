// A pair of open scissors, as it lies where something is cut.
#pragma once

#include "list/list.h"
#include "picture/geometry.h"

namespace picture {

/// Sizes in threads of the cloth.
struct Blades {
  double length = 2.6;
  double spread = 0.26;  ///< of each blade from the middle, radians
};

/// Its points about `tip`, pointing along `way` (a unit); `unit`: mm a thread.
void draw_scissors(list::List& list, Point tip, Point way, double unit, Blades blades = {});

}  // namespace picture
