// Blocks and surface stitches are worked before the cloth beside them is cut (common practice, no source).
#include "check/rules.h"

namespace check {

void cutting_order(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (const plan::PartCutting& cut : plan.cuttings) {
    if (cut.lesson == 0) continue;
    for (const auto& late : cut.late)
      snags.push_back({.rule = late.lesson > 0 ? "cut-before-work" : "cut-without-work", .severity = Severity::stop, .place = cut.place,
                       .lesson = cut.lesson, .part = cut.part, .at = late.at, .also_at = {},
                       .words = {{"part", course.parts[cut.part].name}, {"other", course.parts[late.part].name}},
                       .numbers = {{"lesson", cut.lesson}, {"later", late.lesson}, {"x", late.at.x}, {"y", late.at.y}}});
  }
}

}  // namespace check
