// The order of the fillings that are worked once their bars are done: from opening to opening behind the crossing where both meet, along
// the backs of finished bars to reach it; a new thread only where no such way is near.
#pragma once

#include "cutwork/openings.h"

namespace cutwork {

std::vector<RouteItem> after_route(const Cutting& cutting, const std::vector<Sides>& sides, const std::vector<stitch::Filling>& fillings,
                                   double tall);

}  // namespace cutwork
