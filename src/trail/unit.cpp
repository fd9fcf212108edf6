// Units one run after another, and what is told of each unit for its costs: corners and neighbours.
#include "trail/unit.h"

#include <algorithm>

#include "base/require.h"

namespace trail {
namespace {

/// Of every stitch of a row, how many stitches of the row lie between it and the nearest corner or free end.
std::vector<int> from_corners(const stitch::Run& row, bool closed) {
  const std::size_t n = row.stitches.size();
  std::vector<int> from(n, far_from_corner);
  const auto turns_before = [&](std::size_t i) {
    return i > 0 ? row.legs[i] != row.legs[i - 1] : !closed || row.legs[0] != row.legs[n - 1];
  };
  for (std::size_t k = 0; k < 2 * n; ++k) {  // twice round, for circles
    const std::size_t i = k % n;
    from[i] = turns_before(i) ? 0 : std::min(from[i], from[(i + n - 1) % n] + 1);
  }
  for (std::size_t k = 2 * n; k-- > 0;) {
    const std::size_t i = k % n, next = (i + 1) % n;
    from[i] = turns_before(next) ? 0 : std::min(from[i], from[next] + 1);
  }
  return from;
}

}  // namespace

Units in_turn(const stitch::Pass& pass) {
  Units units;
  for (std::size_t r = 0; r < pass.runs.size(); ++r) {
    const stitch::Run& run = pass.runs[r];
    const int size = static_cast<int>(run.stitches.size()), number = static_cast<int>(r);
    if (run.freedom != stitch::Freedom::each_way && size > 0) units.push_back({number, 0, size, run.legs[0], false});
    if (run.freedom != stitch::Freedom::each_way) continue;
    for (int i = 0; i < size; ++i) units.push_back({number, i, 1, run.legs[static_cast<std::size_t>(i)], true});
  }
  return units;
}

void mark_corners(const stitch::Pass& pass, Units& units) {
  if (pass.order == stitch::Order::in_turn) return;  // alone, every other stitch of a row is a step back, at corners or not
  std::vector<std::vector<int>> from;
  for (const stitch::Run& run : pass.runs) from.push_back(from_corners(run, pass.closed));
  const std::size_t n = units.size();
  for (std::size_t u = 0; u < n; ++u) {
    Unit& unit = units[u];
    unit.from_corner = from[static_cast<std::size_t>(unit.run)][static_cast<std::size_t>(unit.first)];
    const bool before = (u > 0 || pass.closed) && units[(u + n - 1) % n].over;
    const bool after = (u + 1 < n || pass.closed) && units[(u + 1) % n].over;
    unit.beside_over = before || after;
  }
}

std::size_t quietest(const stitch::Pass& pass, const Units& units) {
  const std::size_t n = units.size();
  std::vector<std::size_t> clear(n, 2 * n);  // units to the nearest corner, either way
  const auto corner = [&](std::size_t u) { return units[u].over || units[u].leg != units[(u + n - 1) % n].leg; };
  for (std::size_t k = 0, far = 2 * n; k < 2 * n; ++k) {
    far = corner(k % n) ? 0 : far + 1;
    clear[k % n] = std::min(clear[k % n], far);
  }
  for (std::size_t k = 2 * n, far = 2 * n; k-- > 0;) {
    clear[k % n] = std::min(clear[k % n], far);
    far = corner(k % n) ? 0 : far + 1;
  }
  std::size_t best = 0;
  const auto fits = [&](std::size_t u) { return pass.order == stitch::Order::in_turn || units[u].run == 0; };
  for (std::size_t u = 1; u < n; ++u)
    if (fits(u) && (!fits(best) || clear[u] > clear[best])) best = u;
  return best;
}

}  // namespace trail
