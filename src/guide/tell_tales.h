// Where a start that is counted one thread off gives itself away: the first stitch that should share a hole with other work and does not,
// or touches other work and should not. What is counted from wrong work is as wrong; against it nothing shows.
#pragma once

#include <vector>

#include "guide/guide.h"

namespace guide {

/// Of one count-in and one way of being off.
struct TellTale {
  int count_in = 0;                       ///< index of the list that was given
  cloth::Way off = cloth::Way::N;         ///< the needle came up one thread too far this way: N, E, S or W
  bool shows = false;                     ///< false: no stitch worked anywhere in the course tells; what follows has no meaning then
  int lesson = 0, trail = 0, stitch = 0;  ///< what is being stitched when it shows
  bool parted =
      false;  ///< true: it should share a hole with the other part's stitch; false: it meets one, or lies on one, that it should not
  int other_part = -1;
  cloth::Hole hole;  ///< of that stitch, where it should be
};

/// Four for each count-in (N, E, S, W), in their order. The count-ins must be those of these trails. Time: the stitches that hang on each
/// count-in, up to where it shows.
[[nodiscard]] std::vector<TellTale> tell_tales(const std::vector<PlacedTrail>& trails, const std::vector<CountIn>& count_ins);

}  // namespace guide
