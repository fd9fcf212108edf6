// The same questions as cloth/hole.h answered by another route: points of a segment as exact fractions of its length. Slow, and short.
#pragma once

#include <algorithm>
#include <compare>
#include <optional>
#include <vector>

#include "cloth/hole.h"

namespace rational {

struct Fraction {
  std::int64_t over = 0, under = 1;  // under > 0
  friend std::strong_ordering operator<=>(Fraction a, Fraction b) { return a.over * b.under <=> b.over * a.under; }
  friend bool operator==(Fraction a, Fraction b) { return a.over * b.under == b.over * a.under; }
};

inline Fraction make(std::int64_t over, std::int64_t under) { return under < 0 ? Fraction{-over, -under} : Fraction{over, under}; }
inline Fraction middle(Fraction a, Fraction b) { return {a.over * b.under + b.over * a.under, 2 * a.under * b.under}; }
/// One coordinate of the point that lies t of the way from a to b.
inline Fraction along(int a, int b, Fraction t) { return {a * t.under + t.over * (std::int64_t{b} - a), t.under}; }
inline Fraction whole(std::int64_t n) { return {n, 1}; }

/// Between each two neighbouring ways of meeting a side of the box, is the middle of that stretch inside?
inline bool crosses(cloth::Stitch s, cloth::Box box) {
  std::vector<Fraction> ts{{0, 1}, {1, 1}};
  const auto meet = [&](int a, int b, int side) {
    if (a == b) return;
    const Fraction t = make(std::int64_t{side} - a, std::int64_t{b} - a);
    if (t > whole(0) && t < whole(1)) ts.push_back(t);
  };
  for (const int side : {box.x0, box.x1}) meet(s.a.x, s.b.x, side);
  for (const int side : {box.y0, box.y1}) meet(s.a.y, s.b.y, side);
  std::sort(ts.begin(), ts.end());
  for (std::size_t i = 1; i < ts.size(); ++i) {
    const Fraction t = middle(ts[i - 1], ts[i]), x = along(s.a.x, s.b.x, t), y = along(s.a.y, s.b.y, t);
    if (ts[i - 1] < ts[i] && x > whole(box.x0) && x < whole(box.x1) && y > whole(box.y0) && y < whole(box.y1)) return true;
  }
  return false;
}

/// Does the hole lie on the segment, ends too?
inline bool on(cloth::Stitch s, cloth::Hole h) {
  const bool across = s.a.x != s.b.x;
  const Fraction t = across ? make(std::int64_t{h.x} - s.a.x, std::int64_t{s.b.x} - s.a.x) : make(std::int64_t{h.y} - s.a.y, std::int64_t{s.b.y} - s.a.y);
  return t >= whole(0) && t <= whole(1) && along(s.a.x, s.b.x, t) == whole(h.x) && along(s.a.y, s.b.y, t) == whole(h.y);
}

/// Where two segments that are not parallel meet: how far along the first, if they do.
inline std::optional<Fraction> meeting(cloth::Stitch s, cloth::Stitch t) {
  const std::int64_t ax = std::int64_t{s.b.x} - s.a.x, ay = std::int64_t{s.b.y} - s.a.y, bx = std::int64_t{t.b.x} - t.a.x, by = std::int64_t{t.b.y} - t.a.y;
  const std::int64_t cx = std::int64_t{t.a.x} - s.a.x, cy = std::int64_t{t.a.y} - s.a.y, d = ax * by - ay * bx;  // Cramer's rule
  if (d == 0) return std::nullopt;
  const Fraction u = make(cx * by - cy * bx, d), v = make(cx * ay - cy * ax, d);
  const auto within = [](Fraction f) { return f >= whole(0) && f <= whole(1); };
  return within(u) && within(v) ? std::optional(u) : std::nullopt;
}

/// A shared point that is not an end of both: straight from the words of the contract.
inline bool meet_inside(cloth::Stitch s, cloth::Stitch t) {
  const auto end_of = [](cloth::Stitch x, cloth::Hole h) { return x.a == h || x.b == h; };
  if (s.a == t.a && s.b == t.b) return true;
  if (s.a == t.b && s.b == t.a) return true;
  for (const cloth::Hole h : {t.a, t.b})
    if (on(s, h) && !end_of(s, h)) return true;
  for (const cloth::Hole h : {s.a, s.b})
    if (on(t, h) && !end_of(t, h)) return true;
  const auto u = meeting(s, t);
  if (!u) return false;
  const auto is = [&](cloth::Hole h) { return along(s.a.x, s.b.x, *u) == whole(h.x) && along(s.a.y, s.b.y, *u) == whole(h.y); };
  return !((is(s.a) || is(s.b)) && (is(t.a) || is(t.b)));
}

}  // namespace rational
