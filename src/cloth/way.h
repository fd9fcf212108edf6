// The eight ways across the cloth. N is up the chart.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "cloth/hole.h"

namespace cloth {

enum class Way { N, NE, E, SE, S, SW, W, NW };

inline constexpr std::array<Way, 8> all_ways{Way::N, Way::NE, Way::E, Way::SE, Way::S, Way::SW, Way::W, Way::NW};

/// One step that way: (0,-1) for N, (1,-1) for NE, ...
Hole step(Way way);
bool slanted(Way way);
/// The way after n turns of 45 degrees to the right (clockwise on the chart); n may be negative.
Way turned(Way way, int eighths);
std::string_view name(Way way);  ///< "N", "NE", ...
std::optional<Way> parse_way(std::string_view text);
/// The way from a to b where it is one of the eight.
std::optional<Way> way_between(Hole a, Hole b);
/// E and W swapped (and NE, NW ...): the chart seen in a mirror.
Way mirrored(Way way);

}  // namespace cloth
