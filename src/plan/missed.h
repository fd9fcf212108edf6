// What a student who missed a lesson must stitch to be ready for the next one, and no more.
#pragma once

#include "plan/plan.h"

namespace plan {

/// Fills in `missed` of every lesson but the first. Needed of the lesson before: stretches that a trail or route goes on from, earlier passes
/// that a later one lies over, blocks that hold what is cut, the cutting before its bars, bars before the fillings of their openings, landmarks
/// of starts that cannot be counted from anything older; before the wash and the cutting out all of it. What is needed for something needed is
/// needed too.
void missed_of(const course::Course& course, Plan& plan);

}  // namespace plan
