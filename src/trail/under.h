// A way for thread on the back that may not go straight: from hole to hole of stitches worked before, each stretch short enough and clear
// of what must not be crossed.
#pragma once

#include <optional>
#include <span>
#include <unordered_map>
#include <vector>

#include "trail/clear.h"
#include "trail/trail.h"

namespace trail {

/// Knows all stitches of a trail, and from which on each hole is used. The effort for all searches of one trail together is bounded by a
/// multiple of its stitches; when it is used up there is no further way.
class UnderStitches {
 public:
  /// Keeps references to both.
  UnderStitches(std::span<const Worked> stitches, const Clear& clear, double limit);
  /// Holes between the end of stitch k - 1 and the start of stitch k, none of either; empty where straight will do. Nothing where there is
  /// no such way, or only one so long that ending the thread costs less.
  std::optional<std::vector<cloth::Hole>> before(int k);
  /// Is straight thread on the back allowed?
  bool straight(cloth::Hole from, cloth::Hole to) const;

 private:
  friend class Burrow;
  struct Used {
    cloth::Hole hole;
    int since = 0;
  };
  void gather();
  void use(cloth::Hole hole, int since);
  cloth::Hole tile_of(cloth::Hole hole) const;

  std::span<const Worked> stitches_;
  const Clear& clear_;
  double limit_;
  int side_;  ///< of a tile, threads
  std::int64_t looks_left_;
  bool gathered_ = false;
  std::unordered_map<cloth::Hole, std::vector<Used>> tiles_;
};

}  // namespace trail
