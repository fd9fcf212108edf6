// The holes of one feature that a student can point at, each with what it takes to say which.
#pragma once

#include <vector>

#include "guide/guide.h"

namespace guide {

/// One hole of one feature.
struct Candidate {
  cloth::Hole hole;
  int feature = 0;  ///< as numbered by Landmarks
  Spot spot;
  cloth::Stitch stitch;  ///< of a bundle
  bool plain = false;    ///< does not stand out: neither a block's corner nor a row's corner or end
};

/// A bundle's stitch ends, stitch by stitch from the left or the top; a corner's or end's hole. Of a bundle whose stitches are not parallel
/// or lie on one line: nothing, for they cannot be counted off. Plain are all but the ends of the first and last stitch.
std::vector<Candidate> spots_of(const stitch::Feature& feature, int number);
/// Holds the feature's holes.
cloth::Box box_of(const stitch::Feature& feature);

}  // namespace guide
