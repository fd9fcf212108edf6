// Snapping on approach: a corner of what is moved or drawn meets the middle of the cloth or a corner of another part, and how far the two
// are apart is said beside the pointer.
#pragma once

#include <vector>

#include "app/panels.h"

namespace app {

inline constexpr int snap_within = 2;  ///< threads, across and up or down

/// The corners of a part's legs, of its first place; of a part without legs the middles of its eyelets, the corners of its bars and petals.
std::vector<cloth::Hole> corners_of(const stitch::Work& work);

/// A move changed so that one of the corners meets another's or the middle, where one is near enough; and the two that are nearest to one
/// another, to say the distance between.
struct Snapped {
  cloth::Hole by;          ///< the move, snapped where something is near
  cloth::Hole own, other;  ///< before the move; of the other part, or the middle
  bool any = false;
};
/// `except`: the number of the part that is moved itself, -1 for none.
Snapped snapped(const course::Course& course, const std::vector<cloth::Hole>& own, int except, cloth::Hole by);

/// "7 threads down, 3 across", or that corner meets corner.
std::string distance_words(const Desk& desk, const Snapped& snap);
/// A line from the other corner to the moved one.
void draw_distance(const Desk& desk, Area area, ImDrawList& draw, const Snapped& snap);

}  // namespace app
