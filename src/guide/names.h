// Names of the features of one set (the blocks of a part, the corners of one row) at any time of its stitching: only what stands by then is
// seen, and a name holds only if it leads to one feature and to no other at any earlier time of the same lesson.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "guide/extremes.h"
#include "guide/guide.h"

namespace guide {

/// Later than everything: not on the cloth.
inline constexpr When never{std::numeric_limits<int>::max(), 0, 0};

/// How the features of a set follow one another, so that they can be counted along.
enum class Chain {
  none,    ///< they do not
  open,    ///< in a row
  closed,  ///< in a ring: the last is followed by the first
};

class Names {
 public:
  /// Boxes in the order of the chain. `reach`: neighbours are counted along only where no gap between them is wider than this many threads
  /// and than they are large; below 0: any gap.
  Names(std::vector<cloth::Box> boxes, Chain chain, int reach);
  /// Since when each stands, in the same order. Before this is called nothing stands.
  void set_ready(std::span<const When> ready);

  /// How many stand before `now`.
  int standing(When now) const;
  /// The plainest name of a feature before `now`; nothing if it does not stand then or has no unmistakable one.
  std::optional<Which> name(int feature, When now) const;
  /// The feature a name leads to when `n` stand, or -1.
  int find(const Which& which, int n) const;
  /// Features that are an extreme, or the end of a row of extremes, when `n` stand; rising.
  std::vector<int> outermost(int n) const;

 private:
  bool stands(int feature, int n) const { return rank_[feature] < n; }
  bool whole(int n) const { return chain_ == Chain::closed && n == static_cast<int>(boxes_.size()) && turn_ != 0; }
  std::optional<Which> plain_name(int feature, int n, std::span<const int> earlier) const;
  std::optional<Which> counted_name(int feature, int n, std::span<const int> earlier) const;
  std::vector<Which> counted_forms(int feature, int n) const;
  void count_from(const Which& anchor, int from, int feature, int n, std::vector<Which>& forms) const;
  bool holds(const Which& which, int feature, int n, std::span<const int> earlier) const;
  std::vector<int> earlier_in_lesson(int lesson, int n) const;
  int anchor(const Which& which, int n) const;
  int neighbour(int feature, int direction, int n) const;
  int walk(int from, int direction, int steps, int n) const;
  std::optional<cloth::Way> first_way(int from, int direction, int n) const;

  std::vector<cloth::Box> boxes_;
  Chain chain_;
  std::vector<bool> linked_;  ///< to the next one of the chain
  int turn_ = 0;              ///< 1: the chain runs clockwise on the chart, -1: the other way, 0: neither
  std::vector<int> order_;    ///< features that stand at some time, as they come
  std::vector<When> times_;   ///< theirs
  std::vector<int> rank_;     ///< place in order_, or a large number
  std::vector<int> changes_;  ///< numbers standing at which another item of a lesson begins
  Extremes extremes_{{}};
};

}  // namespace guide
