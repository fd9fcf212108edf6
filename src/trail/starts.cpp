#include "trail/starts.h"

#include <set>

namespace trail {
namespace {

class Pairs {
 public:
  explicit Pairs(const Round& round) : stitches_(round.stitches) {}
  int size() const { return static_cast<int>(stitches_.size()); }
  /// Two stitches side by side; a pair never lies over the end of the circle.
  bool pair(int i) const { return 0 <= i && i + 1 < size() && at(i).run == 0 && at(i + 1).run == 1 && !at(i).over && !at(i + 1).over; }
  int leg(int i) const { return at(i).leg; }
  bool forward(int i) const { return !at(i).backward && !at(i + 1).backward; }
  /// Are there so many pairs of the same leg on either side?
  bool between_pairs(int i, int pairs) const {
    for (int k = 1; k <= pairs; ++k)
      if (!like(i, i - 2 * k) || !like(i, i + 2 * k)) return false;
    return true;
  }

 private:
  const Worked& at(int i) const { return stitches_[static_cast<std::size_t>(i)]; }
  bool like(int i, int other) const { return pair(other) && at(other).leg == at(i).leg; }
  const std::vector<Worked>& stitches_;
};

template <class Holds>
std::vector<int> collect(int size, Holds holds) {
  std::vector<int> found;
  for (int i = 0; i < size; ++i)
    if (holds(i)) found.push_back(i);
  return found;
}

std::vector<int> turn_about_starts(const Round& round) {
  const Pairs pairs(round);
  const int n = pairs.size();
  // Two pairs from a corner the round can be closed before the corner's own stitches come into the same picture.
  const auto clear = [&](int i, int by) { return pairs.pair(i) && pairs.forward(i) && pairs.between_pairs(i, by); };
  std::set<int> long_legs;
  for (int i = 0; i < n; ++i)
    if (clear(i, 2)) long_legs.insert(pairs.leg(i));
  auto starts = collect(n, [&](int i) { return clear(i, 2) || (clear(i, 1) && !long_legs.contains(pairs.leg(i))); });
  if (starts.empty()) starts = collect(n, [&](int i) { return pairs.pair(i) && pairs.forward(i); });
  if (starts.empty()) starts = collect(n, [&](int i) { return pairs.pair(i); });
  return starts.empty() ? std::vector{0} : starts;
}

std::vector<int> in_turn_starts(const stitch::Pass& pass, const std::vector<Worked>& stitches) {
  const int n = static_cast<int>(stitches.size());
  const auto at = [&](int i) -> const Worked& { return stitches[static_cast<std::size_t>((i + n) % n)]; };
  const auto same = [&](int i, int other) { return at(i).run == at(other).run && at(i).leg == at(other).leg; };
  auto starts = collect(n, [&](int i) {
    const bool row = pass.runs[static_cast<std::size_t>(at(i).run)].freedom == stitch::Freedom::each_way;
    if (row) return !at(i).backward && same(i, i - 1) && same(i, i + 1);
    return i == 0 || at(i).run != at(i - 1).run;
  });
  return starts.empty() ? std::vector{0} : starts;
}

}  // namespace

std::vector<int> starts_of(const stitch::Pass& pass, const Round& round) {
  if (round.stitches.empty()) return {};
  if (!round.closed) return {0};
  return round.order == stitch::Order::turn_about ? turn_about_starts(round) : in_turn_starts(pass, round.stitches);
}

}  // namespace trail
