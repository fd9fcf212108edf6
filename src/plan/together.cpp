#include "plan/together.h"

#include <algorithm>
#include <set>

#include "cutwork/simulate.h"

namespace plan {
namespace {

cloth::Hole hole_at(const cutwork::Span& span, int at) {
  return span.axis == cutwork::Axis::v ? cloth::Hole{span.thread, at} : cloth::Hole{at, span.thread};
}

void stop(PartCutting& cut, cutwork::Problem problem) {
  cutwork::Cutting none;
  none.problems = cut.cutting.problems;
  none.problems.push_back(problem);
  none.areas = cut.cutting.areas;
  cut.cutting = std::move(none);
}

/// The first thread that two cuttings take, for each two.
void tell_doubled(std::vector<PartCutting>& cuttings) {
  std::vector<std::pair<cutwork::Span, std::size_t>> claims;
  for (std::size_t c = 0; c < cuttings.size(); ++c)
    for (const cutwork::Span& span : cuttings[c].cutting.withdrawn) claims.emplace_back(span, c);
  std::sort(claims.begin(), claims.end());
  std::set<std::pair<std::size_t, std::size_t>> told;
  std::size_t reach = 0;  // the claim that goes furthest so far
  for (std::size_t i = 1; i < claims.size(); ++i) {
    const auto& [span, c] = claims[i];
    const auto& [other, d] = claims[reach];
    const bool same_thread = span.axis == other.axis && span.thread == other.thread;
    if (same_thread && span.from < other.to && c != d && told.emplace(std::min(c, d), std::max(c, d)).second)
      stop(cuttings[std::max(c, d)],
           {cutwork::Trouble::cut_twice, hole_at(span, span.from), hole_at(span, span.to), -1, cuttings[std::min(c, d)].part, 1});
    if (!same_thread || span.to > other.to) reach = i;
  }
}

/// All that is planned as cut, on one cloth. A block that holds any of it is a block; whatever else is stitched is surface.
cutwork::Simulated simulated(const std::vector<cutwork::Request>& requests, const std::vector<PartCutting>& cuttings) {
  cutwork::Request all;
  std::vector<cutwork::Cut> cuts;
  std::vector<cutwork::Span> withdrawn;
  std::set<int> holding;
  for (std::size_t c = 0; c < cuttings.size(); ++c) {
    for (const cutwork::Bundle& block : requests[c].blocks) holding.insert(block.part);
    cuts.insert(cuts.end(), cuttings[c].cutting.cuts.begin(), cuttings[c].cutting.cuts.end());
    withdrawn.insert(withdrawn.end(), cuttings[c].cutting.withdrawn.begin(), cuttings[c].cutting.withdrawn.end());
  }
  std::set<int> have;
  for (const cutwork::Request& request : requests) {
    std::set<int> here;
    for (const cutwork::Bundle& block : request.blocks) {
      here.insert(block.part);
      if (have.count(block.part) == 0) all.blocks.push_back(block);
    }
    have.insert(here.begin(), here.end());
  }
  for (const cutwork::Surface& surface : requests[0].surface)
    if (holding.count(surface.part) == 0) all.surface.push_back(surface);
  return cutwork::simulate(all, cuts, withdrawn);
}

}  // namespace

void hold_together(const std::vector<cutwork::Request>& requests, std::vector<PartCutting>& cuttings) {
  if (cuttings.size() < 2) return;
  tell_doubled(cuttings);
  const cutwork::Simulated seen = simulated(requests, cuttings);
  if (seen.loose.empty() && seen.without_ground.empty() && seen.blocks_harmed.empty() && seen.not_free.empty()) return;
  const cloth::Hole at = seen.loose.empty()                       ? cloth::Hole{}
                         : seen.loose[0].axis == cutwork::Axis::v ? cloth::Hole{seen.loose[0].thread, seen.loose[0].at}
                                                                  : cloth::Hole{seen.loose[0].at, seen.loose[0].thread};
  for (PartCutting& cut : cuttings)
    if (!cut.cutting.cuts.empty()) stop(cut, {cutwork::Trouble::methods_differ, at, std::nullopt, -1, -1, 0});
}

}  // namespace plan
