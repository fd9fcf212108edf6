// Rings nobody drew: outlines of squares grown together at random.
#pragma once

#include <map>
#include <set>
#include <vector>

#include "cloth/way.h"
#include "guide/hand_made.h"

namespace hand_made {

/// Corner points of the squares along their outline, in order, clockwise as seen with y down. Nothing where the squares enclose a hole or
/// the outline touches itself.
inline std::vector<cloth::Hole> outline_of(const std::set<cloth::Hole>& squares) {
  std::map<cloth::Hole, cloth::Hole> next;
  std::size_t sides = 0;
  for (const cloth::Hole& s : squares) {
    const cloth::Hole corners[] = {s, s + cloth::Hole{1, 0}, s + cloth::Hole{1, 1}, s + cloth::Hole{0, 1}};
    const cloth::Way outwards[] = {cloth::Way::N, cloth::Way::E, cloth::Way::S, cloth::Way::W};
    for (int i = 0; i < 4; ++i) {
      if (squares.contains(s + cloth::step(outwards[i]))) continue;
      next[corners[i]] = corners[(i + 1) % 4];
      ++sides;
    }
  }
  std::vector<cloth::Hole> points{next.begin()->first};
  while (next[points.back()] != points.front() && points.size() <= sides) points.push_back(next[points.back()]);
  return points.size() == sides ? points : std::vector<cloth::Hole>{};
}

inline std::vector<cloth::Hole> random_outline(Chance& chance, int squares) {
  std::vector<cloth::Hole> grown{{0, 0}};
  std::set<cloth::Hole> all{{0, 0}};
  while (static_cast<int>(grown.size()) < squares) {
    const auto way = static_cast<cloth::Way>(2 * chance.below(4));
    const cloth::Hole at = grown[chance.below(static_cast<int>(grown.size()))] + cloth::step(way);
    if (!all.insert(at).second) continue;
    if (outline_of(all).empty())
      all.erase(at);
    else
      grown.push_back(at);
  }
  return outline_of(all);
}

}  // namespace hand_made
