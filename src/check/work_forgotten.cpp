// Where lessons are written, every stitch must be in one.
#include "check/rules.h"

namespace check {
namespace {

Snag snag_for(const course::Course& course, int part, std::string rule) {
  return {.rule = std::move(rule), .severity = Severity::stop, .place = course.parts[part].place, .lesson = 0, .part = part, .at = {},
          .also_at = {}, .words = {{"part", course.parts[part].name}}, .numbers = {}};
}

/// The first stretch of the trail that no section has: first and last stitch, or nothing.
std::optional<std::pair<int, int>> gap(const guide::PlacedTrail& trail) {
  int from = 0;
  for (const guide::Section& section : trail.sections) {
    if (section.first > from) return std::pair(from, section.first - 1);
    from = std::max(from, section.last + 1);
  }
  const int n = static_cast<int>(trail.trail.stitches.size());
  return from < n ? std::optional(std::pair(from, n - 1)) : std::nullopt;
}

/// Stitches of the same pass at earlier places of the part: its work is counted through all of them.
int before(const plan::Plan& plan, const guide::PlacedTrail& of) {
  int n = 0;
  for (const auto& trail : plan.trails)
    if (trail.part == of.part && trail.pass == of.pass && trail.place < of.place) n += static_cast<int>(trail.trail.stitches.size());
  return n;
}

}  // namespace

void work_forgotten(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  if (course.lessons.empty()) return;
  std::vector<bool> in_a_lesson(course.parts.size(), false);
  for (const auto& trail : plan.trails)
    if (!trail.sections.empty()) in_a_lesson[trail.part] = true;
  for (const auto& cut : plan.cuttings)
    if (cut.lesson == 0) snags.push_back(snag_for(course, cut.part, "part-in-no-lesson"));
  std::vector<bool> said(course.parts.size(), false);
  for (const auto& trail : plan.trails) {
    const auto missing = gap(trail);
    if (!missing || said[trail.part]) continue;
    if (!in_a_lesson[trail.part]) {
      said[trail.part] = true;
      snags.push_back(snag_for(course, trail.part, "part-in-no-lesson"));
      continue;
    }
    Snag snag = snag_for(course, trail.part, "work-forgotten");
    snag.numbers = {{"first", before(plan, trail) + missing->first + 1}, {"last", before(plan, trail) + missing->second + 1}, {"pass", trail.pass}};
    snag.at = trail.trail.stitches[missing->first].up;
    snags.push_back(std::move(snag));
  }
}

}  // namespace check
