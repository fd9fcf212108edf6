#include "guide/anchors_tail.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace guide {
namespace {

constexpr int gap = 4;  // threads between stitches that lie side by side: blocks may leave four free (Archer)

/// Between their nearest ends, squared.
std::int64_t apart(const cloth::Stitch& s, const cloth::Stitch& t) {
  return std::min({cloth::squared(s.a, t.a), cloth::squared(s.a, t.b), cloth::squared(s.b, t.a), cloth::squared(s.b, t.b)});
}

std::pair<std::int64_t, std::int64_t> distances(const cloth::Stitch& s, cloth::Hole hole) {
  return std::minmax({cloth::squared(s.a, hole), cloth::squared(s.b, hole)});
}

/// Which of two stitches a tail goes on to: the nearer to the one before, then to the hole, then the one worked later.
struct Rank {
  std::int64_t apart;
  std::pair<std::int64_t, std::int64_t> distances;
  Moment worked;
  cloth::Stitch stitch;
  bool operator<(const Rank& other) const {
    return std::tie(apart, distances, other.worked, stitch) < std::tie(other.apart, other.distances, worked, other.stitch);
  }
};

/// The best of what it is shown.
class Best {
 public:
  void offer(int number, Rank rank) {
    if (number_ >= 0 && !(rank < rank_)) return;
    number_ = number;
    rank_ = rank;
  }
  int number() const { return number_; }

 private:
  int number_ = -1;
  Rank rank_{};
};

}  // namespace

void Tail::add(const cloth::Stitch& stitch) {
  if (!taken_.insert(stitch).second) return;
  under_.push_back(stitch);
  held_ += cloth::distance(stitch.a, stitch.b);
}

void Tail::walk(const trail::Trail& trail, int from, int to, const std::function<bool(int)>& allowed) {
  const int by = from <= to ? 1 : -1;
  for (int k = from; k != to + by && !enough() && allowed(k); k += by) {
    const cloth::Stitch stitch = cloth::Stitch{trail.stitches[k].up, trail.stitches[k].down}.normal();
    const bool beside = under_.empty() ? static_cast<double>(distances(stitch, hole_).first) <= reach_ * reach_
                                       : apart(stitch, under_.back()) <= gap * gap;
    if (!beside) return;
    add(stitch);
  }
}

int Tail::nearest_to_hole(const Moment& now) const {
  Best best;
  holds_.near(hole_, static_cast<int>(reach_), [&](int number) {
    const Holds::Held& held = holds_.held(number);
    if (before(held.worked, now)) best.offer(number, {0, distances(held.stitch, hole_), held.worked, held.stitch});
  });
  return best.number();
}

int Tail::next(const Moment& now) const {
  const cloth::Stitch last = under_.back();
  const double far = std::max(reach_, wanted_);
  Best best;
  for (const cloth::Hole end : {last.a, last.b})
    holds_.near(end, gap, [&](int number) {
      const Holds::Held& held = holds_.held(number);
      const auto from_hole = distances(held.stitch, hole_);
      if (!before(held.worked, now) || taken_.contains(held.stitch) || static_cast<double>(from_hole.first) > far * far) return;
      best.offer(number, {apart(held.stitch, last), from_hole, held.worked, held.stitch});
    });
  return best.number();
}

void Tail::grow(const Moment& now) {
  for (int number = empty() ? nearest_to_hole(now) : next(now); number >= 0; number = next(now)) {
    add(holds_.held(number).stitch);
    if (enough()) return;
  }
}

std::vector<cloth::Stitch> Tail::take() {
  std::sort(under_.begin(), under_.end(), [&](const cloth::Stitch& s, const cloth::Stitch& t) {
    return std::make_pair(distances(s, hole_), s) < std::make_pair(distances(t, hole_), t);
  });
  return std::move(under_);
}

}  // namespace guide
