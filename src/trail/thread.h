// Lengths along a trail.
#pragma once

#include <vector>

#include "cloth/size.h"
#include "trail/trail.h"

namespace trail {

/// Back thread that leads to each stitch, along `via` where given, in threads across (one down is `tall` of them); 0 for the first. A change
/// of thread is not looked at.
std::vector<double> back_to_each(const std::vector<Worked>& stitches, const std::vector<Under>& under, double tall);

inline double front(const Worked& stitch, double tall) { return cloth::distance(stitch.up, stitch.down, tall); }

}  // namespace trail
