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
      return add_ring(run);
    case stitch::Freedom::all_alike:
      for (const bool reversed : {false, true}) add(run, {0, 1, reversed, {}, {}, {}});
      for (const bool reversed : {false, true}) add(run, {last, -1, reversed, {}, {}, {}});
      return;
    case stitch::Freedom::fixed:
    case stitch::Freedom::each_way:
      add(run, {0, 1, false, {}, {}, {}});
      return;
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

/// Gone round from each stitch, either way: the back of the whole round less the one link that is left out.
void Pieces::add_ring(std::size_t run) {
  const int n = static_cast<int>(pass_.runs[run].stitches.size());
  Cost all[2];  // forwards, backwards
  std::vector<Cost> links[2];
  for (const int way : {0, 1})
    for (int i = 0; i < n; ++i) {
      const Option from{i, way == 0 ? 1 : -1, false, {}, {}, {}};
      links[way].push_back(back(stitch(run, from, -1).b, stitch(run, from, 0).a));
      all[way] += links[way].back();
    }
  for (int i = 0; i < n; ++i)
    for (const int way : {0, 1}) {
      Option option{i, way == 0 ? 1 : -1, false, {}, {}, all[way]};
      option.own -= links[way][static_cast<std::size_t>(i)];
      option.up = stitch(run, option, 0).a;
      option.down = stitch(run, option, n - 1).b;
      options_[run].push_back(option);
    }
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
  int way = 0;
  for (const Option& option : options(piece)) {
    auto up = ups.find(option.up);
    if (up == ups.end()) {
      std::optional<Cost> least;
      for (const auto& [hole, reached] : before)
        if (const Cost here = reached.cost + back(hole, option.up); !least || here < *least) least = here;
      up = ups.emplace(option.up, least.value_or(Cost{})).first;
    }
    const Cost cost = up->second + option.own;
    const auto [end, fresh] = ends.emplace(option.down, Reached{cost, way++});
    if (!fresh && cost < end->second.cost) end->second.cost = cost;
  }
  return ends;
}

Pieces::Choice Pieces::choose(std::span<const int> order, std::optional<cloth::Hole> from, std::optional<cloth::Hole> to) const {
  std::vector<Ends> ends(1);
  if (from) ends[0].emplace(*from, Reached{});
  for (const int piece : order) ends.push_back(after(ends.back(), piece));
  std::optional<std::pair<Reached, cloth::Hole>> best;
  for (const auto& [hole, reached] : ends.back())
    if (const Reached here{to ? reached.cost + back(hole, *to) : reached.cost, reached.way}; !best || here < best->first)
      best = {here, hole};
  Choice choice{best->first.cost, std::vector<int>(order.size())};
  cloth::Hole down = best->second;
  for (std::size_t i = order.size(); i-- > 0;) down = step_back(ends[i], ends[i + 1], order[i], down, choice.options[i]);
  return choice;
}

/// Which way of the piece, and which hole before it, gave the cost of reaching `down`.
cloth::Hole Pieces::step_back(const Ends& before, const Ends& after, int piece, cloth::Hole down, int& way) const {
  const Cost wanted = after.at(down).cost;
  for (way = 0; way < static_cast<int>(options(piece).size()); ++way) {
    const Option& option = options(piece)[static_cast<std::size_t>(way)];
    if (option.down != down) continue;
    if (before.empty() && option.own == wanted) return {};
    std::optional<std::pair<int, cloth::Hole>> from;
    for (const auto& [hole, reached] : before)
      if (reached.cost + back(hole, option.up) + option.own == wanted && (!from || reached.way < from->first)) from = {reached.way, hole};
    if (from) return from->second;
  }
  base::require(false, "a cheapest way has ways that lead to it");
  return {};
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
