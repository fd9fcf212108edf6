// Thread on the back that runs across cloth that is cut: the scissors would take it too.
#include <map>

#include "check/rules.h"

namespace check {

void back_over_cut(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (const plan::PartCutting& cut : plan.cuttings) {
    std::map<int, std::vector<plan::ReadyArea::Across>> by_trail;
    for (const plan::ReadyArea& area : cut.ready)
      for (const plan::ReadyArea::Across& across : area.across) by_trail[across.trail].push_back(across);
    for (const auto& [t, ways] : by_trail) {
      const guide::PlacedTrail& trail = plan.trails[t];
      const int stitch = ways.front().stitch;
      const cloth::Hole from = trail.trail.stitches[stitch - 1].down, to = trail.trail.stitches[stitch].up;
      snags.push_back({.rule = "back-over-cut", .severity = Severity::ask, .place = course.parts[trail.part].place, .lesson = cut.lesson, .part = trail.part,
                       .at = from, .also_at = to,
                       .words = {{"part", course.parts[trail.part].name}, {"area", course.parts[cut.part].name}},
                       .numbers = {{"n", static_cast<std::int64_t>(ways.size())}, {"stitch", stitch + 1}, {"x", from.x}, {"y", from.y}}});
    }
  }
}

}  // namespace check
