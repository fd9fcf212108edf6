#include "trail/way_under.h"

#include <algorithm>
#include <queue>
#include <unordered_map>

namespace trail {
namespace {

constexpr int reach = 4;              // threads of one leg under stitches
constexpr std::size_t effort = 4000;  // holes looked at before giving up

struct Open {
  double whole = 0, so_far = 0;
  cloth::Hole at;
  friend bool operator<(const Open& a, const Open& b) { return a.whole != b.whole ? a.whole > b.whole : b.at < a.at; }
};

}  // namespace

std::vector<cloth::Hole> WayUnder::find(cloth::Hole from, cloth::Hole to) const {
  const double longest = 4 * limit_, leg = std::min<double>(reach, limit_);
  if (cloth::distance(from, to) > longest) return {};
  std::priority_queue<Open> open;
  std::unordered_map<cloth::Hole, std::pair<double, cloth::Hole>> reached;  // length so far, and from where
  reached[from] = {0, from};
  open.push({cloth::distance(from, to), 0, from});
  while (!open.empty() && reached.size() < effort) {
    const Open here = open.top();
    open.pop();
    if (here.at == to) {
      std::vector<cloth::Hole> way;
      for (cloth::Hole h = reached.at(to).second; h != from; h = reached.at(h).second) way.push_back(h);
      std::reverse(way.begin(), way.end());
      return way;
    }
    if (here.so_far > reached.at(here.at).first) continue;
    for (int dx = -reach; dx <= reach; ++dx) {
      for (int dy = -reach; dy <= reach; ++dy) {
        const cloth::Hole next = here.at + cloth::Hole{dx, dy};
        if (next == here.at || (next != to && !holes_.contains(next))) continue;
        const double step = cloth::distance(here.at, next), so_far = here.so_far + step, whole = so_far + cloth::distance(next, to);
        if (step > leg || whole > longest || clear_.crossed(here.at, next)) continue;
        const auto known = reached.find(next);
        if (known != reached.end() && known->second.first <= so_far) continue;
        reached[next] = {so_far, here.at};
        open.push({whole, so_far, next});
      }
    }
  }
  return {};
}

}  // namespace trail
