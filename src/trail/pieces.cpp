// Costs go from hole to hole: however many ways a piece has, few of them end in different holes.
#include "trail/pieces.h"

#include <algorithm>
#include <cmath>

#include "base/require.h"

namespace trail {

Pieces::Pieces(const stitch::Pass& pass, const Clear& clear) : pass_(pass), clear_(clear), options_(pass.runs.size()) {
  for (std::size_t run = 0; run < pass.runs.size(); ++run) add_options(run);
}

void Pieces::add_options(std::size_t run) {
  base::require(!pass_.runs[run].stitches.empty(), "a scattered run has stitches");
  const int last = static_cast<int>(pass_.runs[run].stitches.size()) - 1;
  switch (pass_.runs[run].freedom) {
    case stitch::Freedom::ring:
      for (int i = 0; i <= last; ++i)
        for (const int step : {1, -1}) add(run, {i, step, false, {}, {}, {}});
      return;
    case stitch::Freedom::all_alike:
      for (const bool reversed : {false, true}) add(run, {0, 1, reversed, {}, {}, {}});
      for (const bool reversed : {false, true}) add(run, {last, -1, reversed, {}, {}, {}});
      return;
    case stitch::Freedom::fixed:
    case stitch::Freedom::each_way: add(run, {0, 1, false, {}, {}, {}}); return;
  }
}

int Pieces::place(std::size_t run, const Option& option, int i) const {
  const int n = static_cast<int>(pass_.runs[run].stitches.size());
  return ((option.first + option.step * i) % n + n) % n;
}

cloth::Stitch Pieces::stitch(std::size_t run, const Option& option, int i) const {
  const cloth::Stitch stitch = pass_.runs[run].stitches[static_cast<std::size_t>(place(run, option, i))];
  return option.reversed ? stitch.reversed() : stitch;
}

void Pieces::add(std::size_t run, Option option) {
  const int n = static_cast<int>(pass_.runs[run].stitches.size());
  option.up = stitch(run, option, 0).a;
  option.down = stitch(run, option, n - 1).b;
  for (int i = 1; i < n; ++i) option.own += back(stitch(run, option, i - 1).b, stitch(run, option, i).a);
  options_[run].push_back(option);
}

Cost Pieces::back(cloth::Hole from, cloth::Hole to) const {
  constexpr double finest = 1e6;
  Cost cost;
  cost.broken = from == to;
  cost.crossing = clear_.crossed(from, to);
  cost.thread = std::llround(cloth::distance(from, to) * finest);
  return cost;
}

Pieces::Ends Pieces::after(const Ends& before, int piece) const {
  std::map<cloth::Hole, Cost> ups;
  Ends ends;
  for (const Option& option : options(piece)) {
    auto up = ups.find(option.up);
    if (up == ups.end()) {
      std::optional<Cost> least;
      for (const auto& [hole, cost] : before)
        if (const Cost here = cost + back(hole, option.up); !least || here < *least) least = here;
      up = ups.emplace(option.up, least.value_or(Cost{})).first;
    }
    const Cost cost = up->second + option.own;
    const auto [end, fresh] = ends.emplace(option.down, cost);
    if (!fresh && cost < end->second) end->second = cost;
  }
  return ends;
}

Pieces::Choice Pieces::choose(std::span<const int> order, std::optional<cloth::Hole> from, std::optional<cloth::Hole> to) const {
  std::vector<Ends> ends(1);
  if (from) ends[0].emplace(*from, Cost{});
  for (const int piece : order) ends.push_back(after(ends.back(), piece));
  std::optional<std::pair<Cost, cloth::Hole>> best;
  for (const auto& [hole, cost] : ends.back())
    if (const Cost here = to ? cost + back(hole, *to) : cost; !best || here < best->first) best = {here, hole};
  Choice choice{best->first, std::vector<int>(order.size())};
  cloth::Hole down = best->second;
  for (std::size_t i = order.size(); i-- > 0;) {  // the way back: which option and which hole before it gave this cost
    const auto& all = options(order[i]);
    bool found = false;
    for (std::size_t o = 0; o < all.size() && !found; ++o) {
      if (all[o].down != down) continue;
      const Cost wanted = ends[i + 1].at(down);
      if (ends[i].empty()) found = all[o].own == wanted;
      cloth::Hole before;
      for (const auto& [hole, cost] : ends[i])
        if (!found && cost + back(hole, all[o].up) + all[o].own == wanted) found = true, before = hole;
      if (!found) continue;
      choice.options[i] = static_cast<int>(o);
      down = before;
    }
    base::require(found, "a cheapest way has ways that lead to it");
  }
  return choice;
}

void Pieces::write(int piece, const Option& option, std::vector<Worked>& into) const {
  const auto run = static_cast<std::size_t>(piece);
  const int n = static_cast<int>(pass_.runs[run].stitches.size());
  for (int i = 0; i < n; ++i) {
    const cloth::Stitch s = stitch(run, option, i);
    const int at = place(run, option, i);
    into.push_back({s.a, s.b, false, piece, at, pass_.runs[run].legs[static_cast<std::size_t>(at)], false});
  }
}

}  // namespace trail
