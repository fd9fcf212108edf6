// Days of the lessons: on a holiday, before the lesson before, or missing where others have one.
#include <algorithm>

#include "check/rules.h"

namespace check {
namespace {

Snag about(const plan::LessonPlan& lesson, std::string rule) {
  Snag snag{.rule = std::move(rule), .severity = Severity::ask, .place = lesson.place, .lesson = lesson.number, .part = -1, .at = {},
            .also_at = {}, .words = {}, .numbers = {{"lesson", lesson.number}}};
  if (lesson.date) snag.words["day"] = base::iso(*lesson.date);
  return snag;
}

}  // namespace

void lesson_days(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  std::optional<base::Date> before;
  for (const plan::LessonPlan& lesson : plan.lessons) {
    if (!lesson.date) {
      if (!course.days.empty()) snags.push_back(about(lesson, "lesson-without-day"));
      continue;
    }
    if (std::find(course.holidays.begin(), course.holidays.end(), *lesson.date) != course.holidays.end())
      snags.push_back(about(lesson, "lesson-on-holiday"));
    if (before && *lesson.date < *before) snags.push_back(about(lesson, "lesson-day-order"));
    before = lesson.date;
  }
}

}  // namespace check
