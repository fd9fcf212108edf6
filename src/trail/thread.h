// Lengths along a trail.
#pragma once

#include <vector>

#include "trail/trail.h"

namespace trail {

/// Back thread that leads to each stitch, along `via` where given, in threads; 0 for the first. A change of thread is not looked at.
std::vector<double> back_to_each(const std::vector<Worked>& stitches, const std::vector<Under>& under);

inline double front(const Worked& stitch) { return cloth::distance(stitch.up, stitch.down); }

}  // namespace trail
