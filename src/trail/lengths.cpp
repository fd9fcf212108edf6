// Each length is taken as long as it can be, then cut back to the best place near its end. First every change must lie clear of corners;
// where that cannot be, or takes far more thread, the best place within a quarter of a length is good enough.
#include "trail/lengths.h"

#include <algorithm>
#include <array>
#include <optional>

#include "trail/changes.h"
#include "trail/thread.h"

namespace trail {
namespace {

constexpr double quarter = 0.25;
constexpr double few_enough = 1.25;  // lengths for each length's worth of path, at most, when every change is to be clear of corners

enum class Care { never_at_corners, as_can_be };

class Layer {
 public:
  Layer(const Trail& trail, const std::vector<double>& back, const Lengths& lengths)
      : changes_(grade_changes(trail.stitches, trail.order)), lengths_(lengths), front_(back.size()), upto_(back.size()) {
    double sum = 0;
    for (std::size_t k = 0; k < back.size(); ++k) {
      front_[k] = front(trail.stitches[k], trail.tall);
      upto_[k] = sum += back[k] + front_[k];
    }
  }

  /// Nothing where a change would have to lie at a corner and may not.
  std::optional<std::vector<int>> lay(const std::vector<int>& parted, Care care) const {
    std::vector<int> starts;
    for (std::size_t i = 0; i < parted.size(); ++i) {
      const int end = i + 1 < parted.size() ? parted[i + 1] : static_cast<int>(front_.size());
      if (!lay_one(parted[i], end, care, starts)) return std::nullopt;
    }
    return starts;
  }

  double needed() const { return upto_.back() / lengths_.usable_threads; }

 private:
  double usable(int start) const { return lengths_.usable_threads - (start == 0 ? lengths_.first_less_threads : 0); }

  /// Path of the stitches first..last on one thread.
  double path(int first, int last) const {
    const auto f = static_cast<std::size_t>(first), l = static_cast<std::size_t>(last);
    return upto_[l] - upto_[f] + front_[f];
  }

  bool lay_one(int start, int end, Care care, std::vector<int>& starts) const {
    int furthest = start;
    while (true) {
      starts.push_back(start);
      furthest = std::max(furthest, start + 1);
      while (furthest < end && path(start, furthest) <= usable(start)) ++furthest;
      if (furthest == end) return true;
      const int next = change(start, furthest, care);
      if (next == start) return false;
      start = next;
    }
  }

  /// The next thread's first stitch: at most `furthest`; `start` where there is no place.
  int change(int start, int furthest, Care care) const {
    std::array<int, worst_grade + 1> latest;
    latest.fill(start);
    int k = furthest;
    for (; k > start && (k == furthest || path(start, k - 1) > (1 - quarter) * usable(start)); --k)
      if (int& place = latest[grade(k)]; place == start) place = k;
    const int good_up_to = care == Care::never_at_corners ? changes_.last_clear : worst_grade;
    for (int g = 0; g <= good_up_to; ++g)
      if (latest[static_cast<std::size_t>(g)] != start) return latest[static_cast<std::size_t>(g)];
    while (k > start && static_cast<int>(grade(k)) > good_up_to) --k;
    return k;
  }

  std::size_t grade(int k) const { return changes_.grades[static_cast<std::size_t>(k)]; }

  Changes changes_;
  Lengths lengths_;
  std::vector<double> front_, upto_;
};

}  // namespace

std::vector<int> lay_lengths(const Trail& trail, const std::vector<double>& back, const Lengths& lengths) {
  const Layer layer(trail, back, lengths);
  const auto strict = layer.lay(trail.ends, Care::never_at_corners);
  const double enough = few_enough * layer.needed() + 1 + static_cast<double>(trail.ends.size() - 1);
  if (strict && static_cast<double>(strict->size()) <= enough) return *strict;
  return *layer.lay(trail.ends, Care::as_can_be);
}

}  // namespace trail
