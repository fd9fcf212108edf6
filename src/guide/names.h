// Names of the features of one set (the blocks of a part, the corners of one row) at any time of its stitching: only what stands by then is
// seen, and a name holds only if it leads to one feature and to no other at any earlier time of the same lesson.
#pragma once

#include <array>
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
  /// What stands at one time, and which are its outermost: for each side the one that is alone there, then the two ends of a row of them.
  struct Stage {
    int n = 0;
    std::array<int, 12> outermost{};  ///< features, or -1
  };
  /// One moment: what stands then, and what stood whenever something was counted earlier in the same lesson, at its start and between its
  /// items.
  struct Moment {
    Stage now;
    std::vector<Stage> earlier;
  };
  Moment moment(When now) const;
  /// The plainest name of a feature then; nothing if it does not stand or has no unmistakable one.
  std::optional<Which> name(int feature, const Moment& moment) const;

 private:
  /// So many steps along the chain from an outermost feature.
  struct Steps {
    int steps = 0, direction = 0;
    std::size_t from = 0;  ///< place in Stage::outermost
  };
  bool stands(int feature, int n) const { return rank_[feature] < n; }
  bool whole(int n) const { return chain_ == Chain::closed && n == static_cast<int>(boxes_.size()) && turn_ != 0; }
  Stage stage(int n) const;
  std::optional<Which> plain_name(int feature, const Moment& moment) const;
  std::optional<Which> counted_name(int feature, const Moment& moment) const;
  void count_from(std::size_t anchor, int feature, const Stage& stage, std::vector<Steps>& ways) const;
  std::optional<Which> counted_form(const Steps& way, const Stage& stage) const;
  bool holds_earlier(const Which& which, int feature, const Moment& moment) const;
  int find(const Which& which, const Stage& stage) const;
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
