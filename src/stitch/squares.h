// A path of blocks as the squares they cover, 4 x 4 threads each, and the steps between them.
#pragma once

#include <string_view>
#include <vector>

#include "cloth/hole.h"
#include "cloth/way.h"
#include "stitch/item_faults.h"
#include "stitch/path.h"

namespace stitch {

inline constexpr int block_side = 4;  ///< threads that a block's stitches cross, and that they lie side by side over
inline constexpr int block_stitches = 5;

/// Which way a block's stitches run.
enum class Grain { upright, across };
/// Does a straight step share the end stitch, or leave four threads free?
enum class Spacing { joined, apart };

struct Square {
  cloth::Hole at;  ///< its upper left hole
  Grain grain = Grain::upright;
};

struct Step {
  cloth::Way way = cloth::Way::E;
  Spacing spacing = Spacing::joined;
  friend bool operator==(const Step&, const Step&) = default;
};

struct Chain {
  std::vector<Square> squares;
  std::vector<Step> steps;  ///< from each square to the next; in a ring one more, from the last to the first
  bool closed = false;
};

/// Lays the squares out. A ring is closed by its last block being the first again (it is dropped) or standing one legal step before it;
/// it does not turn straight back where it closes, and one that is closed by a step has four blocks at least. Limits are looked at before
/// anything is laid out; where there is a fault, the chain is empty.
Chain lay_squares(cloth::Hole start, Grain first, const std::vector<PathItem>& items, ItemFaults& faults);

}  // namespace stitch
