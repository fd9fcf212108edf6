// Holes of the cloth and the straight threads between them. x runs right, y runs down; the unit is one thread.
#pragma once

#include <compare>
#include <cstdint>
#include <cstddef>
#include <functional>

namespace cloth {

struct Hole {
  int x = 0;
  int y = 0;
  friend auto operator<=>(const Hole&, const Hole&) = default;
  friend Hole operator+(Hole a, Hole b) { return {a.x + b.x, a.y + b.y}; }
  friend Hole operator-(Hole a, Hole b) { return {a.x - b.x, a.y - b.y}; }
  friend Hole operator*(int n, Hole a) { return {n * a.x, n * a.y}; }
};

/// One straight front thread between two holes.
struct Stitch {
  Hole a;
  Hole b;
  friend auto operator<=>(const Stitch&, const Stitch&) = default;
  /// The same stitch with the smaller hole first: two stitches are one when their normal forms are equal.
  Stitch normal() const { return b < a ? Stitch{b, a} : *this; }
  Stitch reversed() const { return {b, a}; }
};

/// Square of the distance in threads.
inline std::int64_t squared(Hole a, Hole b) {
  const std::int64_t dx = std::int64_t{a.x} - b.x, dy = std::int64_t{a.y} - b.y;
  return dx * dx + dy * dy;
}

/// Distance in threads.
double distance(Hole a, Hole b);

/// Smallest upright rectangle; x0 <= x1, y0 <= y1, both ends belong to it.
struct Box {
  int x0 = 0, y0 = 0, x1 = 0, y1 = 0;
  friend auto operator<=>(const Box&, const Box&) = default;
  bool holds(Hole h) const { return x0 <= h.x && h.x <= x1 && y0 <= h.y && h.y <= y1; }
  void grow(Hole h);
  Box widened(int by) const { return {x0 - by, y0 - by, x1 + by, y1 + by}; }
  int width() const { return x1 - x0; }
  int height() const { return y1 - y0; }
};

/// Does the open segment a-b pass through the inside of the box? (Touching its edge does not count; a box without width or height has
/// no inside.) Exact within 1,000,000,000 threads of 0.
bool crosses(Stitch segment, Box box);
/// Do the segment, with its ends, and the box, with its edge, share a point? Exact likewise.
bool touches(Stitch segment, Box box);
/// Do the two segments share a point that is not an end of both? (Crossing, lying on one another, or one's end within the other.) Exact likewise.
bool meet_inside(Stitch s, Stitch t);

}  // namespace cloth

template <>
struct std::hash<cloth::Hole> {
  std::size_t operator()(const cloth::Hole& h) const noexcept {
    return std::hash<std::int64_t>{}((static_cast<std::int64_t>(h.x) << 32) ^ static_cast<std::uint32_t>(h.y));
  }
};
template <>
struct std::hash<cloth::Stitch> {
  std::size_t operator()(const cloth::Stitch& s) const noexcept {
    return std::hash<cloth::Hole>{}(s.a) * 1000003u ^ std::hash<cloth::Hole>{}(s.b);
  }
};
