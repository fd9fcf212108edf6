#include "cloth/turn.h"

namespace cloth {

Hole apply(Turn turn, Hole h) {
  if (turn.mirror) h.x = -h.x;
  for (int i = 0; i < ((turn.quarters % 4) + 4) % 4; ++i) h = {-h.y, h.x};
  return h;
}

}  // namespace cloth
