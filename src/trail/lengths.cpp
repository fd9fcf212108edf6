#include "trail/lengths.h"

#include <algorithm>

namespace trail {
namespace {

/// Least share of a length that is used before a better place to end it is passed over.
constexpr double least_use = 0.67;

class Layer {
 public:
  Layer(const Trail& trail, const std::vector<double>& back, const Lengths& lengths) : trail_(trail), back_(back), lengths_(lengths) {}

  std::vector<int> ends(const std::vector<int>& forced) {
    const int n = static_cast<int>(trail_.stitches.size());
    std::vector<int> all;
    for (std::size_t i = 0; i < forced.size(); ++i) {
      const int stop = i + 1 < forced.size() ? forced[i + 1] : n;
      for (int begin = forced[i]; begin < stop;) {
        all.push_back(begin);
        const double room = lengths_.usable_threads - (begin == 0 ? lengths_.first_less_threads : 0);
        const int full = first_beyond(begin, stop, room);
        begin = full >= stop ? stop : change_before(begin, full, room);
      }
    }
    return all;
  }

 private:
  double front(int k) const { return cloth::distance(trail_.stitches[k].up, trail_.stitches[k].down); }

  /// The first stitch that the length cannot hold any more; at least one is held.
  int first_beyond(int begin, int stop, double room) const {
    double used = front(begin);
    int k = begin + 1;
    for (; k < stop; ++k) {
      used += back_[k] + front(k);
      if (used > room) break;
    }
    return k;
  }

  bool clear_of_corners(int k) const {
    const int n = static_cast<int>(trail_.stitches.size());
    for (int i = std::max(1, k - 2); i <= std::min(n - 1, k + 2); ++i) {
      const Worked& w = trail_.stitches[i];
      if (w.leg != trail_.stitches[i - 1].leg || w.backward || w.over) return false;
    }
    return true;
  }
  /// The best place at or before `full` for the change: at the end of a block within a flight, else clear of corners, as late as can be.
  int change_before(int begin, int full, double room) const {
    const bool blocks = trail_.order == stitch::Order::in_turn;
    int clear = 0;
    double left = 0;
    for (int k = full; k > begin + 1; --k) {
      if (left > (1 - least_use) * room) break;
      if (blocks && whole_block_ends(k)) return k;
      if (clear == 0 && clear_of_corners(k)) {
        clear = k;
        if (!blocks) return k;
      }
      left += front(k - 1) + back_[k - 1];
    }
    if (clear > 0) return clear;
    for (int k = full; k > begin + 1; --k)
      if (clear_of_corners(k)) return k;
    return full;
  }
  /// Between two blocks of one flight, before stitch k.
  bool whole_block_ends(int k) const {
    return trail_.stitches[k - 1].run != trail_.stitches[k].run && trail_.stitches[k - 1].leg == trail_.stitches[k].leg;
  }

  const Trail& trail_;
  const std::vector<double>& back_;
  const Lengths& lengths_;
};

}  // namespace

void lay_out_lengths(Trail& trail, const std::vector<double>& back, const Lengths& lengths) { trail.ends = Layer(trail, back, lengths).ends(trail.ends); }

}  // namespace trail
