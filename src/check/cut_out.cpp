// The piece is cut out last of all, after the wash (Archer 1911, ch. XII, on scallops): nothing is stitched behind it.
#include "check/rules.h"

namespace check {

void cut_out(const course::Course& course, const plan::Plan&, Snags& snags) {
  int done = 0;  // lesson in which it is cut out, from 1
  for (std::size_t i = 0; i < course.lessons.size(); ++i)
    for (const course::WorkItem& work : course.lessons[i].work) {
      const bool stitched = work.part >= 0, cutting_out = !stitched && work.text == "cut out";
      if (cutting_out && done == 0) done = static_cast<int>(i) + 1;
      if (done == 0 || cutting_out) continue;
      const int lesson = static_cast<int>(i) + 1;
      snags.push_back({.rule = stitched ? "cut-out-last" : "cut-out-unwashed",
                       .severity = stitched ? Severity::stop : Severity::ask,
                       .place = work.place,
                       .lesson = lesson,
                       .part = work.part,
                       .at = {},
                       .also_at = {},
                       .words = {{"work", work.text}},
                       .numbers = {{"lesson", lesson}, {"before", done}}});
    }
}

}  // namespace check
