// Holes, stitches and boxes as text in a failed check, and chance that is the same on every machine.
#pragma once

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <random>

#include "cloth/hole.h"

namespace doctest {

template <>
struct StringMaker<cloth::Hole> {
  static String convert(cloth::Hole h) { return fmt::format("({}, {})", h.x, h.y).c_str(); }
};
template <>
struct StringMaker<cloth::Stitch> {
  static String convert(cloth::Stitch s) { return fmt::format("({}, {})-({}, {})", s.a.x, s.a.y, s.b.x, s.b.y).c_str(); }
};
template <>
struct StringMaker<cloth::Box> {
  static String convert(cloth::Box b) { return fmt::format("[{}, {}, {}, {}]", b.x0, b.y0, b.x1, b.y1).c_str(); }
};

}  // namespace doctest

/// Numbers from a fixed seed. The engine is laid down by the C++ standard; the library's distributions are not, so none is used.
class Chance {
 public:
  explicit Chance(std::uint32_t seed) : engine_(seed) {}
  int between(int low, int high) { return low + static_cast<int>(engine_() % static_cast<std::uint32_t>(high - low + 1)); }
  cloth::Hole hole(int reach) {
    const int x = between(-reach, reach);
    return {x, between(-reach, reach)};
  }
  /// Two different holes.
  cloth::Stitch stitch(int reach) {
    cloth::Stitch s{hole(reach), hole(reach)};
    while (s.a == s.b) s.b = hole(reach);
    return s;
  }

 private:
  std::mt19937 engine_;
};
