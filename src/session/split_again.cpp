#include "session/split_again.h"

#include <algorithm>

namespace session {

base::Result<SplitPreview> split_again(const course::Course& course, const plan::Plan& plan, std::stop_token stop) {
  const auto again = plan::make_plan(course, stop, plan::Lessons::split_again);
  if (!again) return tl::make_unexpected(again.error());
  SplitPreview preview;
  preview.lessons.resize(std::max(plan.lessons.size(), again->lessons.size()));
  for (std::size_t i = 0; i < preview.lessons.size(); ++i) {
    SplitPreview::Row& row = preview.lessons[i];
    if (i < plan.lessons.size()) row.now = plan.lessons[i].work, row.minutes_now = plan.lessons[i].minutes;
    if (i < again->lessons.size()) row.then = again->lessons[i].work, row.minutes_then = again->lessons[i].minutes;
    row.locked = i < course.lessons.size() && course.lessons[i].locked;
  }
  for (const plan::LessonPlan& lesson : again->lessons) preview.work.push_back(lesson.work);
  for (check::Snag& snag : check::look(course, *again))
    if (snag.rule == "split-impossible" || snag.rule == "split-lesson-short" || snag.rule == "too-many-lessons") preview.snags.push_back(std::move(snag));
  return preview;
}

}  // namespace session
