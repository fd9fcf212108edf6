// Mitring in whole numbers: with moves by an even number of threads, neighbouring legs in the eight ways always meet in a hole.
#include "stitch/rows.h"

#include "base/require.h"

namespace stitch {
namespace {

/// A leg's line, of which one hole is known.
struct Ray {
  cloth::Hole at, step;
};

/// By what a leg is moved.
cloth::Hole shift(cloth::Way way, RowsLie lie, int by) {
  const cloth::Hole square = cloth::step(cloth::turned(way, lie == RowsLie::right ? 2 : -2));
  return by * (cloth::slanted(way) ? cloth::Hole{0, square.y} : square);
}

std::int64_t cross(cloth::Hole a, cloth::Hole b) { return std::int64_t{a.x} * b.y - std::int64_t{a.y} * b.x; }

cloth::Hole meeting(Ray one, Ray next) {
  const std::int64_t turn = cross(one.step, next.step);
  base::require(turn != 0, "neighbouring legs of a line go the same way or straight back");
  const std::int64_t ahead = cross(next.at - one.at, next.step);
  base::require(ahead % turn == 0, "neighbouring legs meet between the holes");
  return one.at + static_cast<int>(ahead / turn) * one.step;
}

}  // namespace

std::vector<cloth::Hole> moved_row(const Line& line, RowsLie lie, int by) {
  const std::size_t legs = line.legs.size();
  const auto ray = [&](std::size_t leg) {
    const cloth::Way way = line.legs[leg].way;
    return Ray{line.corners[leg] + shift(way, lie, by), cloth::step(way)};
  };
  std::vector<cloth::Hole> corners;
  corners.reserve(legs + 1);
  corners.push_back(line.closed ? meeting(ray(legs - 1), ray(0)) : ray(0).at);
  for (std::size_t i = 1; i < legs; ++i) corners.push_back(meeting(ray(i - 1), ray(i)));
  corners.push_back(line.closed ? corners.front() : line.corners.back() + shift(line.legs.back().way, lie, by));
  return corners;
}

int along(cloth::Way way, cloth::Hole a, cloth::Hole b) {
  const cloth::Hole step = cloth::step(way), d = b - a;
  return step.x != 0 ? d.x * step.x : d.y * step.y;
}

std::vector<cloth::Stitch> row_stitches(const Line& line, const std::vector<cloth::Hole>& corners, int over) {
  std::vector<cloth::Stitch> stitches;
  for (std::size_t leg = 0; leg < line.legs.size(); ++leg) {
    const cloth::Way way = line.legs[leg].way;
    cloth::Hole at = corners[leg];
    for (int left = along(way, corners[leg], corners[leg + 1]); left > 0; left -= over) {
      const cloth::Hole next = at + over * cloth::step(way);
      stitches.push_back({at, next});
      at = next;
    }
  }
  return stitches;
}

}  // namespace stitch
