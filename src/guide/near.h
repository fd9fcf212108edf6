// Landmark holes by place and time: boxes within boxes, each with the time of its first landmark, over the holes in an order that keeps
// neighbours together (Z-order). Which of them is best is asked in search.h.
#pragma once

#include <vector>

#include "guide/guide.h"

namespace guide {

/// One hole of one feature, and since when it stands.
struct Candidate {
  cloth::Hole hole;
  int feature = 0;  ///< as numbered by Landmarks
  Spot spot;
  bool plain = false;  ///< does not stand out: neither a block's corner nor a row's corner or end
  When since;
};

class Near {
 public:
  using Item = Candidate;
  /// Z-order of the holes, then feature, stitch, end.
  static bool before(const Candidate& a, const Candidate& b);
  explicit Near(std::vector<Candidate> sorted);
  std::vector<Candidate> take() { return std::move(sorted_); }
  std::size_t size() const { return sorted_.size(); }

  struct Node {
    cloth::Box box;
    When first;
  };
  static constexpr int fan = 8;
  /// Node k of level l > 0 holds nodes fan*k.. of level l-1; of level 0 the candidates fan*k... The last level has one node.
  const std::vector<std::vector<Node>>& levels() const { return levels_; }
  const std::vector<Candidate>& candidates() const { return sorted_; }
  /// Candidates of exactly this hole, in order.
  std::vector<const Candidate*> at(cloth::Hole hole) const;

 private:
  std::vector<Candidate> sorted_;
  std::vector<std::vector<Node>> levels_;
};

}  // namespace guide
