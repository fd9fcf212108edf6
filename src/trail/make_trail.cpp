// A round with its start put in: back travel held against the limit, then working lengths.
#include <algorithm>

#include "base/require.h"
#include "trail/lengths.h"
#include "trail/looped.h"
#include "trail/thread.h"
#include "trail/trail.h"
#include "trail/under.h"

namespace trail {
namespace {

std::vector<Worked> begun_at(const std::vector<Worked>& stitches, int start) {
  std::vector<Worked> turned;
  turned.reserve(stitches.size());
  turned.insert(turned.end(), stitches.begin() + start, stitches.end());
  turned.insert(turned.end(), stitches.begin(), stitches.begin() + start);
  return turned;
}

/// Leads back thread that may not go straight under stitches; where there is no way, the thread is parted. Fills in `under` and `ends`.
void hold_back(Trail& trail, const Rules& rules, const std::vector<cloth::Hole>& keep_open) {
  const Clear clear(rules.keep_clear, keep_open);
  UnderStitches under(trail.stitches, clear, rules.back_limit);
  trail.ends = {0};
  for (int k = 1; k < static_cast<int>(trail.stitches.size()); ++k) {
    auto via = under.before(k);
    if (!via)
      trail.ends.push_back(k);
    else if (!via->empty())
      trail.under.push_back({k, std::move(*via)});
  }
}

void measure(Trail& trail, const std::vector<double>& back) {
  for (const Worked& stitch : trail.stitches) trail.front_threads += front(stitch, trail.tall);
  for (const double length : back) trail.back_threads += length;
  for (const int k : trail.ends) trail.back_threads -= back[static_cast<std::size_t>(k)];
}

}  // namespace

Trail make_trail(const Round& round, int start, const Rules& rules, const Lengths& lengths) {
  Trail trail;
  trail.closed = round.closed;
  trail.order = round.order;
  trail.tall = lengths.tall;
  if (round.stitches.empty()) return trail;
  base::require(0 <= start && start < static_cast<int>(round.stitches.size()), "a trail starts with one of its stitches");
  base::require(round.closed || start == 0, "a line is begun at its first stitch");
  trail.stitches = begun_at(round.stitches, start);
  round.order == stitch::Order::looped ? follow_ridge(trail) : hold_back(trail, rules, round.keep_open);
  const std::vector<double> back = back_to_each(trail.stitches, trail.under, trail.tall);
  trail.ends = lay_lengths(trail, back, lengths);
  std::erase_if(trail.under, [&](const Under& u) { return std::binary_search(trail.ends.begin(), trail.ends.end(), u.stitch); });
  measure(trail, back);
  return trail;
}

}  // namespace trail
