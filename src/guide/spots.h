// The holes of one feature that a student can point at, each with what it takes to say which.
#pragma once

#include <vector>

#include "guide/guide.h"

namespace guide {

struct SpotAt {
  cloth::Hole hole;
  Spot spot;
  cloth::Stitch stitch;  ///< a bundle's
};

/// A bundle's stitch ends, stitch by stitch from the left or the top; a corner's or end's hole. Of a bundle whose stitches are not parallel
/// or lie on one line: nothing, for they cannot be counted off.
std::vector<SpotAt> spots_of(const stitch::Feature& feature);
/// An end of the first or last stitch of its bundle; a corner's or end's hole always.
inline bool at_corner(const Spot& spot) { return spot.stitch == 0 || spot.stitch == spot.of - 1; }
/// Holds the feature's holes.
cloth::Box box_of(const stitch::Feature& feature);

}  // namespace guide
