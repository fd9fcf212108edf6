#include "cutwork/agree.h"

#include <algorithm>
#include <iterator>

namespace cutwork {
namespace {

/// The first number that only one of the sorted lists has, or -1.
int first_of_one(const std::vector<int>& a, const std::vector<int>& b) {
  std::vector<int> single;
  std::set_symmetric_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(single));
  return single.empty() ? -1 : single.front();
}

}  // namespace

std::optional<cloth::Hole> where_they_differ(const Request& request, const Search& search, const Over& over, const Simulated& simulated) {
  const auto hole = [](Axis axis, int thread, int at) { return axis == Axis::v ? cloth::Hole{thread, at} : cloth::Hole{at, thread}; };
  const std::size_t n = std::max(search.loose.size(), simulated.loose.size());
  for (std::size_t i = 0; i < n; ++i) {
    if (i >= simulated.loose.size()) return hole(search.loose[i].axis, search.loose[i].thread, search.loose[i].at);
    const LooseEnd& seen = simulated.loose[i];
    if (i >= search.loose.size() || seen != LooseEnd{search.loose[i].axis, search.loose[i].thread, search.loose[i].at})
      return hole(seen.axis, seen.thread, seen.at);
  }
  if (const int i = first_of_one(over.surface, simulated.without_ground); i >= 0)
    return request.surface[static_cast<std::size_t>(i)].stitch.a;
  if (const int i = first_of_one(over.blocks, simulated.blocks_harmed); i >= 0)
    return request.blocks[static_cast<std::size_t>(i)].stitches[0].a;
  if (!simulated.not_free.empty()) return hole(simulated.not_free[0].axis, simulated.not_free[0].thread, simulated.not_free[0].from);
  return std::nullopt;
}

}  // namespace cutwork
