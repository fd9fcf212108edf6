#include "cloth/hole.h"

#include <algorithm>
#include <cmath>

namespace cloth {
namespace {

std::int64_t cross(Hole o, Hole a, Hole b) {
  return static_cast<std::int64_t>(a.x - o.x) * (b.y - o.y) - static_cast<std::int64_t>(a.y - o.y) * (b.x - o.x);
}
int sign(std::int64_t v) { return v > 0 ? 1 : v < 0 ? -1 : 0; }

/// On the line through s: strictly between its ends?
bool within(Stitch s, Hole h) {
  if (cross(s.a, s.b, h) != 0 || h == s.a || h == s.b) return false;
  return std::min(s.a.x, s.b.x) <= h.x && h.x <= std::max(s.a.x, s.b.x) && std::min(s.a.y, s.b.y) <= h.y && h.y <= std::max(s.a.y, s.b.y);
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
  // Clips the segment by the four sides (Liang and Barsky); sides themselves do not count.
  double from = 0, to = 1;
  const double dx = segment.b.x - segment.a.x, dy = segment.b.y - segment.a.y;
  const double p[4] = {-dx, dx, -dy, dy};
  const double q[4] = {double(segment.a.x - box.x0), double(box.x1 - segment.a.x), double(segment.a.y - box.y0), double(box.y1 - segment.a.y)};
  for (int i = 0; i < 4; ++i) {
    if (p[i] == 0) {
      if (q[i] <= 0) return false;
    } else if (p[i] < 0) {
      from = std::max(from, q[i] / p[i]);
    } else {
      to = std::min(to, q[i] / p[i]);
    }
  }
  return to - from > 1e-9;
}

bool meet_inside(Stitch s, Stitch t) {
  if (s.normal() == t.normal()) return true;
  if (within(s, t.a) || within(s, t.b) || within(t, s.a) || within(t, s.b)) return true;
  const int a = sign(cross(s.a, s.b, t.a)), b = sign(cross(s.a, s.b, t.b)), c = sign(cross(t.a, t.b, s.a)), d = sign(cross(t.a, t.b, s.b));
  return a * b < 0 && c * d < 0;
}

}  // namespace cloth
