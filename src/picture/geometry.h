// Plane geometry of a page in millimetres: points, straight pieces, pieces with a thickness, upright boxes.
#pragma once

#include "list/list.h"

namespace picture {

using list::Point;
using list::Rect;

inline Point plus(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
inline Point minus(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
inline Point times(double k, Point a) { return {k * a.x, k * a.y}; }
double length(Point a);
/// The point so far (0 at a, 1 at b) along the way.
inline Point between(Point a, Point b, double part) { return plus(a, times(part, minus(b, a))); }

/// A straight piece with round ends, `radius` mm to every side of its middle line.
struct Capsule {
  Point a, b;
  double radius = 0;
};

inline Rect grown(Rect r, double by) { return {r.x - by, r.y - by, r.w + 2 * by, r.h + 2 * by}; }
inline Rect moved(Rect r, Point by) { return {r.x + by.x, r.y + by.y, r.w, r.h}; }
/// Is the inner one wholly within the outer? (Edges may touch, up to a hair for rounding.)
bool within(const Rect& inner, const Rect& outer);

double distance(Point p, Point a, Point b);           ///< of a point from a straight piece
double distance(Point a, Point b, Point c, Point d);  ///< of two straight pieces; 0 where they cross
double distance(const Rect& rect, Point a, Point b);  ///< of a box (filled) from a straight piece
double distance(const Rect& rect, Point p);           ///< of a box (filled) from a point
bool meet(const Rect& rect, const Capsule& capsule);  ///< touching does not count
bool meet(const Capsule& one, const Capsule& other);

}  // namespace picture
