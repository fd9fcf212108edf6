// An edge comes before the cutting or after it, as the teacher's habit says (a choice; common practice, no source).
#include "check/rules.h"

namespace check {
namespace {

using Item = std::pair<int, int>;  ///< lesson, place among its work

Snag about(const course::Course& course, std::string rule, const guide::PlacedTrail& edge, Item when, const plan::PartCutting& cut) {
  const auto lesson = static_cast<std::size_t>(when.first);
  return {.rule = std::move(rule),
          .severity = Severity::ask,
          .place = lesson <= course.lessons.size() ? course.lessons[lesson - 1].place : course::Place{},
          .lesson = when.first,
          .part = edge.part,
          .at = {},
          .also_at = {},
          .words = {{"part", course.parts[edge.part].name}, {"other", course.parts[cut.part].name}},
          .numbers = {{"lesson", when.first}, {"before", cut.lesson}, {"later", cut.lesson}}};
}

/// The first cutting on the wrong side of the edge's work is told.
void look_at(const course::Course& course, const plan::Plan& plan, const guide::PlacedTrail& edge, Snags& snags) {
  const bool before = course.choices.habits.edge == course::EdgeWhen::before_cutting;
  const guide::Section& section = before ? edge.sections.back() : edge.sections.front();
  const Item when{section.lesson, section.item};
  for (const plan::PartCutting& cut : plan.cuttings) {
    const Item cutting{cut.lesson, cut.item};
    if (cut.lesson == 0 || (before ? when < cutting : cutting < when)) continue;
    snags.push_back(about(course, before ? "edge-after-cutting" : "edge-before-cutting", edge, when, cut));
    return;
  }
}

}  // namespace

void edge_order(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (const guide::PlacedTrail& trail : plan.trails) {
    const stitch::Kind* kind = stitch::find_kind(course.parts[trail.part].kind);
    if (kind && kind->by_edge_habit && trail.place == 0 && trail.pass == 1 && !trail.sections.empty()) look_at(course, plan, trail, snags);
  }
}

}  // namespace check
