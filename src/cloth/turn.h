// Turns by quarters and mirrors about the origin.
#pragma once

#include <array>

#include "cloth/hole.h"

namespace cloth {

/// Quarter turns clockwise, after an optional mirror left to right.
struct Turn {
  int quarters = 0;
  bool mirror = false;
  friend auto operator<=>(const Turn&, const Turn&) = default;
};

Hole apply(Turn turn, Hole h);
inline constexpr std::array<Turn, 4> quarter_turns{Turn{0, false}, Turn{1, false}, Turn{2, false}, Turn{3, false}};

}  // namespace cloth
