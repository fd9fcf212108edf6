#include "matching.h"

#include <lemon/matching.h>
#include <lemon/smart_graph.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace matching {
namespace {

using Graph = lemon::SmartGraph;
using Weights = Graph::EdgeMap<long long>;
using Matching = lemon::MaxWeightedPerfectMatching<Graph, Weights>;

constexpr double finest = 1e6;  // lengths as whole millionths of a thread

long long length(End a, End b) { return std::llround(std::hypot(a.x - b.x, a.y - b.y) * finest); }

/// Stitch ends by tiles about as large as the reach.
class Near {
 public:
  Near(const std::vector<End>& ends, double reach) : ends_(ends), reach_(reach), side_(static_cast<int>(std::ceil(reach))) {
    for (std::size_t i = 0; i < ends.size(); ++i) tiles_[tile(ends[i])].push_back(i);
  }

  /// Every end before i, in another hole and within reach.
  template <class Do>
  void each_before(std::size_t i, Do act) const {
    const auto [x, y] = tile(ends_[i]);
    for (int dx = -1; dx <= 1; ++dx) {
      for (int dy = -1; dy <= 1; ++dy) {
        const auto found = tiles_.find({x + dx, y + dy});
        if (found == tiles_.end()) continue;
        for (const std::size_t j : found->second)
          if (j < i && fits(ends_[i], ends_[j])) act(j);
      }
    }
  }

 private:
  bool fits(End a, End b) const { return (a.x != b.x || a.y != b.y) && std::hypot(a.x - b.x, a.y - b.y) <= reach_; }
  std::pair<int, int> tile(End e) const {
    const auto down = [&](int v) { return static_cast<int>(std::floor(static_cast<double>(v) / side_)); };
    return {down(e.x), down(e.y)};
  }

  const std::vector<End>& ends_;
  double reach_;
  int side_;
  std::map<std::pair<int, int>, std::vector<std::size_t>> tiles_;
};

/// For every two holes, with the matching's dual values: could thread longer than the reach have been of use? Duals are those of weights
/// that are lengths less than 0: a pair is of no use while the two values together are at least its weight.
bool proves(const Graph& graph, const Matching& matching, std::size_t ends, double reach) {
  long long least = 0;
  for (std::size_t i = 0; i < ends; ++i) least = std::min(least, matching.nodeValue(graph.nodeFromId(static_cast<int>(i))));
  return static_cast<double>(-2 * least) / Matching::dualScale <= reach * finest;
}

}  // namespace

Least least_back(const std::vector<End>& ends, Back back, double reach) {
  Graph graph;
  std::vector<Graph::Node> nodes;
  for (std::size_t i = 0; i < ends.size(); ++i) nodes.push_back(graph.addNode());
  Weights weights(graph);
  const Near near(ends, reach);
  for (std::size_t i = 0; i < ends.size(); ++i)
    near.each_before(i, [&](std::size_t j) { weights[graph.addEdge(nodes[i], nodes[j])] = -length(ends[i], ends[j]); });
  for (int free_end = 0; back == Back::open && free_end < 2; ++free_end) {
    const Graph::Node none = graph.addNode();  // costs nothing: the first up, the last down
    for (const Graph::Node node : nodes) weights[graph.addEdge(none, node)] = 0;
  }
  Matching matching(graph, weights);
  if (!matching.run()) return {};
  return {static_cast<double>(-matching.matchingWeight()) / finest, proves(graph, matching, ends.size(), reach)};
}

}  // namespace matching
