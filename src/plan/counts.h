// The counts to be sure on a lesson's sheet: how many stitches or blocks on each side, and in all, so that they add up.
#pragma once

#include "plan/plan.h"

namespace plan {

std::vector<CountLine> counts_of(const course::Course& course, const std::vector<guide::PlacedTrail>& trails,
                                 const std::vector<std::pair<int, int>>& sections);

}  // namespace plan
