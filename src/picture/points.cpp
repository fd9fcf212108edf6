#include "picture/points.h"

#include <algorithm>

namespace picture {
namespace {

using Does = NeedlePoint::Does;

std::vector<NeedlePoint> loop_points(const trail::Trail& trail, int first, int last, Ending ending) {
  std::vector<NeedlePoint> points;
  const auto add = [&](cloth::Hole hole, int stitch, Does does) {
    points.push_back(
        {hole, static_cast<int>(points.size()) + 1, stitch, does == Does::loops || does == Does::closes ? stitch : stitch - 1, does});
  };
  add(first_loop_hole(trail, first), first, Does::begins);
  for (int k = first; k <= last; ++k) {
    const trail::Worked& w = trail.stitches[k];
    if (k > first && std::binary_search(trail.ends.begin(), trail.ends.end(), k)) add(w.up, k, Does::old_down), add(w.up, k, Does::new_up);
    add(w.down, k, Does::down);
    add(w.up, k, Does::loops);
  }
  if (ending == Ending::numbered) add(trail.stitches[trail.closed ? 0 : last].up, last, Does::closes);
  return points;
}

}  // namespace

std::vector<NeedlePoint> points_of(const trail::Trail& trail, int first, int last, Ending ending) {
  if (first > last) return {};
  if (trail.order == stitch::Order::looped) return loop_points(trail, first, last, ending);
  std::vector<NeedlePoint> points;
  for (int k = first; k <= last; ++k) {
    points.push_back({trail.stitches[k].up, up_number(k, first), k, k - 1, k == first ? Does::begins : Does::up});
    points.push_back({trail.stitches[k].down, down_number(k, first), k, k, Does::down});
  }
  return points;
}

}  // namespace picture
