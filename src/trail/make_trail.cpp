// The start put into a round; back travel beyond the limit led under stitches or parted; working lengths laid out.
#include <algorithm>

#include "trail/lengths.h"
#include "trail/trail.h"
#include "trail/way_under.h"

namespace trail {
namespace {

double way_length(cloth::Hole from, const std::vector<cloth::Hole>& via, cloth::Hole to) {
  double length = 0;
  for (const cloth::Hole h : via) length += cloth::distance(from, h), from = h;
  return length + cloth::distance(from, to);
}

/// Fills `under` and the forced `ends`; the thread on the back before each stitch.
std::vector<double> back_travel(Trail& trail, const Rules& rules) {
  const Clear clear(rules.keep_clear);
  WayUnder ways(clear, rules.back_limit);
  std::vector<double> back(trail.stitches.size(), 0);
  trail.ends = {0};
  for (std::size_t k = 0; k < trail.stitches.size(); ++k) {
    if (k > 0) {
      const cloth::Hole from = trail.stitches[k - 1].down, to = trail.stitches[k].up;
      back[k] = cloth::distance(from, to);
      if (back[k] > rules.back_limit || clear.crossed(from, to)) {
        auto via = ways.find(from, to);
        if (via.empty()) {
          trail.ends.push_back(static_cast<int>(k));
        } else {
          back[k] = way_length(from, via, to);
          trail.under.push_back({static_cast<int>(k), std::move(via)});
        }
      }
    }
    ways.worked(trail.stitches[k]);
  }
  return back;
}

void add_up(Trail& trail, const std::vector<double>& back) {
  std::size_t end = 0;
  for (std::size_t k = 0; k < trail.stitches.size(); ++k) {
    trail.front_threads += cloth::distance(trail.stitches[k].up, trail.stitches[k].down);
    const bool anew = end < trail.ends.size() && trail.ends[end] == static_cast<int>(k);
    if (anew)
      ++end;
    else
      trail.back_threads += back[k];
  }
  std::erase_if(trail.under, [&](const Under& u) { return std::binary_search(trail.ends.begin(), trail.ends.end(), u.stitch); });
}

}  // namespace

Trail make_trail(const Round& round, int start, const Rules& rules, const Lengths& lengths) {
  Trail trail{.closed = round.closed, .order = round.order, .stitches = round.stitches, .under = {}, .ends = {}};
  if (trail.stitches.empty()) return trail;
  std::rotate(trail.stitches.begin(), trail.stitches.begin() + start, trail.stitches.end());
  const std::vector<double> back = back_travel(trail, rules);
  lay_out_lengths(trail, back, lengths);
  add_up(trail, back);
  return trail;
}

double thread_of(const Trail& trail, int first, int last) {
  double length = 0;
  for (int k = first; k <= last; ++k) {
    length += cloth::distance(trail.stitches[k].up, trail.stitches[k].down);
    if (k == 0 || std::binary_search(trail.ends.begin(), trail.ends.end(), k)) continue;
    const auto under = std::lower_bound(trail.under.begin(), trail.under.end(), k, [](const Under& u, int stitch) { return u.stitch < stitch; });
    const bool led = under != trail.under.end() && under->stitch == k;
    length += way_length(trail.stitches[k - 1].down, led ? under->via : std::vector<cloth::Hole>{}, trail.stitches[k].up);
  }
  return length;
}

}  // namespace trail
