// A way for the thread on the back that is too long to hang free: from hole to hole of stitches worked before.
#pragma once

#include <unordered_set>
#include <vector>

#include "trail/clear.h"
#include "trail/trail.h"

namespace trail {

class WayUnder {
 public:
  WayUnder(const Clear& clear, double limit) : clear_(clear), limit_(limit) {}
  void worked(const Worked& stitch) { holes_.insert(stitch.up), holes_.insert(stitch.down); }
  /// The holes between `from` and `to`, each leg at most 4 threads between holes of stitches worked (the last one within the limit), the shortest way;
  /// empty where there is none of at most four times the limit.
  std::vector<cloth::Hole> find(cloth::Hole from, cloth::Hole to) const;

 private:
  const Clear& clear_;
  double limit_;
  std::unordered_set<cloth::Hole> holes_;
};

}  // namespace trail
