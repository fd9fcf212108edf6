// Where a trail turns, told for those who draw and describe corners.
#include <algorithm>
#include <cstdlib>

#include "trail/trail.h"

namespace trail {
namespace {

class Turns {
 public:
  explicit Turns(const Trail& trail) : stitches_(trail.stitches), closed_(trail.closed) {}

  std::vector<Turning> all() {
    for (int k = 1; k < size(); ++k)
      if (at(k).leg != at(k - 1).leg) add(k);
    for (int k = 0; k < size(); ++k)
      if (at(k).backward) give(k);
    return std::move(turnings_);
  }

 private:
  int size() const { return static_cast<int>(stitches_.size()); }
  const Worked& at(int k) const { return stitches_[static_cast<std::size_t>(k)]; }
  bool in_rhythm(int k) const { return !at(k).over && !at(k).backward; }

  /// The leg changes before stitch k.
  void add(int k) {
    int before = k - 1, after = k;
    while (!in_rhythm(before) && before > 0 && at(before - 1).leg == at(k - 1).leg) --before;
    while (!in_rhythm(after) && after + 1 < size() && at(after + 1).leg == at(k).leg) ++after;
    turnings_.push_back({before, after, {}});
    at_.push_back(k);
  }

  /// A step back belongs to the nearest corner, or to a free end that is nearer.
  void give(int k) {
    if (turnings_.empty()) return;
    auto next = static_cast<std::size_t>(std::lower_bound(at_.begin(), at_.end(), k) - at_.begin());
    if (next == at_.size() || (next > 0 && k - at_[next - 1] < at_[next] - k)) --next;
    if (!closed_ && std::min(k, size() - 1 - k) < std::abs(k - at_[next])) return;
    turnings_[next].steps_back.push_back(k);
  }

  const std::vector<Worked>& stitches_;
  bool closed_;
  std::vector<Turning> turnings_;
  std::vector<int> at_;  ///< the first stitch after each
};

}  // namespace

std::vector<Turning> turnings(const Trail& trail) { return Turns(trail).all(); }

}  // namespace trail
