// What must be true of an area before it is cut, so that it can be looked over point by point: the blocks that hold it, the work that is finished
// before, thread ends beside it, thread that runs across it on the back.
#pragma once

#include "plan/plan.h"

namespace plan {

/// Of every area that the cutting takes out, in order; empty where nothing is planned as cut. Needs the trails and the lessons. Time goes with
/// the stitches and, near the areas, with what is withdrawn.
std::vector<ReadyArea> ready_to_cut(const course::Course& course, const Plan& plan, const PartCutting& cut);

}  // namespace plan
