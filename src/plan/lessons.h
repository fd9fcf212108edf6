// Lessons with days, minutes and thread.
#pragma once

#include "plan/plan.h"
#include "plan/schedule.h"

namespace plan {

/// Fills plan.lessons and plan.counts from the trails' sections. `passes` run beside plan.trails.
void lessons_of(const course::Course& course, const std::vector<PassOf>& passes, Plan& plan);

}  // namespace plan
