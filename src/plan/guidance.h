// What a student is guided by once it is known what is worked when: count-ins, corners to mark, close-ups.
#pragma once

#include <stop_token>

#include "guide/guide.h"
#include "plan/plan.h"

namespace plan {

/// Adds the anchors of every trail, a count-in for each of its sections with its tell-tales, and the marks of its corners. Leaves off where it is stopped.
void count_in_all(const course::Course& course, const guide::OnCloth& on_cloth, const std::stop_token& stop, Plan& plan);

/// Adds the close-ups of every lesson; the lessons must be there. Leaves off where it is stopped.
void close_up_all(const course::Course& course, const std::stop_token& stop, Plan& plan);

}  // namespace plan
