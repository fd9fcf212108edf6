// Two stitches side by side enclose one thread. It is held at their ends where both end at the same hole line.
#include "cutwork/walls.h"

#include <algorithm>

namespace cutwork {
namespace {

/// One stitch along its own way: the hole line it lies on, and its ends.
struct Reach {
  int line = 0, from = 0, to = 0;
};

std::vector<Reach> reaches(const Bundle& block, Axis grain) {
  std::vector<Reach> all;
  for (const cloth::Stitch& stitch : block.stitches) {
    const cloth::Stitch s = stitch.normal();
    if (grain == Axis::v && s.a.x == s.b.x) all.push_back({s.a.x, s.a.y, s.b.y});
    if (grain == Axis::h && s.a.y == s.b.y) all.push_back({s.a.y, s.a.x, s.b.x});
  }
  std::sort(all.begin(), all.end(), [](const Reach& a, const Reach& b) { return std::tie(a.line, a.from) < std::tie(b.line, b.from); });
  return all;
}

/// The threads enclosed, each as a wall on its own line.
std::vector<Wall> enclosed(const std::vector<Reach>& stitches, int block) {
  std::vector<Wall> walls;
  for (std::size_t i = 1; i < stitches.size(); ++i) {
    const Reach &a = stitches[i - 1], &b = stitches[i];
    const int from = std::max(a.from, b.from), to = std::min(a.to, b.to);
    if (b.line != a.line + 1 || from >= to) continue;
    walls.push_back({a.line, from, to, block, a.from == b.from, a.to == b.to});
  }
  return walls;
}

/// The same walls as seen from the lines across them.
void across(const std::vector<Wall>& walls, std::vector<Wall>& lines) {
  std::vector<Wall> cells;
  for (const Wall& wall : walls)
    for (int at = wall.from; at < wall.to; ++at) cells.push_back({at, wall.line, wall.line + 1, wall.block});
  std::sort(cells.begin(), cells.end(), [](const Wall& a, const Wall& b) { return std::tie(a.line, a.from) < std::tie(b.line, b.from); });
  for (const Wall& cell : cells) {
    Wall* last = lines.empty() ? nullptr : &lines.back();
    if (last && last->block == cell.block && last->line == cell.line && last->to == cell.from)
      last->to = cell.to;
    else
      lines.push_back(cell);
  }
}

}  // namespace

Walls walls_of(const std::vector<Bundle>& blocks) {
  Walls walls;
  for (std::size_t b = 0; b < blocks.size(); ++b) {
    const Bundle& block = blocks[b];
    const bool upright = block.stitches.empty() || block.stitches[0].a.x == block.stitches[0].b.x;
    const Axis grain = upright ? Axis::v : Axis::h;
    const std::vector<Wall> own = enclosed(reaches(block, grain), static_cast<int>(b));
    cloth::Box box;
    if (!block.stitches.empty()) box = {block.stitches[0].a.x, block.stitches[0].a.y, block.stitches[0].a.x, block.stitches[0].a.y};
    for (const cloth::Stitch& stitch : block.stitches) {
      box.grow(stitch.a);
      box.grow(stitch.b);
    }
    auto& along = upright ? walls.columns : walls.rows;
    along.insert(along.end(), own.begin(), own.end());
    across(own, upright ? walls.rows : walls.columns);
    walls.boxes.push_back(box);
    walls.grains.push_back(grain);
  }
  return walls;
}

}  // namespace cutwork
