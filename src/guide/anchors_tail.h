// One tail: the stitches it is run under, gathered from the hole outwards, each beside one before.
#pragma once

#include <functional>
#include <unordered_set>
#include <vector>

#include "guide/anchors_holds.h"

namespace guide {

class Tail {
 public:
  /// `reach`: how far from the hole its first stitch may lie, in threads; `length`: threads to be held, as stitches' lengths together.
  Tail(const Holds& holds, cloth::Hole hole, double reach, double length);

  /// Along a trail, from stitch `from` to stitch `to` (either way), as long as each lies beside the one before and is allowed.
  void walk(const trail::Trail& trail, int from, int to, const std::function<bool(int)>& allowed);
  /// On, always to what lies beside the stitch before, or an earlier one where nothing does, among stitches worked before `now`.
  void grow(const Moment& now);
  bool empty() const { return under_.empty(); }
  /// Nearest to the hole first.
  std::vector<cloth::Stitch> take();

 private:
  bool enough() const { return held_ >= wanted_; }
  void add(const cloth::Stitch& stitch);
  const Holds::Held* nearest_to_hole(const Moment& now) const;
  const Holds::Held* beside(const cloth::Stitch& stitch, const Moment& now) const;
  const Holds::Held* next(const Moment& now);

  const Holds& holds_;
  cloth::Hole hole_;
  double reach_, wanted_, held_ = 0;
  std::vector<cloth::Stitch> under_;         ///< normal, in the order in which they were found
  std::unordered_set<cloth::Stitch> taken_;  ///< the same, to be asked
  std::vector<cloth::Stitch> open_;          ///< those that something may still lie beside, the latest last
};

}  // namespace guide
