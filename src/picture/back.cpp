#include "picture/back.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "picture/styles.h"

namespace picture {
namespace {

constexpr double bow = 0.62;  // threads that the line swings out
constexpr int pieces = 14;    // straight pieces of a bow

std::int64_t turn(cloth::Hole a, cloth::Hole b, cloth::Hole c) {
  return static_cast<std::int64_t>(b.x - a.x) * (c.y - a.y) - static_cast<std::int64_t>(b.y - a.y) * (c.x - a.x);
}

/// Does the leg lie on the stitch along more than a point?
bool lies_along(cloth::Hole a, cloth::Hole b, const cloth::Stitch& s) {
  if (turn(a, b, s.a) != 0 || turn(a, b, s.b) != 0) return false;
  const bool flat = std::abs(b.x - a.x) >= std::abs(b.y - a.y);
  const auto along = [&](cloth::Hole h) { return flat ? h.x : h.y; };
  return std::max(std::min(along(a), along(b)), std::min(along(s.a), along(s.b))) <
         std::min(std::max(along(a), along(b)), std::max(along(s.a), along(s.b)));
}

bool passes(cloth::Hole a, cloth::Hole b, cloth::Hole mark) {
  if (mark == a || mark == b) return false;
  const Point p{static_cast<double>(mark.x), static_cast<double>(mark.y)};
  return distance(p, {static_cast<double>(a.x), static_cast<double>(a.y)}, {static_cast<double>(b.x), static_cast<double>(b.y)}) <
         ratio::mark_room;
}

bool hidden(cloth::Hole a, cloth::Hole b, const BackGround& ground) {
  return std::any_of(ground.stitches.begin(), ground.stitches.end(), [&](const auto& s) { return lies_along(a, b, s); }) ||
         std::any_of(ground.marks.begin(), ground.marks.end(), [&](cloth::Hole m) { return passes(a, b, m); });
}

/// A flat-topped swing from a to b, to the left of the way for a positive height.
std::vector<Point> swing(Point a, Point b, double height) {
  const double all = length(minus(b, a));
  const Point aside{(b.y - a.y) / all, -(b.x - a.x) / all};
  std::vector<Point> points;
  for (int i = 0; i <= pieces; ++i) {
    const double t = static_cast<double>(i) / pieces;
    const double out = 1 - std::pow(std::abs(2 * t - 1), 2.6);
    points.push_back(plus(between(a, b, t), times(height * out, aside)));
  }
  return points;
}

/// How near the swing comes to other stitches and marks; more is freer.
double freedom(const std::vector<Point>& swing, const View& view, const BackGround& ground) {
  const Point top = swing[pieces / 2];
  double free = 4 * view.scale;
  for (const cloth::Stitch& s : ground.stitches) free = std::min(free, distance(top, view.at(s.a), view.at(s.b)));
  for (const cloth::Hole m : ground.marks) free = std::min(free, length(minus(top, view.at(m))));
  return free;
}

std::vector<Point> leg(cloth::Hole a, cloth::Hole b, const View& view, const BackGround& ground) {
  const Point from = view.at(a), to = view.at(b);
  if (!hidden(a, b, ground)) return {from, to};
  const std::vector<Point> left = swing(from, to, bow * view.scale), right = swing(from, to, -bow * view.scale);
  return freedom(left, view, ground) >= freedom(right, view, ground) - 1e-9 ? left : right;
}

/// Cuts the line where it enters a circle round its first point.
void trim_start(std::vector<Point>& line, double by) {
  const Point centre = line.front();
  while (line.size() > 2 && length(minus(line[1], centre)) <= by) line.erase(line.begin());
  const double near = length(minus(line[0], centre)), far = length(minus(line[1], centre));
  if (far > near) line[0] = between(line[0], line[1], std::clamp((by - near) / (far - near), 0.0, 0.9));
}

}  // namespace

std::vector<Point> back_line(const std::vector<cloth::Hole>& way, const View& view, const BackGround& ground) {
  std::vector<Point> line;
  for (std::size_t i = 1; i < way.size(); ++i) {
    if (way[i] == way[i - 1]) continue;
    const std::vector<Point> piece = leg(way[i - 1], way[i], view, ground);
    line.insert(line.end(), piece.begin() + (line.empty() ? 0 : 1), piece.end());
  }
  if (line.size() < 2) return {};
  trim_start(line, ratio::mark_room * view.scale);
  std::reverse(line.begin(), line.end());
  trim_start(line, ratio::mark_room * view.scale);
  std::reverse(line.begin(), line.end());
  return line;
}

}  // namespace picture
