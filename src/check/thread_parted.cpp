// A working length that ends only because the way on the back would be longer than the limit.
#include "check/rules.h"

namespace check {

void thread_parted(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  const double limit = course.choices.habits.back_limit;
  for (const auto& trail : plan.trails) {
    int parted = 0;
    std::optional<cloth::Hole> at, also_at;
    for (const int k : trail.trail.ends) {
      if (k == 0) continue;
      const cloth::Hole from = trail.trail.stitches[k - 1].down, to = trail.trail.stitches[k].up;
      if (cloth::distance(from, to) <= limit) continue;
      if (parted++ == 0) at = from, also_at = to;
    }
    if (parted == 0) continue;
    const course::Part& part = course.parts[trail.part];
    snags.push_back({.rule = "thread-parted", .severity = Severity::note, .place = part.place, .lesson = 0, .part = trail.part, .at = at,
                     .also_at = also_at, .words = {{"part", part.name}},
                     .numbers = {{"n", parted}, {"x", at->x}, {"y", at->y}, {"limit", static_cast<std::int64_t>(limit)}}});
  }
}

}  // namespace check
