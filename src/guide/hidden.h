// Which threads of the cloth are hard to count because stitches lie over the line that is counted along. A line is a row or column of
// holes; on it a thread is hidden where a stitch lies along the line, and where it runs between two stitches of one bundle that lie side by
// side across the line. Slanted stitches meet such a line in single holes only and hide nothing.
#pragma once

#include <tuple>
#include <utility>
#include <vector>

#include "guide/guide.h"
#include "guide/layers.h"

namespace guide {

/// From hole `from` to hole `to` of a line, hidden since `when`.
struct Stretch {
  int line = 0, from = 0, to = 0;
  When when;
};

class Stretches {
 public:
  using Item = Stretch;
  static bool before(const Stretch& a, const Stretch& b) {
    return std::tie(a.line, a.from, a.to, a.when) < std::tie(b.line, b.from, b.to, b.when);
  }
  explicit Stretches(std::vector<Stretch> sorted);
  std::vector<Stretch> take() { return std::move(sorted_); }
  std::size_t size() const { return sorted_.size(); }
  /// Adds the stretches that overlap from..to on the line and were hidden before `now`.
  void collect(int line, int from, int to, When now, std::vector<Stretch>& into) const;

 private:
  std::vector<Stretch> sorted_;
  std::vector<std::pair<int, std::size_t>> lines_;  ///< each line and its first stretch; at the end one beyond all
};

/// Stitches and bundles are gathered, then put in with `settle`; what is not settled is not seen.
class Hidden {
 public:
  void gather(cloth::Stitch stitch, When when);
  /// The threads between the bundle's stitches. Stitches longer than 64 threads are left out.
  void gather_bundle(const stitch::Feature& feature, When when);
  void settle();
  /// Threads between two holes of one row or column of holes that are hidden before `now`; of more than 256 only the first 256, for nobody
  /// counts that far.
  int threads(cloth::Hole from, cloth::Hole to, When now) const;

 private:
  Layers<Stretches> rows_, columns_;
  std::vector<Stretch> new_rows_, new_columns_;
};

}  // namespace guide
