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

/// Which of two stitches a tail goes on to: one that leads away from the hole, then the nearer to the one before, then to the hole, then
/// the one worked later.
struct Rank {
  bool back;
  std::int64_t apart;
  std::pair<std::int64_t, std::int64_t> distances;
  Moment worked;
  cloth::Stitch stitch;
  bool operator<(const Rank& other) const {
    return std::tie(back, apart, distances, other.worked, stitch) <
           std::tie(other.back, other.apart, other.distances, worked, other.stitch);
  }
};

/// The best of what it is shown.
class Best {
 public:
  void offer(const Holds::Held& held, Rank rank) {
    if (held_ && !(rank < rank_)) return;
    held_ = &held;
    rank_ = rank;
  }
  const Holds::Held* held() const { return held_; }

 private:
  const Holds::Held* held_ = nullptr;
  Rank rank_{};
};

}  // namespace

Tail::Tail(const Holds& holds, cloth::Hole hole, double reach, double length)
    : holds_(holds), hole_(hole), reach_(reach), wanted_(std::max(length, 1.0)) {}  // one stitch at the least

void Tail::add(const cloth::Stitch& stitch) {
  if (!taken_.insert(stitch).second) return;
  under_.push_back(stitch);
  open_.push_back(stitch);
  held_ += cloth::distance(stitch.a, stitch.b);
}

void Tail::walk(const trail::Trail& trail, int from, int to, const std::function<bool(int)>& allowed) {
  const int by = from <= to ? 1 : -1;
  for (int k = from; k != to + by && !enough() && allowed(k); k += by) {
    const cloth::Stitch stitch = cloth::Stitch{trail.stitches[k].up, trail.stitches[k].down}.normal();
    const bool beside =
        under_.empty() ? static_cast<double>(distances(stitch, hole_).first) <= reach_ * reach_ : apart(stitch, under_.back()) <= gap * gap;
    if (!beside) return;
    add(stitch);
  }
}

const Holds::Held* Tail::nearest_to_hole(const Moment& now) const {
  Best best;
  holds_.near(hole_, static_cast<int>(reach_), [&](const Holds::Held& held) {
    if (before(held.worked, now)) best.offer(held, {false, 0, distances(held.stitch, hole_), held.worked, held.stitch});
  });
  return best.held();
}

const Holds::Held* Tail::beside(const cloth::Stitch& stitch, const Moment& now) const {
  const auto stitch_from_hole = distances(stitch, hole_);
  const double far = std::max(reach_, wanted_);
  Best best;
  for (const cloth::Hole end : {stitch.a, stitch.b})
    holds_.near(end, gap, [&](const Holds::Held& held) {
      const auto from_hole = distances(held.stitch, hole_);
      if (!before(held.worked, now) || taken_.contains(held.stitch) || static_cast<double>(from_hole.first) > far * far) return;
      best.offer(held, {from_hole.first <= stitch_from_hole.first, apart(held.stitch, stitch), from_hole, held.worked, held.stitch});
    });
  return best.held();
}

const Holds::Held* Tail::next(const Moment& now) {
  for (; !open_.empty(); open_.pop_back())
    if (const Holds::Held* held = beside(open_.back(), now)) return held;
  return nullptr;
}

void Tail::grow(const Moment& now) {
  if (enough()) return;
  for (const Holds::Held* held = empty() ? nearest_to_hole(now) : next(now); held && !enough(); held = next(now)) add(held->stitch);
}

std::vector<cloth::Stitch> Tail::take() {
  std::sort(under_.begin(), under_.end(), [&](const cloth::Stitch& s, const cloth::Stitch& t) {
    return std::make_pair(distances(s, hole_), s) < std::make_pair(distances(t, hole_), t);
  });
  return std::move(under_);
}

}  // namespace guide
