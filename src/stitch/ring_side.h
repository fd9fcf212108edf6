// On which side of a chain of blocks a point lies: inside a ring, or to the right of the way of going.
#pragma once

#include <span>
#include <vector>

#include "cloth/hole.h"
#include "cloth/way.h"

namespace stitch {

/// The polygon through the middles of a ring's blocks, sides in the eight ways, corners on a lattice of `unit` threads from its first
/// corner. Inside is what the even-odd rule says, so a ring that crosses itself has its own answer for each loop.
class RingInside {
 public:
  RingInside(const std::vector<cloth::Hole>& corners, int unit);
  /// Does the ring hold what lies next to this corner, towards N, E, S or W? In time logarithmic in the corners.
  bool holds(cloth::Hole corner, cloth::Way towards) const;

 private:
  /// One side's part between two neighbouring lattice rows.
  struct Piece {
    int row = 0, x = 0, other_x = 0;
    friend auto operator<=>(const Piece&, const Piece&) = default;
  };
  static bool odd_before(const std::vector<Piece>& pieces, Piece piece);
  void add_side(cloth::Hole from, cloth::Hole to);
  cloth::Hole origin_;
  int unit_;
  std::vector<Piece> by_upper_, by_lower_;  // the same pieces: x at the upper row first, x at the lower row first
};

/// Coming along `in` and leaving along `out`: does `towards` point to the right-hand side of the way?
bool on_right(cloth::Way in, cloth::Way out, cloth::Way towards);

}  // namespace stitch
