#include "cloth/hole.h"

#include <algorithm>
#include <cmath>

namespace cloth {
namespace {

std::int64_t cross(Hole o, Hole a, Hole b) {
  const auto from = [](int start, int end) { return std::int64_t{end} - start; };
  return from(o.x, a.x) * from(o.y, b.y) - from(o.y, a.y) * from(o.x, b.x);
}
int sign(std::int64_t v) { return v > 0 ? 1 : v < 0 ? -1 : 0; }

/// On the line through s: strictly between its ends?
bool within(Stitch s, Hole h) {
  if (cross(s.a, s.b, h) != 0 || h == s.a || h == s.b) return false;
  return std::min(s.a.x, s.b.x) <= h.x && h.x <= std::max(s.a.x, s.b.x) && std::min(s.a.y, s.b.y) <= h.y && h.y <= std::max(s.a.y, s.b.y);
}

struct Sides {
  int left = 0, right = 0;
};

/// How many corners of the box lie on either side of the line through the segment.
Sides corners_beside(Stitch segment, Box box) {
  Sides sides;
  for (const Hole corner : {Hole{box.x0, box.y0}, Hole{box.x1, box.y0}, Hole{box.x1, box.y1}, Hole{box.x0, box.y1}}) {
    const int side = sign(cross(segment.a, segment.b, corner));
    sides.left += side < 0;
    sides.right += side > 0;
  }
  return sides;
}

}  // namespace

double distance(Hole a, Hole b) { return std::sqrt(static_cast<double>(squared(a, b))); }

void Box::grow(Hole h) {
  x0 = std::min(x0, h.x);
  y0 = std::min(y0, h.y);
  x1 = std::max(x1, h.x);
  y1 = std::max(y1, h.y);
}

bool crosses(Stitch segment, Box box) {
  const Hole a = segment.a, b = segment.b;
  if (box.width() <= 0 || box.height() <= 0) return false;
  // Two convex shapes are apart when a line along one of their sides parts them; all in whole numbers.
  if (std::max(a.x, b.x) <= box.x0 || std::min(a.x, b.x) >= box.x1 || std::max(a.y, b.y) <= box.y0 || std::min(a.y, b.y) >= box.y1) return false;
  const Sides sides = corners_beside(segment, box);
  return a == b || (sides.left > 0 && sides.right > 0);
}

bool touches(Stitch segment, Box box) {
  const Hole a = segment.a, b = segment.b;
  if (std::max(a.x, b.x) < box.x0 || std::min(a.x, b.x) > box.x1 || std::max(a.y, b.y) < box.y0 || std::min(a.y, b.y) > box.y1) return false;
  const Sides sides = corners_beside(segment, box);
  return sides.left < 4 && sides.right < 4;
}

bool meet_inside(Stitch s, Stitch t) {
  if (s.normal() == t.normal()) return true;
  if (within(s, t.a) || within(s, t.b) || within(t, s.a) || within(t, s.b)) return true;
  const int a = sign(cross(s.a, s.b, t.a)), b = sign(cross(s.a, s.b, t.b)), c = sign(cross(t.a, t.b, s.a)), d = sign(cross(t.a, t.b, s.b));
  return a * b < 0 && c * d < 0;
}

}  // namespace cloth
