// Doubts of the kinds, told at the part's path.
#include "check/rules.h"

namespace check {

void doubts(const course::Course& course, const plan::Plan&, Snags& snags) {
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    const course::Part& part = course.parts[p];
    for (const stitch::Doubt& doubt : part.work.doubts) {
      Snag snag{.rule = doubt.rule, .severity = doubt.stops ? Severity::stop : Severity::ask, .place = place_of(part, "path"), .lesson = 0,
                .part = static_cast<int>(p), .at = doubt.at, .also_at = doubt.also_at, .words = {{"part", part.name}}, .numbers = {}};
      for (const auto& [name, number] : doubt.numbers) snag.numbers[name] = number;
      snag.numbers["x"] = doubt.at.x;
      snag.numbers["y"] = doubt.at.y;
      if (doubt.also_at) {
        snag.numbers["x2"] = doubt.also_at->x;
        snag.numbers["y2"] = doubt.also_at->y;
      }
      snags.push_back(std::move(snag));
    }
  }
}

}  // namespace check
