// Stitches side by side, one thread apart: what satin bars and the petals of stars have in common.
#pragma once

#include <vector>

#include "stitch/kind.h"

namespace stitch {

inline constexpr int longest_satin = 40;  ///< threads; a longer stitch catches (an assumption, no source)

/// A run of satin stitches, free to be worked from either side and from either end; and its feature, number `along` of the part.
void add_bundle(Work& work, Pass& pass, std::vector<cloth::Stitch> stitches, Shape shape, int along);

}  // namespace stitch
