// Where real threads run out: as few working lengths as will do, none ending just at a corner.
#pragma once

#include "trail/trail.h"

namespace trail {

/// Adds to trail.ends, where it holds the forced changes already (0 among them), those that the lengths ask for. back[k]: thread on the back before stitch k.
void lay_out_lengths(Trail& trail, const std::vector<double>& back, const Lengths& lengths);

}  // namespace trail
