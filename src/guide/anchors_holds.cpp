#include "guide/anchors_holds.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace guide {
namespace {

constexpr int tile_side = 8;  // threads

int floor_div(int n, int by) { return n / by - (n % by < 0 ? 1 : 0); }

}  // namespace

Moment moment(const std::vector<PlacedTrail>& trails, int trail, int stitch) {
  const auto& sections = trails[trail].sections;
  const auto after = std::upper_bound(sections.begin(), sections.end(), stitch, [](int k, const Section& s) { return k < s.first; });
  if (after == sections.begin() || stitch > std::prev(after)->last) return {std::numeric_limits<int>::max(), trail, trail, stitch};
  return {std::prev(after)->lesson, std::prev(after)->item, trail, stitch};
}

bool before(const Moment& a, const Moment& b) {
  return a.trail == b.trail ? a < b : std::tie(a.lesson, a.item) < std::tie(b.lesson, b.item);
}

cloth::Hole Holds::tile(cloth::Hole hole) { return {floor_div(hole.x, tile_side), floor_div(hole.y, tile_side)}; }

Holds::Holds(const std::vector<PlacedTrail>& trails) {
  for (std::size_t t = 0; t < trails.size(); ++t) {
    const auto& stitches = trails[t].trail.stitches;
    for (std::size_t k = 0; k < stitches.size(); ++k)
      held_.push_back({cloth::Stitch{stitches[k].up, stitches[k].down}.normal(), moment(trails, static_cast<int>(t), static_cast<int>(k))});
  }
  std::sort(held_.begin(), held_.end(), [](const Held& a, const Held& b) { return std::tie(a.stitch, a.worked) < std::tie(b.stitch, b.worked); });
  held_.erase(std::unique(held_.begin(), held_.end(), [](const Held& a, const Held& b) { return a.stitch == b.stitch; }), held_.end());
  for (std::size_t i = 0; i < held_.size(); ++i)
    for (const cloth::Hole hole : {held_[i].stitch.a, held_[i].stitch.b}) ends_.push_back({tile(hole), hole, static_cast<int>(i)});
  std::sort(ends_.begin(), ends_.end(), [](const End& a, const End& b) { return std::tie(a.tile, a.hole, a.number) < std::tie(b.tile, b.hole, b.number); });
  for (std::size_t i = 0; i < ends_.size(); ++i)
    tiles_.try_emplace(ends_[i].tile, static_cast<int>(i), 0).first->second.second = static_cast<int>(i) + 1;
}

}  // namespace guide
