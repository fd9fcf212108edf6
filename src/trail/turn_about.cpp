// The order of two rows worked turn about. It follows from the laws alone, so nothing is searched: only the ways are left to choose.
#include <algorithm>
#include <cstdlib>
#include <optional>
#include <span>
#include <utility>

#include "base/require.h"
#include "trail/unit.h"

namespace trail {
namespace {

constexpr int row_distance = 2;  // threads, measured along the cloth's threads

/// The stitches of one row on one leg.
struct Part {
  std::span<const cloth::Stitch> stitches;
  int run = 0, first = 0;
  int size() const { return static_cast<int>(stitches.size()); }
  cloth::Hole begin(int i) const { return stitches[static_cast<std::size_t>(i)].a; }
};

bool level(cloth::Hole a, cloth::Hole b) { return std::abs(a.x - b.x) + std::abs(a.y - b.y) == row_distance; }

/// How many stitches of either row lie before the first level pair. One of the two numbers is 0: were both stitches of a pair preceded on
/// their leg, those before them would be level too.
std::optional<std::pair<int, int>> first_level(const Part& a, const Part& b) {
  for (int rest = 0; rest < std::max(a.size(), b.size()); ++rest) {
    if (rest < a.size() && b.size() > 0 && level(a.begin(rest), b.begin(0))) return std::pair{rest, 0};
    if (rest < b.size() && a.size() > 0 && level(a.begin(0), b.begin(rest))) return std::pair{0, rest};
  }
  return std::nullopt;
}

/// The same with the last level pair there is: what one row has more is worked before it. Only on a slant is that another pairing.
std::optional<std::pair<int, int>> last_level(const Part& a, const Part& b) {
  if (a.size() == 0 || b.size() == 0) return std::nullopt;
  const auto offset = [](int less) { return less > 0 ? std::pair{less, 0} : std::pair{0, -less}; };
  for (int rest = 0; rest < std::max(a.size(), b.size()); ++rest) {
    if (rest < a.size() && level(a.begin(a.size() - 1 - rest), b.begin(b.size() - 1))) return offset(a.size() - rest - b.size());
    if (rest < b.size() && level(a.begin(a.size() - 1), b.begin(b.size() - 1 - rest))) return offset(a.size() - b.size() + rest);
  }
  return std::nullopt;
}

class Merge {
 public:
  Merge(const stitch::Pass& pass, Units& units) : pass_(pass), units_(units) {}

  void all() {
    while (next_[0] < size(0) || next_[1] < size(1)) {
      const int leg = std::min(leg_at(0), leg_at(1));
      leg_of(part(0, leg), part(1, leg), leg);
    }
  }

 private:
  const stitch::Run& run(int r) const { return pass_.runs[static_cast<std::size_t>(r)]; }
  int size(int r) const { return static_cast<int>(run(r).stitches.size()); }
  int leg_at(int r) const {
    return next_[r] < size(r) ? run(r).legs[static_cast<std::size_t>(next_[r])] : run(1 - r).legs[static_cast<std::size_t>(next_[1 - r])];
  }

  /// Takes the row's next stitches as far as they lie on the leg.
  Part part(int r, int leg) {
    const int first = next_[r];
    while (next_[r] < size(r) && run(r).legs[static_cast<std::size_t>(next_[r])] == leg) ++next_[r];
    const auto count = static_cast<std::size_t>(next_[r] - first);
    return {std::span(run(r).stitches).subspan(static_cast<std::size_t>(first), count), r, first};
  }

  void add(const Part& part, int i, int leg, bool over) { units_.push_back({part.run, part.first + i, 1, leg, true, over, 0, false}); }

  void leg_of(const Part& a, const Part& b, int leg) {
    const auto before = pass_.spare == stitch::Spare::at_start ? last_level(a, b) : first_level(a, b);
    if (!before) return without_level_pair(a, b, leg);
    auto [i, j] = *before;
    for (int k = 0; k < i; ++k) add(a, k, leg, true);
    for (int k = 0; k < j; ++k) add(b, k, leg, true);
    for (; i < a.size() && j < b.size(); ++i, ++j) {
      add(a, i, leg, false);
      add(b, j, leg, false);
    }
    for (; i < a.size(); ++i) add(a, i, leg, true);
    for (; j < b.size(); ++j) add(b, j, leg, true);
  }

  /// On the shortest legs the rows may lie past each other: then whichever begins first along the leg.
  void without_level_pair(const Part& a, const Part& b, int leg) {
    const cloth::Stitch& any = a.size() > 0 ? a.stitches[0] : b.stitches[0];
    const cloth::Hole way = any.b - any.a;
    const auto along = [&](cloth::Hole h) { return std::int64_t{h.x} * way.x + std::int64_t{h.y} * way.y; };
    int i = 0, j = 0;
    while (i < a.size() || j < b.size()) {
      const bool of_a = j == b.size() || (i < a.size() && along(a.begin(i)) <= along(b.begin(j)));
      of_a ? add(a, i++, leg, true) : add(b, j++, leg, true);
    }
  }

  const stitch::Pass& pass_;
  Units& units_;
  int next_[2] = {0, 0};
};

}  // namespace

Units turn_about(const stitch::Pass& pass) {
  base::require(pass.runs.size() == 2, "rows worked turn about are two");
  for (const stitch::Run& run : pass.runs) base::require(run.freedom == stitch::Freedom::each_way, "a row's stitches are free each way");
  Units units;
  units.reserve(pass.runs[0].stitches.size() + pass.runs[1].stitches.size());
  Merge(pass, units).all();
  return units;
}

}  // namespace trail
