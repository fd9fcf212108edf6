// The mirror of the left hand: which side a side becomes.
#pragma once

#include "say/say.h"

namespace say {

inline guide::Side handed(guide::Side side, Hand hand) {
  if (hand == Hand::right) return side;
  if (side == guide::Side::left) return guide::Side::right;
  if (side == guide::Side::right) return guide::Side::left;
  return side;
}

inline cloth::Way handed(cloth::Way way, Hand hand) { return hand == Hand::left ? cloth::mirrored(way) : way; }

}  // namespace say
