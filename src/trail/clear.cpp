#include "trail/clear.h"

#include <algorithm>
#include <numeric>
#include <bit>

namespace trail {
namespace {

/// The tiles that the box lies in: x0..x1, y0..y1.
cloth::Box tiles_of(cloth::Box box, int shift) { return {box.x0 >> shift, box.y0 >> shift, box.x1 >> shift, box.y1 >> shift}; }

int level_of(cloth::Box box) { return std::bit_width(static_cast<unsigned>(std::max({box.width(), box.height(), 1}))); }

cloth::Box box_of(cloth::Stitch s) {
  return {std::min(s.a.x, s.b.x), std::min(s.a.y, s.b.y), std::max(s.a.x, s.b.x), std::max(s.a.y, s.b.y)};
}

}  // namespace

Clear::Clear(std::span<const cloth::Box> boxes, std::span<const cloth::Hole> open) : open_(open.begin(), open.end()), boxes_(boxes) {
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (boxes[i].width() <= 0 || boxes[i].height() <= 0) continue;  // nothing inside
    const int shift = level_of(boxes[i]);
    Tiles& tiles = levels_[shift];
    const cloth::Box in = tiles_of(boxes[i], shift);
    for (int y = in.y0; y <= in.y1; ++y)
      for (int x = in.x0; x <= in.x1; ++x) tiles[{x, y}].push_back(static_cast<int>(i));
  }
}

bool Clear::over_open(cloth::Hole from, cloth::Hole to) const {
  if (open_.empty() || from == to) return false;
  const cloth::Hole way = to - from;
  const int steps = std::gcd(way.x, way.y);
  const cloth::Hole step{way.x / steps, way.y / steps};
  for (int i = 1; i < steps; ++i)
    if (open_.contains(from + i * step)) return true;
  return false;
}

bool Clear::crossed(cloth::Hole from, cloth::Hole to) const {
  if (over_open(from, to)) return true;
  return std::any_of(levels_.begin(), levels_.end(), [&](const auto& level) {
    return crossed_among(level.second, level.first, {from, to});
  });
}

bool Clear::crossed_among(const Tiles& tiles, int shift, cloth::Stitch back) const {
  const cloth::Box in = tiles_of(box_of(back), shift);
  const auto looks = (std::int64_t{in.width()} + 1) * (std::int64_t{in.height()} + 1);
  if (looks > static_cast<std::int64_t>(boxes_.size()) + 16) return crossed_any(back);
  for (int y = in.y0; y <= in.y1; ++y) {
    for (int x = in.x0; x <= in.x1; ++x) {
      const auto tile = tiles.find({x, y});
      if (tile == tiles.end()) continue;
      for (const int box : tile->second)
        if (cloth::crosses(back, boxes_[static_cast<std::size_t>(box)])) return true;
    }
  }
  return false;
}

bool Clear::crossed_any(cloth::Stitch back) const {
  return std::any_of(boxes_.begin(), boxes_.end(), [&](const cloth::Box& box) { return cloth::crosses(back, box); });
}

}  // namespace trail
