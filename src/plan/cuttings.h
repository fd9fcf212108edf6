// The cutting of every part that is cut, held against all that must be stitched before.
#pragma once

#include "plan/plan.h"

namespace plan {

inline constexpr int near_by = 8;  ///< threads: stitches within a block's and a row's width of the cloth that is cut are worked before

/// Every part that is cut, in no lesson yet.
std::vector<PartCutting> cuttings_of(const course::Course& course);

/// Works each cutting out, once trails and lessons are known. What any stop stands against is not planned as cut.
void plan_cuttings(const course::Course& course, Plan& plan);

}  // namespace plan
