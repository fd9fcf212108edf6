// Features by place and time: boxes within boxes, each with the time of its first feature, over the features in an order that keeps
// neighbours together (Z-order of their middles). A box is cut off at its corners where nothing lies in them, for a count goes along rows
// and columns and a slanted flight of blocks is as far away all along. Which of them is best is asked in search.h.
#pragma once

#include <vector>

#include "guide/guide.h"

namespace guide {

struct Standing {
  cloth::Box box;
  int feature = 0;  ///< as numbered by Landmarks
  When since;
};

class Near {
 public:
  using Item = Standing;
  /// Z-order, then feature.
  static bool before(const Standing& a, const Standing& b);
  explicit Near(std::vector<Standing> sorted);
  std::vector<Standing> take() { return std::move(sorted_); }
  std::size_t size() const { return sorted_.size(); }

  struct Node {
    cloth::Box box;
    int sum0 = 0, sum1 = 0;                ///< least and greatest x + y of its holes
    int difference0 = 0, difference1 = 0;  ///< of x - y
    When first;
    /// The fewest threads, across and down together, from the hole to any of its holes.
    int threads_to(cloth::Hole hole) const;
  };
  static constexpr int fan = 8;
  /// Node k of level l > 0 holds nodes fan*k.. of level l-1; of level 0 the features fan*k... The last level has one node.
  const std::vector<std::vector<Node>>& levels() const { return levels_; }
  const std::vector<Standing>& standing() const { return sorted_; }
  /// Adds the features in whose box the hole lies.
  void collect(cloth::Hole hole, std::vector<int>& features) const;

 private:
  void collect(cloth::Hole hole, std::size_t level, std::size_t index, std::vector<int>& features) const;

  std::vector<Standing> sorted_;
  std::vector<std::vector<Node>> levels_;
};

}  // namespace guide
