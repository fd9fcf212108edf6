// A pair of open scissors, as it lies where something is cut.
#pragma once

#include "list/list.h"
#include "picture/geometry.h"
#include "picture/styles.h"

namespace picture {

/// Sizes in threads of the cloth.
struct Blades {
  double length = 2.6;
  double spread = 0.26;  ///< of each blade from the middle, radians
};

struct ScissorsColours {
  list::Colour steel = colour::accent, within = colour::white;  ///< within the rings
};

/// Its points about `tip`, pointing along `way` (a unit); `unit`: mm a thread.
void draw_scissors(list::List& list, Point tip, Point way, double unit, Blades blades = {}, ScissorsColours colours = {});

}  // namespace picture
