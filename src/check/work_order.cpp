// The order that the craft demands of one part: the first pass before the second, and each pass from its start on.
#include <map>
#include <tuple>

#include "check/rules.h"

namespace check {
namespace {

guide::When begins(const guide::Section& section) { return {section.lesson, section.item, 0}; }

/// Place of the lesson in the file, so that the teacher sees where to move the work.
course::Place lesson_place(const course::Course& course, int lesson) {
  return lesson >= 1 && lesson <= static_cast<int>(course.lessons.size()) ? course.lessons[lesson - 1].place : course::Place{};
}

void stretches(const course::Course& course, const guide::PlacedTrail& trail, Snags& snags) {
  for (std::size_t s = 1; s < trail.sections.size(); ++s) {
    const guide::Section &before = trail.sections[s - 1], &after = trail.sections[s];
    if (!(begins(after) < begins(before))) continue;
    snags.push_back({.rule = "stretch-order", .severity = Severity::stop, .place = lesson_place(course, after.lesson), .lesson = after.lesson,
                     .part = trail.part, .at = trail.trail.stitches[after.first].up, .also_at = {},
                     .words = {{"part", course.parts[trail.part].name}},
                     .numbers = {{"first", after.first + 1}, {"last", after.last + 1}, {"lesson", after.lesson}, {"before", before.lesson}}});
  }
}

}  // namespace

void work_order(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  std::map<std::tuple<int, int, int>, const guide::PlacedTrail*> by_pass;
  for (const auto& trail : plan.trails) by_pass[{trail.part, trail.pass, trail.place}] = &trail;
  for (const auto& trail : plan.trails) {
    stretches(course, trail, snags);
    const auto first = by_pass.find({trail.part, trail.pass - 1, trail.place});
    if (first == by_pass.end() || trail.sections.empty() || first->second->sections.empty()) continue;
    const guide::Section& ends = first->second->sections.back();
    const guide::Section& starts = trail.sections.front();
    if (!(begins(starts) < begins(ends))) continue;
    snags.push_back({.rule = "pass-order", .severity = Severity::stop, .place = lesson_place(course, starts.lesson), .lesson = starts.lesson,
                     .part = trail.part, .at = trail.trail.stitches[starts.first].up, .also_at = {},
                     .words = {{"part", course.parts[trail.part].name}},
                     .numbers = {{"pass", trail.pass}, {"lesson", starts.lesson}, {"before", ends.lesson}}});
  }
}

}  // namespace check
