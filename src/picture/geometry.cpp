#include "picture/geometry.h"

#include <algorithm>
#include <cmath>

#include "list/bounds.h"

namespace picture {
namespace {

constexpr double hair = 1e-6;  // mm: below what rounding leaves

double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }

bool cross_each_other(Point a, Point b, Point c, Point d) {
  const double c_side = cross(minus(b, a), minus(c, a)), d_side = cross(minus(b, a), minus(d, a));
  const double a_side = cross(minus(d, c), minus(a, c)), b_side = cross(minus(d, c), minus(b, c));
  return ((c_side > 0 && d_side < 0) || (c_side < 0 && d_side > 0)) && ((a_side > 0 && b_side < 0) || (a_side < 0 && b_side > 0));
}

}  // namespace

double length(Point a) { return std::sqrt(a.x * a.x + a.y * a.y); }

bool within(const Rect& inner, const Rect& outer) {
  return inner.x >= outer.x - hair && inner.y >= outer.y - hair && inner.x + inner.w <= outer.x + outer.w + hair &&
         inner.y + inner.h <= outer.y + outer.h + hair;
}

double distance(Point p, Point a, Point b) {
  const Point way = minus(b, a);
  const double square = dot(way, way);
  const double part = square > 0 ? std::clamp(dot(minus(p, a), way) / square, 0.0, 1.0) : 0.0;
  return length(minus(p, between(a, b, part)));
}

double distance(Point a, Point b, Point c, Point d) {
  if (cross_each_other(a, b, c, d)) return 0;
  return std::min({distance(a, c, d), distance(b, c, d), distance(c, a, b), distance(d, a, b)});
}

double distance(const Rect& rect, Point p) {
  const double dx = std::max({rect.x - p.x, 0.0, p.x - rect.x - rect.w}), dy = std::max({rect.y - p.y, 0.0, p.y - rect.y - rect.h});
  return std::sqrt(dx * dx + dy * dy);
}

double distance(const Rect& rect, Point a, Point b) {
  if (list::contains(rect, a) || list::contains(rect, b)) return 0;
  const Point p{rect.x, rect.y}, q{rect.x + rect.w, rect.y}, r{rect.x + rect.w, rect.y + rect.h}, s{rect.x, rect.y + rect.h};
  return std::min({distance(a, b, p, q), distance(a, b, q, r), distance(a, b, r, s), distance(a, b, s, p)});
}

bool meet(const Rect& rect, const Capsule& c) {
  if (std::max(c.a.x, c.b.x) + c.radius <= rect.x || std::min(c.a.x, c.b.x) - c.radius >= rect.x + rect.w) return false;
  if (std::max(c.a.y, c.b.y) + c.radius <= rect.y || std::min(c.a.y, c.b.y) - c.radius >= rect.y + rect.h) return false;
  return distance(rect, c.a, c.b) < c.radius - hair;
}

bool meet(const Capsule& one, const Capsule& other) {
  const double room = one.radius + other.radius;
  if (std::max(one.a.x, one.b.x) + room <= std::min(other.a.x, other.b.x) ||
      std::max(other.a.x, other.b.x) + room <= std::min(one.a.x, one.b.x))
    return false;
  if (std::max(one.a.y, one.b.y) + room <= std::min(other.a.y, other.b.y) ||
      std::max(other.a.y, other.b.y) + room <= std::min(one.a.y, one.b.y))
    return false;
  return distance(one.a, one.b, other.a, other.b) < room - hair;
}

}  // namespace picture
