// Working lengths: where the thread is changed.
#pragma once

#include <vector>

#include "trail/trail.h"

namespace trail {

/// All stitches with which a new thread starts, rising, those of `trail.ends` (0 first) among them. As few as will do: each length's path
/// keeps within the usable one, unless a single stitch does not. A change is moved forward, by less than a quarter of a length where that
/// is enough, to the end of a block or clear of corners. `back` as back_to_each gives it.
std::vector<int> lay_lengths(const Trail& trail, const std::vector<double>& back, const Lengths& lengths);

}  // namespace trail
