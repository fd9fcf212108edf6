// A lesson whose work takes longer than its class stitches (a share of the class time, and the home work after it), by the speeds in force.
#include <cmath>

#include "check/rules.h"

namespace check {

void lesson_minutes(const course::Course&, const plan::Plan& plan, Snags& snags) {
  for (const plan::LessonPlan& lesson : plan.lessons) {
    const auto over = static_cast<std::int64_t>(std::ceil(lesson.minutes - lesson.room));
    if (lesson.minutes <= lesson.room * 1.02) continue;
    snags.push_back({.rule = "lesson-minutes", .severity = Severity::ask, .place = lesson.place, .lesson = lesson.number, .part = -1, .at = {},
                     .also_at = {}, .words = {},
                     .numbers = {{"lesson", lesson.number}, {"n", over}, {"minutes", lesson.minutes_given}, {"room", static_cast<std::int64_t>(std::floor(lesson.room))}}});
  }
}

}  // namespace check
