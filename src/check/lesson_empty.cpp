// A lesson in which nothing is stitched or done.
#include "check/rules.h"

namespace check {

void lesson_empty(const course::Course&, const plan::Plan& plan, Snags& snags) {
  for (const plan::LessonPlan& lesson : plan.lessons)
    if (lesson.work.empty())
      snags.push_back({.rule = "lesson-empty", .severity = Severity::ask, .place = lesson.place, .lesson = lesson.number, .part = -1, .at = {},
                       .also_at = {}, .words = {}, .numbers = {{"lesson", lesson.number}}});
}

}  // namespace check
