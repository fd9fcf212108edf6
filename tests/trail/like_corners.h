// Corners of a round seen alone: what lies about each, and how it was worked.
#pragma once

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "passes.h"

namespace like_corners {

/// By what lies about a corner, up to quarter turns, every pattern of ways that was found there.
using Patterns = std::map<std::string, std::set<std::string>>;

class Corners {
 public:
  explicit Corners(const trail::Round& round) : s_(round.stitches) {}

  /// Each corner of a circle that has `about` stitches of the rhythm on either side before anything else happens.
  Patterns patterns(int about) const {
    Patterns found;
    const int n = static_cast<int>(s_.size());
    for (int k = 0; k < n; ++k) {
      if (at(k).leg == at(k - 1).leg) continue;
      int first = k - 1, last = k;
      while (at(first).over && k - first < n) --first;
      while (at(last).over && last - k < n) ++last;
      first -= about, last += about;
      if (last - first >= n || !alone(first, k, last)) continue;
      found[lies(first, last)].insert(ways(first, last));
    }
    return found;
  }

 private:
  const trail::Worked& at(int k) const {
    const int n = static_cast<int>(s_.size());
    return s_[static_cast<std::size_t>((k % n + n) % n)];
  }
  bool alone(int first, int corner, int last) const {
    for (int k = first; k <= last; ++k)
      if (at(k).leg != at(k < corner ? corner - 1 : corner).leg) return false;
    return true;
  }
  /// Of the four turns the one whose text comes first.
  std::string lies(int first, int last) const {
    std::string least;
    for (const cloth::Turn turn : cloth::quarter_turns) {
      std::string here;
      const cloth::Hole from = begin(at(first));
      for (int k = first; k <= last; ++k) {
        const auto& w = at(k);
        here += (w.run == 0 ? "A" : "B") + std::string(w.over ? "o" : "");
        here += passes::text({cloth::apply(turn, begin(w) - from), cloth::apply(turn, end(w) - from)});
      }
      least = least.empty() ? here : std::min(least, here);
    }
    return least;
  }
  static cloth::Hole begin(const trail::Worked& w) { return w.backward ? w.down : w.up; }
  static cloth::Hole end(const trail::Worked& w) { return w.backward ? w.up : w.down; }
  std::string ways(int first, int last) const {
    std::string all;
    for (int k = first; k <= last; ++k) all += at(k).backward ? 'b' : 'f';
    return all;
  }

  const std::vector<trail::Worked>& s_;
};

}  // namespace like_corners
