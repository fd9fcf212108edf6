#include "trail/looped.h"

#include "base/require.h"

namespace trail {
namespace {

constexpr int clear_of_corner = 3;  // stitches on either side of a start without a corner

bool slanted(const Worked& w) { return w.up.x != w.down.x && w.up.y != w.down.y; }

/// Indices that lie so far from any corner, of a closed round.
std::vector<int> starts_clear_by(const std::vector<Worked>& stitches, int clear) {
  const int n = static_cast<int>(stitches.size());
  std::vector<int> starts;
  int since = 0;  // stitches of this leg, none fanned, up to here; twice round, for circles
  for (int i = 0; i < 2 * n + clear; ++i) {
    const Worked& w = stitches[static_cast<std::size_t>(i % n)];
    const Worked& before = stitches[static_cast<std::size_t>((i + n - 1) % n)];
    since = w.over ? 0 : w.leg != before.leg || before.over ? 1 : since + 1;
    if (since > 2 * clear && i - clear >= n) starts.push_back(i - clear - n);
  }
  return starts;
}

std::vector<int> starts(const Round& round) {
  if (!round.closed) return {0};
  for (int clear = clear_of_corner; clear >= 0; --clear)
    if (auto found = starts_clear_by(round.stitches, clear); !found.empty()) return found;
  return {0};
}

}  // namespace

Round looped_round(const stitch::Pass& pass) {
  base::require(pass.runs.size() <= 1, "looped stitches are one run");
  Round round{.closed = pass.closed, .order = pass.order, .stitches = {}, .starts = {}};
  if (pass.runs.empty()) return round;
  const stitch::Run& run = pass.runs[0];
  round.stitches.reserve(run.stitches.size());
  for (std::size_t i = 0; i < run.stitches.size(); ++i) {
    Worked worked{run.stitches[i].a, run.stitches[i].b, false, 0, static_cast<int>(i), run.legs[i], false};
    worked.over = slanted(worked);
    round.stitches.push_back(worked);
  }
  round.starts = starts(round);
  return round;
}

void follow_ridge(Trail& trail) {
  trail.ends = {0};
  for (std::size_t k = 1; k < trail.stitches.size(); ++k) {
    const Worked &before = trail.stitches[k - 1], &now = trail.stitches[k];
    const bool goes_on = cloth::squared(before.up, now.up) <= cloth::squared(now.up, now.down);
    if (goes_on)
      trail.under.push_back({static_cast<int>(k), {before.up}});
    else
      trail.ends.push_back(static_cast<int>(k));
  }
}

}  // namespace trail
