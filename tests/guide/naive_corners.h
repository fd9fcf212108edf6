// Corners of rows and bends of blocks, found and compared the slow way for the tests: rows are cut into their legs, blocks are taken from
// the kind's own squares, and two places are held over one another in all four turns.
#pragma once

#include <algorithm>
#include <vector>

#include "guide/worked_course.h"

namespace naive {

struct Corner {
  int trail = 0;
  int turn = 0;  ///< first stitch of the new leg
  cloth::Hole hole;
  std::vector<trail::Worked> around;
  int first = 0;  ///< stitch with which `around` begins; in a circle it may lie before the trail's first
};

using Leg = std::vector<trail::Worked>;

inline bool special(const trail::Worked& w) { return w.over || w.backward; }

/// The end of a leg: at most four stitches of its rhythm and the special ones after them.
inline Leg end_of(const Leg& leg) {
  std::size_t i = leg.size();
  while (i > 0 && special(leg[i - 1])) --i;
  for (int n = 0; n < 4 && i > 0 && !special(leg[i - 1]); ++n) --i;
  return {leg.begin() + static_cast<std::ptrdiff_t>(i), leg.end()};
}
inline Leg reversed(Leg leg) { return {leg.rbegin(), leg.rend()}; }
inline int rhythm(const Leg& leg) {
  return static_cast<int>(std::count_if(leg.begin(), leg.end(), [](const auto& w) { return !special(w); }));
}

/// What is shown round the corner of two legs: it begins with the first row and leaves no pair half, where that leaves something.
inline Corner corner(int trail, int turn, const Leg& before, const Leg& after) {
  Leg left = end_of(before), right = reversed(end_of(reversed(after)));
  if (left.empty() ? false : left[0].run == 1 && rhythm(left) > 1) left.erase(left.begin());
  const int first = (left.empty() ? right : left)[0].run;
  if (!right.empty() && right.back().run == first && rhythm(right) > 1) right.pop_back();
  const int begin = turn - static_cast<int>(left.size());
  left.insert(left.end(), right.begin(), right.end());
  return {trail, turn, {}, left, begin};
}

inline std::vector<Corner> corners(const worked_course::Whole& whole, int trail) {
  const trail::Trail& work = whole.trails[trail].trail;
  std::vector<Leg> legs;
  std::vector<int> begins;
  for (int k = 0; k < whole.size(trail); ++k) {
    if (k == 0 || work.stitches[k].leg != work.stitches[k - 1].leg) legs.emplace_back(), begins.push_back(k);
    legs.back().push_back(work.stitches[k]);
  }
  std::vector<Corner> found;
  const bool round = work.closed && legs.size() > 1 && legs.front()[0].leg == legs.back()[0].leg;
  const std::size_t n = legs.size();
  Leg split = legs.back();  // a leg in which the trail begins and ends
  if (round) split.insert(split.end(), legs.front().begin(), legs.front().end());
  for (std::size_t i = 1; i < n; ++i) {
    const Leg& before = round && i == 1 ? split : legs[i - 1];
    const Leg& after = round && i + 1 == n ? split : legs[i];
    found.push_back(corner(trail, begins[i], before, after));
    std::vector<cloth::Hole> shared;  // the hole in which the first row's stitches on both legs meet
    for (const auto& a : legs[i - 1])
      for (const auto& b : legs[i])
        for (const cloth::Hole h : {a.up, a.down})
          if (a.run == 0 && b.run == 0 && (h == b.up || h == b.down)) shared.push_back(h);
    if (!shared.empty()) found.back().hole = shared[0];
  }
  return found;
}

/// Bends of a line of whole blocks, each of five stitches: where the way from square to square changes. The hole: what block and next one
/// share.
inline std::vector<Corner> bends(const worked_course::Whole& whole, int trail) {
  const auto& features = whole.course.parts[whole.trails[trail].part].work.features;
  const auto& stitches = whole.trails[trail].trail.stitches;
  std::vector<Corner> found;
  for (std::size_t i = 1; i + 1 < features.size(); ++i) {
    if (features[i].hole - features[i - 1].hole == features[i + 1].hole - features[i].hole) continue;
    const auto at = [&](std::size_t k) { return stitches.begin() + static_cast<std::ptrdiff_t>(k); };
    found.push_back({trail, static_cast<int>(5 * i + 5), {}, {at(5 * i - 2), at(5 * i + 7)}, static_cast<int>(5 * i - 2)});
    for (auto& w : found.back().around) w.run -= static_cast<int>(i);
    for (const auto& s : features[i].stitches)
      for (const auto& t : features[i + 1].stitches)
        for (const cloth::Hole h : {s.a, s.b})
          if (h == t.a || h == t.b) found.back().hole = h;
  }
  return found;
}

inline cloth::Hole quarter(cloth::Hole h, int times) {
  static constexpr int c[4] = {1, 0, -1, 0}, s[4] = {0, 1, 0, -1};
  return {c[times] * h.x - s[times] * h.y, s[times] * h.x + c[times] * h.y};
}

inline bool alike(const Corner& a, const Corner& b) {
  if (a.around.size() != b.around.size()) return false;
  for (int times = 0; times < 4; ++times) {
    bool same = true;
    for (std::size_t i = 0; i < a.around.size() && same; ++i) {
      const auto &v = a.around[i], &w = b.around[i];
      same = v.run == w.run && v.backward == w.backward && quarter(v.up - a.hole, times) == w.up - b.hole &&
             quarter(v.down - a.hole, times) == w.down - b.hole;
    }
    if (same) return true;
  }
  return false;
}

}  // namespace naive
