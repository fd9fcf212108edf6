// Corners of a trail in needle order.
#include "trail/trail.h"

namespace trail {
namespace {

bool of_the_rhythm(const Worked& stitch) { return !stitch.over && !stitch.backward; }

}  // namespace

std::vector<Turning> turnings(const Trail& trail) {
  std::vector<Turning> all;
  const int n = static_cast<int>(trail.stitches.size());
  for (int k = 1; k < n; ++k) {
    if (trail.stitches[k].leg == trail.stitches[k - 1].leg) continue;
    Turning turning{k - 1, k, {}};
    while (turning.before > 0 && !of_the_rhythm(trail.stitches[turning.before]) && trail.stitches[turning.before - 1].leg == trail.stitches[k - 1].leg)
      --turning.before;
    while (turning.after < n - 1 && !of_the_rhythm(trail.stitches[turning.after]) && trail.stitches[turning.after + 1].leg == trail.stitches[k].leg)
      ++turning.after;
    for (int i = turning.before; i <= turning.after; ++i)
      if (trail.stitches[i].backward) turning.steps_back.push_back(i);
    all.push_back(std::move(turning));
  }
  return all;
}

}  // namespace trail
