// A lesson that finishes no part, pass, side, flight or scattered piece: after it a student has nothing to show.
#include <algorithm>

#include "check/rules.h"

namespace check {
namespace {

bool finishes_something(const plan::Plan& plan, std::pair<int, int> where) {
  const guide::PlacedTrail& trail = plan.trails[where.first];
  const guide::Section& section = trail.sections[where.second];
  const auto& stitches = trail.trail.stitches;
  const bool scattered = trail.trail.order == stitch::Order::scattered;
  for (int k = section.first; k <= section.last; ++k) {
    if (k + 1 == static_cast<int>(stitches.size())) return true;
    const trail::Worked &one = stitches[static_cast<std::size_t>(k)], &next = stitches[static_cast<std::size_t>(k) + 1];
    if (scattered ? one.run != next.run : one.leg != next.leg) return true;
  }
  return false;
}

}  // namespace

void nothing_to_show(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (const plan::LessonPlan& lesson : plan.lessons) {
    if (lesson.number > static_cast<int>(course.lessons.size())) return;  // parted by the program, which weighs it
    const auto shows = [&](std::pair<int, int> where) { return finishes_something(plan, where); };
    const bool other_work = !lesson.cuttings.empty() || !lesson.routes.empty() || std::any_of(lesson.work.begin(), lesson.work.end(), [](const std::string& work) {
      return work == "wash" || work == "cut out";
    });
    if (lesson.sections.empty() || other_work || std::any_of(lesson.sections.begin(), lesson.sections.end(), shows)) continue;
    snags.push_back({.rule = "nothing-to-show",
                     .severity = Severity::note,
                     .place = lesson.place,
                     .lesson = lesson.number,
                     .part = -1,
                     .at = {},
                     .also_at = {},
                     .words = {},
                     .numbers = {{"lesson", lesson.number}}});
  }
}

}  // namespace check
