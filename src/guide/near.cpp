#include "guide/near.h"

#include <algorithm>
#include <cstdint>

namespace guide {
namespace {

/// Does the highest bit in which they differ stand in y (x at equal height)? Then y decides the Z-order.
bool highest_bit_less(std::uint32_t a, std::uint32_t b) { return a < b && a < (a ^ b); }

std::uint32_t unsigned_order(int v) { return static_cast<std::uint32_t>(v) ^ 0x80000000U; }

bool z_before(cloth::Hole a, cloth::Hole b) {
  const std::uint32_t ax = unsigned_order(a.x), ay = unsigned_order(a.y), bx = unsigned_order(b.x), by = unsigned_order(b.y);
  return highest_bit_less(ax ^ bx, ay ^ by) ? ay < by : ax != bx ? ax < bx : ay < by;
}

/// Twice the middle, so that it is whole.
cloth::Hole middle(const cloth::Box& box) { return {box.x0 + box.x1, box.y0 + box.y1}; }

Near::Node node_of(const Standing& s) {
  const cloth::Box& b = s.box;
  return {b, b.x0 + b.y0, b.x1 + b.y1, b.x0 - b.y1, b.x1 - b.y0, s.since};
}

void join(Near::Node& node, const Near::Node& other) {
  cloth::Box& box = node.box;
  box = {std::min(box.x0, other.box.x0), std::min(box.y0, other.box.y0), std::max(box.x1, other.box.x1), std::max(box.y1, other.box.y1)};
  node.sum0 = std::min(node.sum0, other.sum0);
  node.sum1 = std::max(node.sum1, other.sum1);
  node.difference0 = std::min(node.difference0, other.difference0);
  node.difference1 = std::max(node.difference1, other.difference1);
  node.first = std::min(node.first, other.first);
}

/// Joins every `fan` of what `node` makes of the items.
template <class Item, class Make>
std::vector<Near::Node> level_over(const std::vector<Item>& items, Make node) {
  std::vector<Near::Node> level;
  level.reserve(items.size() / Near::fan + 1);
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i % Near::fan == 0)
      level.push_back(node(items[i]));
    else
      join(level.back(), node(items[i]));
  }
  return level;
}

}  // namespace

int Near::Node::threads_to(cloth::Hole hole) const {
  const int sum = hole.x + hole.y, difference = hole.x - hole.y;
  return std::max({0, sum0 - sum, sum - sum1, difference0 - difference, difference - difference1});
}

bool Near::before(const Standing& a, const Standing& b) {
  const cloth::Hole m = middle(a.box), n = middle(b.box);
  return m == n ? a.feature < b.feature : z_before(m, n);
}

Near::Near(std::vector<Standing> sorted) : sorted_(std::move(sorted)) {
  levels_.push_back(level_over(sorted_, node_of));
  while (levels_.back().size() > 1) levels_.push_back(level_over(levels_.back(), [](const Node& node) { return node; }));
}

void Near::collect(cloth::Hole hole, std::vector<int>& features) const { collect(hole, levels_.size() - 1, 0, features); }

void Near::collect(cloth::Hole hole, std::size_t level, std::size_t index, std::vector<int>& features) const {
  if (!levels_[level][index].box.holds(hole)) return;
  const std::size_t below = level == 0 ? sorted_.size() : levels_[level - 1].size();
  for (std::size_t i = index * fan; i < std::min(below, (index + 1) * fan); ++i) {
    if (level > 0)
      collect(hole, level - 1, i, features);
    else if (sorted_[i].box.holds(hole))
      features.push_back(sorted_[i].feature);
  }
}

}  // namespace guide
