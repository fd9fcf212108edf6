// Where the tails of each thread go. A start is held by what is worked before it; where nothing is, its tail waits and is woven in under the
// thread's own first stitches. A finish is held by the stitches just worked.
#include "guide/anchors_tail.h"

namespace guide {
namespace {

class Anchors {
 public:
  Anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, double tail_threads)
      : trails_(trails), holds_(trails), reach_(course.choices.habits.back_limit), length_(tail_threads) {}

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
    Tail tail(holds_, work.stitches[first].up, reach_, length_);
    tail.grow(moment(trails_, trail, first));
    const bool later = tail.empty();
    if (later) tail.walk(work, first, last, [](int) { return true; });
    return {first, true, later, tail.take()};
  }

  Anchor finish(int trail, int last) const {
    const trail::Trail& work = trails_[trail].trail;
    Tail tail(holds_, work.stitches[last].down, reach_, length_);
    const Moment now = moment(trails_, trail, last);
    if (last > 0) tail.walk(work, last - 1, 0, [&](int k) { return before(moment(trails_, trail, k), now); });
    tail.grow(now);
    if (tail.empty()) tail.walk(work, last, last, [](int) { return true; });
    return {last, false, false, tail.take()};
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
