// Designs of any size for measuring, as a course file's words: a frame of cable, a staircase ring of blocks.
#pragma once

#include <string>

namespace bench {

enum class Kind { cable, blocks };

struct Design {
  std::string kind, path;
  std::string key, value;  ///< the one further key that the kind needs
};

/// About so many stitches, in one pass.
inline Design design(Kind kind, long stitches) {
  const auto legs = [](const char* one, long a, const char* two, long b, const char* three, long c, const char* four, long d) {
    const auto leg = [](const char* way, long number) { return std::string(way) + " " + std::to_string(number); };
    return leg(one, a) + ", " + leg(two, b) + ", " + leg(three, c) + ", " + leg(four, d);
  };
  if (kind == Kind::cable) {
    const long side = stitches / 8 * 2 + 2;  // two rows, stitches over 2
    return {"cable", legs("E", side, "S", side, "W", side, "N", side), "rows_lie", "right"};
  }
  const long side = (stitches / 20 + 1) / 2 * 2;  // n blocks a side, n even: 20n - 20 stitches
  return {"blocks", legs("NE", side, "SE", side - 1, "SW", side - 1, "NW", side - 2), "first", "across"};
}

}  // namespace bench
