// Two threads long means: the middle is a hole. Two such stitches meet inside exactly where they have the same middle, where one ends in
// the other's middle, or where two slanted ones stand square to each other with their middles one thread apart along the cloth.
#include "stitch/crossings.h"

#include <algorithm>
#include <vector>

namespace stitch {
namespace {

struct Middle {
  cloth::Hole hole;
  int slope = 0;  ///< 1: down to the right, -1: up to the right, 0: straight
  int stitch = 0;
  friend auto operator<=>(const Middle&, const Middle&) = default;
  bool like(const Middle& other) const { return hole == other.hole && slope == other.slope; }
};

Middle middle(cloth::Stitch s, int number) {
  const cloth::Hole way = s.b - s.a;
  return {{s.a.x + way.x / 2, s.a.y + way.y / 2}, way.x * way.y / 4, number};
}

/// All middles in order; of those that are alike the first two are enough to find every first meeting.
std::vector<Middle> sorted_middles(std::span<const cloth::Stitch> stitches) {
  std::vector<Middle> middles;
  middles.reserve(stitches.size());
  for (std::size_t i = 0; i < stitches.size(); ++i) middles.push_back(middle(stitches[i], static_cast<int>(i)));
  std::sort(middles.begin(), middles.end());
  std::size_t kept = 0;
  for (const Middle& next : middles)
    if (kept < 2 || !middles[kept - 2].like(next)) middles[kept++] = next;
  middles.resize(kept);
  return middles;
}

class Finder {
 public:
  explicit Finder(std::span<const cloth::Stitch> stitches) : middles_(sorted_middles(stitches)) {
    for (std::size_t i = 0; i < stitches.size(); ++i) look(stitches[i], static_cast<int>(i));
  }
  const std::optional<std::pair<int, int>>& first() const { return first_; }

 private:
  void look(cloth::Stitch stitch, int number) {
    const Middle here = middle(stitch, number);
    const auto any = [](const Middle&) { return true; };
    for (const cloth::Hole hole : {here.hole, stitch.a, stitch.b}) look_at(hole, number, any);
    if (here.slope == 0) return;
    const auto square_to_it = [&](const Middle& other) { return other.slope == -here.slope; };
    for (const cloth::Hole aside : {cloth::Hole{1, 0}, cloth::Hole{0, 1}}) look_at(here.hole + aside, number, square_to_it);
  }

  template <class Meets>
  void look_at(cloth::Hole hole, int number, Meets meets) {
    for (auto at = std::lower_bound(middles_.begin(), middles_.end(), Middle{hole, -1, 0}); at != middles_.end() && at->hole == hole;
         ++at) {
      if (at->stitch == number || !meets(*at)) continue;
      const std::pair<int, int> pair = std::minmax(at->stitch, number);
      if (!first_ || pair < *first_) first_ = pair;
    }
  }

  std::vector<Middle> middles_;
  std::optional<std::pair<int, int>> first_;
};

}  // namespace

std::optional<std::pair<int, int>> first_meeting(std::span<const cloth::Stitch> stitches) { return Finder(stitches).first(); }

std::optional<std::pair<int, int>> first_shared_start(std::span<const cloth::Stitch> stitches) {
  std::vector<std::pair<cloth::Hole, int>> starts;
  for (std::size_t i = 0; i < stitches.size(); ++i) starts.emplace_back(stitches[i].a, static_cast<int>(i));
  std::sort(starts.begin(), starts.end());
  std::optional<std::pair<int, int>> first;
  for (std::size_t i = 1; i < starts.size(); ++i) {
    const std::pair pair{starts[i - 1].second, starts[i].second};
    if (starts[i - 1].first == starts[i].first && (!first || pair < *first)) first = pair;
  }
  return first;
}

}  // namespace stitch
