#include "trail/clear.h"

#include <algorithm>

namespace trail {
namespace {

constexpr int tile_side = 32;

int tile(int v) { return v >= 0 ? v / tile_side : -((-v + tile_side - 1) / tile_side); }

}  // namespace

Clear::Clear(const std::vector<cloth::Box>& boxes) : boxes_(boxes) {
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (int x = tile(boxes[i].x0); x <= tile(boxes[i].x1); ++x)
      for (int y = tile(boxes[i].y0); y <= tile(boxes[i].y1); ++y) tiles_[{x, y}].push_back(static_cast<int>(i));
}

bool Clear::crossed(cloth::Hole a, cloth::Hole b) const {
  if (boxes_.empty()) return false;
  for (int x = tile(std::min(a.x, b.x)); x <= tile(std::max(a.x, b.x)); ++x) {
    for (int y = tile(std::min(a.y, b.y)); y <= tile(std::max(a.y, b.y)); ++y) {
      const auto here = tiles_.find({x, y});
      if (here == tiles_.end()) continue;
      for (const int i : here->second)
        if (cloth::crosses({a, b}, boxes_[static_cast<std::size_t>(i)])) return true;
    }
  }
  return false;
}

}  // namespace trail
