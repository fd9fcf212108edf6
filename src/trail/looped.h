// Buttonhole stitches as a round, and their thread's way from loop to loop.
#pragma once

#include "trail/trail.h"

namespace trail {

/// The one run of the pass as listed.
Round looped_round(const stitch::Pass& pass);

/// Fills in `under`, from loop to loop along the ridge, and `ends`, where the ridge cannot go on.
void follow_ridge(Trail& trail);

}  // namespace trail
