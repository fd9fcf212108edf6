// Small passes of two rows against every order and every way there is. The laws are those of laws.h; the wishes are counted here anew.
#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <tuple>

#include "laws.h"
#include "passes.h"

using namespace passes;
using laws::Needle;

namespace {

/// Steps back far from everything, steps back, stitches between them and their corners, back thread in millionths.
using Wishes = std::tuple<int, int, int, long long>;

class Count {
 public:
  explicit Count(const Pass& pass) : rows_(pass) {}

  /// Nothing where law 2 is broken.
  std::optional<Wishes> of(const std::vector<Needle>& order, const std::set<std::size_t>& over) const {
    if (!rows_.never_up_where_just_down(order)) return std::nullopt;
    int far = 0, steps = 0, from_corners = 0;
    long long back = 0;
    for (std::size_t k = 0; k < order.size(); ++k) {
      if (k > 0 || rows_.closed()) back += std::llround(1e6 * cloth::distance(rows_.down(order[before(order, k)]), rows_.up(order[k])));
      if (!order[k].backward) continue;
      const int from = rows_.from_corner(order[k]);
      ++steps;
      from_corners += from;
      far += from > 0 && !among(order, over, k);
    }
    return Wishes{far, steps, from_corners, back};
  }

 private:
  static std::size_t before(const std::vector<Needle>& order, std::size_t k) { return (k + order.size() - 1) % order.size(); }
  bool among(const std::vector<Needle>& order, const std::set<std::size_t>& over, std::size_t k) const {
    const bool has_before = k > 0 || rows_.closed(), has_after = k + 1 < order.size() || rows_.closed();
    return over.contains(k) || (has_before && over.contains(before(order, k))) || (has_after && over.contains((k + 1) % order.size()));
  }

  laws::Rows rows_;
};

/// The best over all ways of one order.
std::optional<Wishes> best_ways(const Count& count, std::vector<Needle> order, const std::set<std::size_t>& over) {
  std::optional<Wishes> best;
  for (unsigned ways = 0; ways < 1U << order.size(); ++ways) {
    for (std::size_t k = 0; k < order.size(); ++k) order[k].backward = (ways >> k) & 1U;
    const auto wishes = count.of(order, over);
    if (wishes && (!best || *wishes < *best)) best = wishes;
  }
  return best;
}

struct Found {
  int orders = 0;  ///< that keep the laws
  std::optional<Wishes> best;
};

/// Every order of all stitches of both rows, every way of each.
Found best_of_all(const Pass& pass) {
  const laws::Rows rows(pass);
  const Count count(pass);
  std::vector<std::pair<int, int>> stitches;
  for (int r = 0; r < 2; ++r)
    for (std::size_t i = 0; i < pass.runs[r].stitches.size(); ++i) stitches.emplace_back(r, static_cast<int>(i));
  Found found;
  do {
    std::vector<Needle> order;
    for (const auto& [row, place] : stitches) order.push_back({row, place, false});
    std::set<std::size_t> over;
    if (!rows.each_once_in_order(order) || !rows.level(order, over)) continue;
    ++found.orders;
    const auto best = best_ways(count, order, over);
    if (best && (!found.best || *best < *found.best)) found.best = best;
  } while (std::next_permutation(stitches.begin(), stitches.end()));
  return found;
}

Wishes wishes_of(const Pass& pass, const Round& round) {
  const laws::Rows rows(pass);
  const auto order = laws::order_of(round);
  std::set<std::size_t> over;
  CHECK(rows.level(order, over));
  const auto wishes = Count(pass).of(order, over);
  REQUIRE(wishes);
  return *wishes;
}

/// So many stitches of each row from some place on.
Pass window(const Pass& pass, std::mt19937& random, std::size_t most) {
  Pass small{{}, stitch::Order::turn_about, false};
  const double share = std::uniform_real_distribution(0.0, 1.0)(random);
  for (std::size_t r = 0; r < 2; ++r) {
    const stitch::Run& run = pass.runs[r];
    const std::size_t size = std::min(run.stitches.size(), 1 + random() % (most - 1));
    const auto middle = static_cast<std::ptrdiff_t>(share * static_cast<double>(run.stitches.size() - size));
    const auto last = static_cast<std::ptrdiff_t>(run.stitches.size() - size);
    const auto first = std::clamp<std::ptrdiff_t>(middle + static_cast<std::ptrdiff_t>(random() % 5) - 2, 0, last),
               end = first + static_cast<std::ptrdiff_t>(size);
    small.runs.push_back({{run.stitches.begin() + first, run.stitches.begin() + end}, {run.legs.begin() + first, run.legs.begin() + end}});
    most = r == 0 ? most - size + 1 : most;
  }
  return small;
}

}  // namespace

TEST_CASE("up to 7 stitches: the best of all orders and ways that keep the laws") {
  std::mt19937 random(1886);
  int compared = 0;
  for (const auto* path : {"E 10, S 10, W 8", "E 8, SE 6, E 8, NE 6", "E 6, SW 6, E 6, SW 6", "SE 8, NE 8, SE 8", "S 6, E 2, S 6, E 2",
                           "E 8, NW 12, S 14", "NE 4, E 2, SE 2, S 4, SW 6"}) {
    for (const auto* lie : {"right", "left"}) {
      auto outcome = build_cable(path, 2, lie);
      if (!outcome.faults.empty() || outcome.work.passes.empty()) continue;
      for (int i = 0; i < 12; ++i) {
        const Pass pass = window(outcome.work.passes[0], random, 7);
        const Found found = best_of_all(pass);
        CHECK(found.orders == 1);  // the laws leave one order
        if (!found.best) continue;
        const Round round = trail::plan_round(pass, {});
        CHECK(laws::broken(pass, round) == "");
        CHECK(wishes_of(pass, round) == *found.best);
        ++compared;
      }
    }
  }
  CHECK(compared > 100);
}

TEST_CASE("small closed passes: the best of all ways") {
  for (const auto& [path, lie] : {std::pair{"SE 4, SW 4, NW 4, NE 4", "right"},
                                  {"E 6, S 6, W 6, N 6", "right"},
                                  {"SE 2, SW 2, NW 2, NE 2", "left"},
                                  {"E 2, SE 2, S 2, SW 2, W 2, NW 2, N 2, NE 2", "left"},
                                  {"E 2, S 2, W 2, N 2", "left"},
                                  {"E 2, S 4, W 2, N 4", "left"}}) {
    const Pass pass = cable(path, 2, lie);
    const Round round = trail::plan_round(pass, {});
    CHECK(laws::broken(pass, round) == "");
    std::set<std::size_t> over;
    const auto order = laws::order_of(round);
    REQUIRE(order.size() <= 20);
    REQUIRE(laws::Rows(pass).level(order, over));
    const auto best = best_ways(Count(pass), order, over);
    REQUIRE(best);
    CHECK(wishes_of(pass, round) == *best);
  }
}
