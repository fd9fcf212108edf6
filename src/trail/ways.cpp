// Costs are gathered from the end backwards, so that equals can be settled from the cut onwards. In a circle the last unit meets the first
// again: everything is gathered once for each way of the first unit, side by side.
#include "trail/ways.h"

#include <array>

namespace trail {
namespace {

using Costs = std::array<Cost, most_ways>;

class Solver {
 public:
  Solver(const Links& links, std::size_t cut)
      : links_(links), cut_(cut), lanes_(links.closed() ? static_cast<std::size_t>(links.ways(cut)) : 1), next_(links.size() * lanes_) {}

  std::vector<Way> solve() {
    const auto ahead = gather();
    if (!links_.closed()) return follow(0, lowest(ahead[0], links_.ways(cut_)));
    Way best = 0;
    for (Way first = 1; first < lanes_; ++first)
      if (ahead[first][first] < ahead[best][best]) best = first;
    return follow(best, best);
  }

 private:
  /// The unit at a place counted from the cut.
  std::size_t unit(std::size_t place) const { return (cut_ + place) % links_.size(); }

  static Way lowest(const Costs& costs, int ways) {
    Way best = 0;
    for (Way way = 1; way < ways; ++way)
      if (costs[way] < costs[best]) best = way;
    return best;
  }

  /// Of equals the one with the least thread on the back right before it: that is the same however the cloth is turned.
  static Way soonest(const Costs& costs, const Costs& links, int ways) {
    Way best = 0;
    for (Way way = 1; way < ways; ++way)
      if (costs[way] < costs[best] || (costs[way] == costs[best] && links[way].thread < links[best].thread)) best = way;
    return best;
  }

  /// By lane, cost of everything from the first unit on, for each of its ways.
  std::array<Costs, most_ways> gather() {
    std::array<Costs, most_ways> ahead = last_unit();
    for (std::size_t place = links_.size() - 1; place-- > 0;) {
      std::array<Costs, most_ways> here{};
      for (Way way = 0; way < links_.ways(unit(place)); ++way) step(place, way, ahead, here);
      ahead = here;
    }
    return ahead;
  }

  /// In a circle it is joined to the first unit, in each lane worked that lane's way.
  std::array<Costs, most_ways> last_unit() const {
    const std::size_t last = unit(links_.size() - 1);
    std::array<Costs, most_ways> costs{};
    for (std::size_t lane = 0; lane < lanes_; ++lane) {
      for (Way way = 0; way < links_.ways(last); ++way) {
        costs[lane][way] = links_.own(last, way);
        if (links_.closed()) costs[lane][way] += links_.link(last, way, cut_, static_cast<Way>(lane));
      }
    }
    return costs;
  }

  void step(std::size_t place, Way way, const std::array<Costs, most_ways>& ahead, std::array<Costs, most_ways>& here) {
    const std::size_t from = unit(place), to = unit(place + 1);
    const Cost own = links_.own(from, way);
    const int ways = links_.ways(to);
    Costs links;
    for (Way w = 0; w < ways; ++w) links[w] = links_.link(from, way, to, w);
    for (std::size_t lane = 0; lane < lanes_; ++lane) {
      Costs costs;
      for (Way w = 0; w < ways; ++w) costs[w] = links[w] + ahead[lane][w];
      const Way chosen = ways > 2 ? soonest(costs, links, ways) : lowest(costs, ways);
      here[lane][way] = own + costs[chosen];
      std::uint8_t& next = next_[place * lanes_ + lane];
      next = static_cast<std::uint8_t>(next | (chosen << (2 * way)));
    }
  }

  std::vector<Way> follow(std::size_t lane, Way first) const {
    std::vector<Way> ways(links_.size());
    Way way = first;
    for (std::size_t place = 0; place < links_.size(); ++place) {
      ways[unit(place)] = way;
      way = static_cast<Way>((next_[place * lanes_ + lane] >> (2 * way)) & 3);
    }
    return ways;
  }

  const Links& links_;
  std::size_t cut_;
  std::size_t lanes_;               ///< ways of a circle's first unit; 1 for a line
  std::vector<std::uint8_t> next_;  ///< by place and lane: for each way, in two bits, the way of the unit after it
};

}  // namespace

std::vector<Way> cheapest_ways(const Links& links, std::size_t cut) {
  if (links.size() == 0) return {};
  return Solver(links, cut).solve();
}

}  // namespace trail
