#include "cloth/index.h"

#include <algorithm>

#include "base/require.h"

namespace cloth {
namespace {

constexpr int tile_side = 16;

int tile(int v) { return v >= 0 ? v / tile_side : -((-v + tile_side - 1) / tile_side); }

Box around(Stitch s) {
  Box box{s.a.x, s.a.y, s.a.x, s.a.y};
  box.grow(s.b);
  return box;
}

bool touch(Box a, Box b) { return a.x0 <= b.x1 && b.x0 <= a.x1 && a.y0 <= b.y1 && b.y0 <= a.y1; }

}  // namespace

void Index::add(Stitch stitch, int number) {
  const Box box = around(stitch);
  for (int x = tile(box.x0); x <= tile(box.x1); ++x)
    for (int y = tile(box.y0); y <= tile(box.y1); ++y) tiles_[{x, y}].push_back(number);
  stitches_[number] = stitch;
}

std::vector<int> Index::in(Box box) const {
  std::vector<int> found;
  for (int x = tile(box.x0); x <= tile(box.x1); ++x) {
    for (int y = tile(box.y0); y <= tile(box.y1); ++y) {
      const auto here = tiles_.find({x, y});
      if (here == tiles_.end()) continue;
      for (const int number : here->second)
        if (touch(around(stitches_.at(number)), box)) found.push_back(number);
    }
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

std::vector<int> Index::at(Hole hole) const {
  std::vector<int> found = in({hole.x, hole.y, hole.x, hole.y});
  std::erase_if(found, [&](int n) { return stitch(n).a != hole && stitch(n).b != hole; });
  return found;
}

std::vector<int> Index::meeting(Stitch segment) const {
  std::vector<int> found = in(around(segment));
  std::erase_if(found, [&](int n) { return !meet_inside(stitch(n), segment); });
  return found;
}

Stitch Index::stitch(int number) const {
  const auto found = stitches_.find(number);
  base::require(found != stitches_.end(), "a stitch number that the index does not have");
  return found->second;
}

}  // namespace cloth
