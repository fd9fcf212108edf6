// Runs worked one after another. A run whose stitches all go the same way (a block) has four variants: from either end, either way; the stitches of any
// other run are turned one by one.
#include <algorithm>

#include "base/require.h"
#include "trail/chain.h"
#include "trail/order.h"
#include "trail/rounds.h"

namespace trail {
namespace {

/// Variant bits of a block: worked from its last stitch to its first; each stitch from b to a.
constexpr int from_the_end = 1, turned = 2;

cloth::Box box_of(const std::vector<cloth::Stitch>& stitches) {
  cloth::Box box{stitches[0].a.x, stitches[0].a.y, stitches[0].a.x, stitches[0].a.y};
  for (const cloth::Stitch& s : stitches) box.grow(s.a), box.grow(s.b);
  return box;
}

/// The stretch of a-b within the box as shares of its length; from > to where there is none.
std::pair<double, double> within(cloth::Hole a, cloth::Hole b, const cloth::Box& box) {
  double from = 0, to = 1;
  const int p[4] = {a.x - b.x, b.x - a.x, a.y - b.y, b.y - a.y}, q[4] = {a.x - box.x0, box.x1 - a.x, a.y - box.y0, box.y1 - a.y};
  for (int i = 0; i < 4; ++i) {
    if (p[i] == 0 && q[i] < 0) return {1, 0};
    if (p[i] < 0) from = std::max(from, double(q[i]) / p[i]);
    if (p[i] > 0) to = std::min(to, double(q[i]) / p[i]);
  }
  return {from, to};
}

bool inside_both(cloth::Hole a, cloth::Hole b, const cloth::Box& box, const cloth::Box& other) {
  constexpr double slack = 1e-9;
  auto first = within(a, b, box), second = within(a, b, other);
  if (first.first > second.first) std::swap(first, second);
  return first.first <= slack && (first.second >= 1 - slack || (second.first <= first.second + slack && second.second >= 1 - slack));
}

/// A whole block, or one stitch of a run that is turned stitch by stitch.
struct Unit {
  int run = 0;
  int first = 0, last = 0;  ///< places of the run
  cloth::Box box;
};

class Runs {
 public:
  Runs(const stitch::Pass& pass, const Clear& clear) : pass_(pass), clear_(clear) {
    for (std::size_t r = 0; r < pass.runs.size(); ++r) add(static_cast<int>(r), pass.runs[r]);
  }
  std::size_t size() const { return units_.size(); }
  const Unit& unit(std::size_t k) const { return units_[k]; }

  int variants(std::size_t k) const { return whole(k) ? 4 : 2; }
  Cost own(std::size_t k, int v) const {
    const stitch::Run& run = run_of(k);
    Cost cost;
    const bool down_at_b = !is_turned(k, v);
    const int n = units_[k].last - units_[k].first + 1;
    if (run.down != stitch::DownSide::none && down_at_b != (run.down == stitch::DownSide::b)) cost.wrong = n;
    if (!whole(k) && is_turned(k, v)) {
      cost.steps = 1;
      cost.away = at_corner(run, units_[k].first, pass_.closed) ? 0 : 1;
    }
    for (int i = 1; i < n; ++i) cost.back += fine(worked(k, v, i - 1).down, worked(k, v, i).up);
    return cost;
  }
  Cost step(std::size_t from, int v, std::size_t to, int w) const {
    const cloth::Hole gone = worked(from, v, units_[from].last - units_[from].first).down, come = worked(to, w, 0).up;
    if (gone == come) return {.crossing = impossible};
    return {.crossing = clear_.crossed(gone, come) ? 1 : 0,
            .outside = inside_both(gone, come, units_[from].box, units_[to].box) ? 0 : 1,
            .back = fine(gone, come)};
  }

  /// Stitch i of the unit, in the order of the variant.
  Worked worked(std::size_t k, int v, int i) const {
    const Unit& unit = units_[k];
    const stitch::Run& run = run_of(k);
    const int place = whole(k) && (v & from_the_end) ? unit.last - i : unit.first + i;
    const cloth::Stitch& s = run.stitches[static_cast<std::size_t>(place)];
    const bool other_way = is_turned(k, v);
    const int leg = run.legs.empty() ? 0 : run.legs[static_cast<std::size_t>(place)];
    return {other_way ? s.b : s.a, other_way ? s.a : s.b, other_way && !whole(k), unit.run, place, leg, false};
  }

 private:
  void add(int number, const stitch::Run& run) {
    const int n = static_cast<int>(run.stitches.size());
    if (n == 0) return;
    if (run.freedom == stitch::Freedom::all_alike) {
      units_.push_back({number, 0, n - 1, box_of(run.stitches)});
      return;
    }
    for (int i = 0; i < n; ++i) units_.push_back({number, i, i, box_of({run.stitches[static_cast<std::size_t>(i)]})});
  }
  const stitch::Run& run_of(std::size_t k) const { return pass_.runs[static_cast<std::size_t>(units_[k].run)]; }
  bool whole(std::size_t k) const { return run_of(k).freedom == stitch::Freedom::all_alike; }
  bool is_turned(std::size_t k, int v) const { return whole(k) ? (v & turned) != 0 : v == 1; }

  const stitch::Pass& pass_;
  const Clear& clear_;
  std::vector<Unit> units_;
};

}  // namespace

Round in_turn(const stitch::Pass& pass, const Clear& clear) {
  const Runs runs(pass, clear);
  const std::vector<std::uint8_t> variants = cheapest(runs, runs.size(), pass.closed ? Ring::closed : Ring::open);
  base::require(variants.size() == runs.size(), "runs that cannot be joined without coming up where the needle went down");
  Round round{.closed = pass.closed, .order = pass.order, .stitches = {}, .starts = {}};
  for (std::size_t k = 0; k < runs.size(); ++k) {
    if (runs.unit(k).first == 0 || pass.closed) round.starts.push_back(static_cast<int>(round.stitches.size()));
    for (int i = 0; i <= runs.unit(k).last - runs.unit(k).first; ++i) round.stitches.push_back(runs.worked(k, variants[k], i));
  }
  if (!pass.closed || round.starts.empty()) round.starts = {0};
  return round;
}

}  // namespace trail
