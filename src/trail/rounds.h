// The two ways a pass is planned; plan_round (trail.h) chooses by the pass's order.
#pragma once

#include "trail/clear.h"
#include "trail/trail.h"

namespace trail {

Round turn_about(const stitch::Pass& pass, const Clear& clear);
Round in_turn(const stitch::Pass& pass, const Clear& clear);

}  // namespace trail
