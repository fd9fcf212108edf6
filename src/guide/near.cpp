#include "guide/near.h"

#include <algorithm>
#include <cstdint>
#include <tuple>

namespace guide {
namespace {

/// Does the highest bit in which they differ stand in y (x at equal height)? Then y decides the Z-order.
bool highest_bit_less(std::uint32_t a, std::uint32_t b) { return a < b && a < (a ^ b); }

std::uint32_t unsigned_order(int v) { return static_cast<std::uint32_t>(v) ^ 0x80000000U; }

bool z_before(cloth::Hole a, cloth::Hole b) {
  const std::uint32_t ax = unsigned_order(a.x), ay = unsigned_order(a.y), bx = unsigned_order(b.x), by = unsigned_order(b.y);
  return highest_bit_less(ax ^ bx, ay ^ by) ? ay < by : ax != bx ? ax < bx : ay < by;
}

void join(Near::Node& node, const cloth::Box& box, const When& first) {
  node.box = {std::min(node.box.x0, box.x0), std::min(node.box.y0, box.y0), std::max(node.box.x1, box.x1), std::max(node.box.y1, box.y1)};
  node.first = std::min(node.first, first);
}

std::vector<Near::Node> lowest_level(const std::vector<Candidate>& candidates) {
  std::vector<Near::Node> level;
  level.reserve(candidates.size() / Near::fan + 1);
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const cloth::Hole h = candidates[i].hole;
    if (i % Near::fan == 0) level.push_back({{h.x, h.y, h.x, h.y}, candidates[i].since});
    join(level.back(), {h.x, h.y, h.x, h.y}, candidates[i].since);
  }
  return level;
}

std::vector<Near::Node> level_over(const std::vector<Near::Node>& below) {
  std::vector<Near::Node> level;
  level.reserve(below.size() / Near::fan + 1);
  for (std::size_t i = 0; i < below.size(); ++i) {
    if (i % Near::fan == 0) level.push_back(below[i]);
    join(level.back(), below[i].box, below[i].first);
  }
  return level;
}

}  // namespace

bool Near::before(const Candidate& a, const Candidate& b) {
  if (a.hole != b.hole) return z_before(a.hole, b.hole);
  return std::tie(a.feature, a.spot.stitch, a.spot.end) < std::tie(b.feature, b.spot.stitch, b.spot.end);
}

Near::Near(std::vector<Candidate> sorted) : sorted_(std::move(sorted)) {
  levels_.push_back(lowest_level(sorted_));
  while (levels_.back().size() > 1) levels_.push_back(level_over(levels_.back()));
}

std::vector<const Candidate*> Near::at(cloth::Hole hole) const {
  std::vector<const Candidate*> found;
  const auto z_less = [](const Candidate& c, cloth::Hole h) { return z_before(c.hole, h); };
  for (auto c = std::lower_bound(sorted_.begin(), sorted_.end(), hole, z_less); c != sorted_.end() && c->hole == hole; ++c)
    found.push_back(&*c);
  return found;
}

}  // namespace guide
