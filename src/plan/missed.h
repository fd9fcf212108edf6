// What a student who missed a lesson must stitch to be ready for the next one, and no more.
#pragma once

#include "plan/plan.h"

namespace plan {

/// Fills in `missed` of every lesson but the first. Needed of the lesson before: stretches that a trail goes on from, earlier passes that a later
/// one lies over, blocks that hold what is cut, and landmarks of starts that cannot be counted from anything older.
void missed_of(const course::Course& course, Plan& plan);

}  // namespace plan
