// The days of the lessons: a rhythm or given days, holidays skipped, a lesson's own date first.
#pragma once

#include <optional>
#include <vector>

#include "course/course.h"

namespace course {

/// A day for each of n lessons, or none where the course has no first day and the lesson no date.
std::vector<std::optional<base::Date>> lesson_days(const Course& course, int n);

}  // namespace course
