#include "guide/anchors_holds.h"

#include <algorithm>
#include <limits>
#include <numeric>
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

int Holds::tile_number(cloth::Hole hole) { return tiles_.try_emplace(tile(hole), static_cast<int>(tiles_.size())).first->second; }

void Holds::read(const std::vector<PlacedTrail>& trails) {
  std::size_t stitches = 0;
  for (const PlacedTrail& placed : trails) stitches += placed.trail.stitches.size();
  held_.reserve(stitches);
  for (std::size_t t = 0; t < trails.size(); ++t)
    for (std::size_t k = 0; k < trails[t].trail.stitches.size(); ++k) {
      const trail::Worked& w = trails[t].trail.stitches[k];
      held_.push_back({cloth::Stitch{w.up, w.down}.normal(), moment(trails, static_cast<int>(t), static_cast<int>(k))});
    }
}

/// Counts the ends in each tile, then puts each where its tile's ends go.
Holds::Holds(const std::vector<PlacedTrail>& trails) {
  read(trails);
  std::vector<int> tile_of;
  tile_of.reserve(2 * held_.size());
  for (const Held& held : held_)
    for (const cloth::Hole hole : {held.stitch.a, held.stitch.b}) tile_of.push_back(tile_number(hole));
  begins_.assign(tiles_.size() + 1, 0);
  for (const int tile : tile_of) ++begins_[tile + 1];
  std::partial_sum(begins_.begin(), begins_.end(), begins_.begin());
  std::vector<int> next = begins_;
  ends_.resize(tile_of.size());
  for (std::size_t i = 0; i < tile_of.size(); ++i) {
    const cloth::Stitch& stitch = held_[i / 2].stitch;
    ends_[next[tile_of[i]]++] = {i % 2 == 0 ? stitch.a : stitch.b, static_cast<int>(i / 2)};
  }
}

}  // namespace guide
