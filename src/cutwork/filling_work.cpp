#include "cutwork/filling_work.h"

#include <algorithm>
#include <numbers>

#include "cloth/size.h"

namespace cutwork {
namespace {

using stitch::Filling;

/// Upper left, then clockwise.
std::array<cloth::Hole, 4> corners(const cloth::Box& b) { return {{{b.x0, b.y0}, {b.x1, b.y0}, {b.x1, b.y1}, {b.x0, b.y1}}}; }

cloth::Hole centre(const cloth::Box& b) { return {b.x0 + b.width() / 2, b.y0 + b.height() / 2}; }

/// The middle of a block's edge on that side of the opening.
cloth::Hole edge_middle(const cloth::Box& b, int side) {
  const cloth::Hole c = centre(b);
  switch (side) {
    case 0: return {c.x, b.y0};
    case 1: return {b.x1, c.y};
    case 2: return {c.x, b.y1};
    default: return {b.x0, c.y};
  }
}

double way(const std::vector<cloth::Hole>& points, double tall) {
  double sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i) sum += cloth::distance(points[i - 1], points[i], tall);
  return sum;
}

}  // namespace

cloth::Hole middle_of(const Bar& bar) { return centre(bar.box); }

FillingWork doves_eye(const Cutting& cutting, int opening, const Sides& sides, int from, double tall) {
  FillingWork work{Filling::doves_eye, opening, {}, {}, 0};
  const cloth::Box& box = cutting.openings[static_cast<std::size_t>(opening)].box;
  for (int i = 0; i <= 4; ++i) {
    const auto side = static_cast<std::size_t>((from + i) % 4);
    work.sides.push_back(sides[side]);
    work.points.push_back(sides[side] < 0 ? edge_middle(box, static_cast<int>(side)) : middle_of(cutting.bars[static_cast<std::size_t>(sides[side])]));
  }
  constexpr double quarter_round = std::numbers::pi / (2 * std::numbers::sqrt2);  // a loop hangs as a quarter of a circle, over its chord
  work.threads = way(work.points, tall) * quarter_round;
  return work;
}

FillingWork square_filet(const Cutting& cutting, int opening, int from, double tall) {
  FillingWork work{Filling::square_filet, opening, {}, {}, 0};
  const auto at = corners(cutting.openings[static_cast<std::size_t>(opening)].box);
  for (int i = 0; i <= 4; ++i) work.points.push_back(at[static_cast<std::size_t>((from + i) % 4)]);
  constexpr double round_a_corner = 2;  // threads there and threads back, at each of four corners
  work.threads = way(work.points, tall) + 4 * 2 * round_a_corner;
  return work;
}

FillingWork wheel(const Cutting& cutting, int opening, int from, double tall) {
  FillingWork work{Filling::wheel, opening, {}, {}, 0};
  const cloth::Box& box = cutting.openings[static_cast<std::size_t>(opening)].box;
  const auto at = corners(box);
  const auto corner = [&](int i) { return at[static_cast<std::size_t>((from + i) % 4)]; };
  work.points = {corner(0), corner(2), centre(box), corner(1), centre(box), corner(3)};
  const double radius = std::min<double>(box.width(), tall * box.height()) / 6;  // of the middle round
  work.threads = way(work.points, tall) + wheel_rounds * 2 * std::numbers::pi * radius;
  return work;
}

}  // namespace cutwork
