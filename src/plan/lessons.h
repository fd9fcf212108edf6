// Lessons with days, minutes and thread, and what a student needs in all.
#pragma once

#include "plan/plan.h"
#include "plan/schedule.h"

namespace plan {

/// Fills plan.lessons and plan.counts from the trails' sections. `passes` run beside plan.trails.
void lessons_of(const course::Course& course, const std::vector<PassOf>& passes, Plan& plan);

void supplies_of(const course::Course& course, Plan& plan);

/// Metres and grams of one ball of pearl cotton of a size; from makers' labels by memory (3: 15 m in 5 g, 5: 25 m in 5 g, 8: 80 m in 10 g,
/// 12: 120 m in 10 g). Nothing for another size.
struct Ball {
  double metres = 0, grams = 0;
};
std::optional<Ball> pearl_ball(int size);

}  // namespace plan
