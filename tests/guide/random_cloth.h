// Cloths nobody drew: a few parts of blocks and corners along random outlines, worked in random pieces over some lessons.
#pragma once

#include "guide/outline.h"

namespace hand_made {

inline constexpr int lessons = 3;

/// Blocks along an outline, 6 threads apart and up to 2 off their places, so that some stand out by a single thread.
inline std::vector<stitch::Feature> ring_of_blocks(Chance& chance, bool backwards) {
  std::vector<cloth::Hole> points = random_outline(chance, 1 + chance.below(9));
  if (backwards) std::reverse(points.begin(), points.end());
  std::rotate(points.begin(), points.begin() + chance.below(static_cast<int>(points.size())), points.end());
  const bool off = chance.once_in(2);
  std::vector<stitch::Feature> blocks;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const cloth::Hole aside = off ? cloth::Hole{chance.below(3), chance.below(3)} : cloth::Hole{};
    blocks.push_back(block(6 * points[i] + aside, chance.once_in(2) ? Grain::upright : Grain::across, static_cast<int>(i)));
  }
  return blocks;
}

/// Corners of two rows along an outline, the second row 3 threads inside in x and y alike.
inline std::vector<stitch::Feature> rows_of_corners(Chance& chance) {
  const std::vector<cloth::Hole> points = random_outline(chance, 1 + chance.below(6));
  std::vector<stitch::Feature> corners;
  for (int row = 0; row < 2; ++row)
    for (std::size_t i = 0; i < points.size(); ++i) {
      stitch::Feature corner;
      corner.shape = stitch::Shape::corner;
      corner.hole = 12 * points[i] + cloth::Hole{100 + 3 * row, 3 * row};
      corner.stitches = {{corner.hole, corner.hole + cloth::Hole{2, 0}}};
      corner.row = row;
      corner.along = static_cast<int>(i);
      corners.push_back(corner);
    }
  return corners;
}

inline void move(std::vector<stitch::Feature>& features, cloth::Hole by) {
  for (stitch::Feature& f : features) {
    f.hole = f.hole + by;
    for (cloth::Stitch& s : f.stitches) s = {s.a + by, s.b + by};
  }
}

/// Parts the trail at random places into items of the lessons, not always in order; now and then an end is left out.
inline void work_at_random(Cloth& cloth, int part, Chance& chance, int item) {
  const int n = static_cast<int>(cloth.trails[part].trail.stitches.size());
  std::vector<int> cuts{0, chance.below(n), chance.below(n), chance.once_in(3) ? chance.below(n) : n};
  std::sort(cuts.begin(), cuts.end());
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
    if (cuts[i] < cuts[i + 1]) cloth.work(part, 1 + chance.below(lessons), item + static_cast<int>(i), cuts[i], cuts[i + 1] - 1);
}

/// A ring of blocks, two rows of corners, and an open chain of blocks below.
inline Cloth random_cloth(Chance& chance) {
  Cloth cloth;
  const int blocks = cloth.part(work_of(ring_of_blocks(chance, false), true));
  const int corners = cloth.part(work_of(rows_of_corners(chance), true));
  std::vector<stitch::Feature> below = ring_of_blocks(chance, true);
  move(below, {0, 80});
  const int more = cloth.part(work_of(below, false));
  work_at_random(cloth, blocks, chance, 0);
  work_at_random(cloth, corners, chance, 3);
  work_at_random(cloth, more, chance, 6);
  return cloth;
}

}  // namespace hand_made
