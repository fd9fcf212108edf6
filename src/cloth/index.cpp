#include "cloth/index.h"

#include <algorithm>

#include "base/require.h"

namespace cloth {
namespace {

constexpr int tile_side = 16;

std::int64_t divided_down(std::int64_t v, std::int64_t by) { return v >= 0 ? v / by : -((-v + by - 1) / by); }
int tile(std::int64_t v) { return static_cast<int>(divided_down(v, tile_side)); }

/// Every tile that the segment touches (here and there one beside it), column by column.
std::vector<Hole> tiles_along(Stitch s) {
  if (s.b.x < s.a.x) s = s.reversed();
  const std::int64_t dx = std::int64_t{s.b.x} - s.a.x, dy = std::int64_t{s.b.y} - s.a.y;
  std::vector<Hole> tiles;
  for (int column = tile(s.a.x); column <= tile(s.b.x); ++column) {
    std::int64_t low = s.a.y, high = s.b.y;  // where the segment enters and leaves the column, rounded outwards
    if (dx != 0) {
      const std::int64_t left = std::max<std::int64_t>(s.a.x, std::int64_t{column} * tile_side) - s.a.x;
      const std::int64_t right = std::min<std::int64_t>(s.b.x, std::int64_t{column + 1} * tile_side) - s.a.x;
      low = s.a.y + divided_down(dy * (dy >= 0 ? left : right), dx);
      high = s.a.y - divided_down(-dy * (dy >= 0 ? right : left), dx);
    } else if (low > high) {
      std::swap(low, high);
    }
    for (int row = tile(low); row <= tile(high); ++row) tiles.push_back({column, row});
  }
  return tiles;
}

void sort_once(std::vector<int>& numbers) {
  std::sort(numbers.begin(), numbers.end());
  numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
}

}  // namespace

void Index::add(Stitch stitch, int number) {
  base::require(stitches_.emplace(number, stitch).second, "a stitch number that the index has already");
  for (const Hole tile : tiles_along(stitch)) tiles_[tile].push_back(number);
}

std::vector<int> Index::in(Box box) const {
  const Box wanted{tile(box.x0), tile(box.y0), tile(box.x1), tile(box.y1)};
  const auto columns = std::int64_t{wanted.width()} + 1, rows = std::int64_t{wanted.height()} + 1;
  std::vector<int> found;
  if (columns * rows > static_cast<std::int64_t>(tiles_.size())) {
    for (const auto& [tile, numbers] : tiles_)  // order does not matter: sorted below
      if (wanted.holds(tile)) found.insert(found.end(), numbers.begin(), numbers.end());
  } else {
    for (int x = wanted.x0; x <= wanted.x1; ++x)
      for (int y = wanted.y0; y <= wanted.y1; ++y)
        if (const auto here = tiles_.find({x, y}); here != tiles_.end()) found.insert(found.end(), here->second.begin(), here->second.end());
  }
  sort_once(found);
  std::erase_if(found, [&](int n) { return !touches(stitch(n), box); });
  return found;
}

std::vector<int> Index::at(Hole hole) const {
  std::vector<int> found = in({hole.x, hole.y, hole.x, hole.y});
  std::erase_if(found, [&](int n) { return stitch(n).a != hole && stitch(n).b != hole; });
  return found;
}

std::vector<int> Index::meeting(Stitch segment) const {
  std::vector<int> found;
  for (const Hole tile : tiles_along(segment))
    if (const auto here = tiles_.find(tile); here != tiles_.end()) found.insert(found.end(), here->second.begin(), here->second.end());
  sort_once(found);
  std::erase_if(found, [&](int n) { return !meet_inside(stitch(n), segment); });
  return found;
}

Stitch Index::stitch(int number) const {
  const auto found = stitches_.find(number);
  base::require(found != stitches_.end(), "a stitch number that the index does not have");
  return found->second;
}

}  // namespace cloth
