// Where the tails of each thread go. Both are held by the stitches just worked, back along the trail, and by what lies near where those do
// not do. Where nothing is stitched yet, the tail of a start waits and is woven in under the thread's own first stitches.
#include <algorithm>

#include "guide/anchors_tail.h"

namespace guide {
namespace {

constexpr double furthest = 40;  // threads from a hole to what holds its tail, whatever the limit of back travel

class Anchors {
 public:
  Anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, double tail_threads)
      : trails_(trails), holds_(trails), reach_(std::clamp(course.choices.habits.back_limit, 0.0, furthest)), length_(tail_threads) {}

  std::vector<Anchor> of(int trail) const {
    const trail::Trail& work = trails_[trail].trail;
    std::vector<Anchor> anchors;
    for (std::size_t i = 0; i < work.ends.size(); ++i) {
      const int first = work.ends[i];
      const int last = (i + 1 < work.ends.size() ? work.ends[i + 1] : static_cast<int>(work.stitches.size())) - 1;
      if (last < first) continue;
      anchors.push_back(start(trail, first, last));
      anchors.push_back(finish(trail, last));
    }
    return anchors;
  }

 private:
  Anchor start(int trail, int first, int last) const {
    const trail::Trail& work = trails_[trail].trail;
    Tail tail = held_by_work(trail, first, work.stitches[first].up);
    const bool later = tail.empty();
    if (later) tail.walk(work, first, last, [](int) { return true; });
    return {first, true, later, tail.take()};
  }

  Anchor finish(int trail, int last) const {
    const trail::Trail& work = trails_[trail].trail;
    const trail::Worked& worked = work.stitches[last];
    Tail tail = held_by_work(trail, last, work.order == stitch::Order::looped ? worked.up : worked.down);
    if (tail.empty()) tail.walk(work, last, last, [](int) { return true; });
    return {last, false, false, tail.take()};
  }

  /// By what is worked before this stitch.
  Tail held_by_work(int trail, int stitch, cloth::Hole hole) const {
    Tail tail(holds_, hole, reach_, length_);
    const Moment now = moment(trails_, trail, stitch);
    if (stitch > 0) tail.walk(trails_[trail].trail, stitch - 1, 0, [&](int k) { return before(moment(trails_, trail, k), now); });
    tail.grow(now);
    return tail;
  }

  const std::vector<PlacedTrail>& trails_;
  Holds holds_;
  double reach_, length_;
};

}  // namespace

std::vector<Anchor> anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, int trail, double tail_threads) {
  return Anchors(course, trails, tail_threads).of(trail);
}

std::vector<std::vector<Anchor>> all_anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, double tail_threads) {
  const Anchors anchors(course, trails, tail_threads);
  std::vector<std::vector<Anchor>> all;
  for (std::size_t t = 0; t < trails.size(); ++t) all.push_back(anchors.of(static_cast<int>(t)));
  return all;
}

}  // namespace guide
