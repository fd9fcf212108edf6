// The outermost features of a growing set at any time of its growth: the topmost, or the left one of several that are topmost alike. Clear
// by eye only: what is not `clear_by` threads further out than all others has no such name.
#pragma once

#include <array>
#include <span>
#include <vector>

#include "guide/guide.h"

namespace guide {

inline constexpr int clear_by = 2;  ///< threads
inline constexpr std::array<Side, 4> all_sides{Side::top, Side::bottom, Side::left, Side::right};

/// The two sides square to it.
constexpr std::array<Side, 2> sides_across(Side side) {
  return side == Side::top || side == Side::bottom ? std::array{Side::left, Side::right} : std::array{Side::top, Side::bottom};
}

class Extremes {
 public:
  /// Boxes in the order in which they come; the extremes of the first n are kept for every n.
  explicit Extremes(std::span<const cloth::Box> boxes);
  /// Place (in that order) of the one that alone lies furthest out among the first n; -1: none.
  int at(Side side, int n) const;
  /// Of several that lie furthest out alike among the first n, the outermost one towards `within`; -1: none.
  int at(Side side, Side within, int n) const;

 private:
  static constexpr int far_in = 1 << 30;
  /// The furthest out and how far the next lies; smaller is further out.
  struct Outermost {
    int place = -1, best = far_in, next = far_in;
    void take(int place_of, int value);
    int clear() const { return next - best >= clear_by ? place : -1; }
  };
  struct State {
    int since = 0;  ///< how many have come
    int best = far_in, next = far_in, alike = 0, place = -1;
    std::array<Outermost, 2> within;
  };
  bool take(Side side, const cloth::Box& box, int place, State& state) const;
  const State* state(Side side, int n) const;

  std::array<std::vector<State>, 4> history_;  ///< for each side, only the changes
};

}  // namespace guide
