#include "cloth/way.h"

#include <cstdlib>

namespace cloth {
namespace {

constexpr std::array<std::string_view, 8> names{"N", "NE", "E", "SE", "S", "SW", "W", "NW"};

}  // namespace

Hole step(Way way) {
  constexpr std::array<Hole, 8> steps{Hole{0, -1}, Hole{1, -1}, Hole{1, 0}, Hole{1, 1}, Hole{0, 1}, Hole{-1, 1}, Hole{-1, 0}, Hole{-1, -1}};
  return steps[static_cast<std::size_t>(way)];
}

bool slanted(Way way) { return static_cast<int>(way) % 2 == 1; }

Way turned(Way way, int eighths) { return static_cast<Way>(((static_cast<int>(way) + eighths) % 8 + 8) % 8); }

std::string_view name(Way way) { return names[static_cast<std::size_t>(way)]; }

std::optional<Way> parse_way(std::string_view text) {
  for (const Way way : all_ways)
    if (name(way) == text) return way;
  return std::nullopt;
}

std::optional<Way> way_between(Hole a, Hole b) {
  const Hole d = b - a;
  if (a == b || (d.x != 0 && d.y != 0 && std::abs(d.x) != std::abs(d.y))) return std::nullopt;
  const Hole unit{(d.x > 0) - (d.x < 0), (d.y > 0) - (d.y < 0)};
  for (const Way way : all_ways)
    if (step(way) == unit) return way;
  return std::nullopt;
}

Way mirrored(Way way) { return static_cast<Way>((8 - static_cast<int>(way)) % 8); }

}  // namespace cloth
