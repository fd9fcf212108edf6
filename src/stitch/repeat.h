// A part repeated by quarter turns, half turns and mirrors about a middle. Its images are the part's places, numbered from 0: each is
// worked by itself, in the part's own craft order. What two of them have in common is stitched once, at the first of them.
#pragma once

#include <string>
#include <vector>

#include "cloth/turn.h"
#include "stitch/kind.h"

namespace stitch {

/// A middle in half threads: {1, 0} is half a thread to the right of hole [0, 0].
struct Repeat {
  int turn = 1;        ///< 1, 2 or 4 images round the middle
  std::string mirror;  ///< "", "x" (left to right), "y" (top to bottom), "xy" (both, and both at once)
  cloth::Hole about_twice;
  bool repeats() const { return turn > 1 || !mirror.empty(); }
};

/// How each image comes from the part, which is the first; each once, round the middle.
std::vector<cloth::Turn> images_of(const Repeat& repeat);
/// Quarter turns carry holes to holes only where the middle is a hole, or the middle of a square of four holes.
bool fits(const Repeat& repeat);
cloth::Hole image(const Repeat& repeat, cloth::Turn turn, cloth::Hole hole);

/// The work at all places. An image that adds no stitch is no place. Where an image lies over another otherwise than stitch for stitch, a
/// doubt "image-lies-over" is added. To be asked first: `fits`, `within_limit`.
Work repeated(Work part, const Repeat& repeat);
/// Do all images of the work's holes keep within the limit?
bool within_limit(const Work& part, const Repeat& repeat);

}  // namespace stitch
