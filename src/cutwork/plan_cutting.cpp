// Search, pieces, simulation, agreement; and nothing planned as cut where anything is wrong.
#include <algorithm>

#include "cutwork/agree.h"
#include "cutwork/order.h"
#include "cutwork/pieces.h"

namespace cutwork {
namespace {

std::vector<Span> spans_of(const std::vector<Taken>& taken) {
  std::vector<Span> spans;
  for (const Taken& t : taken) spans.push_back({t.axis, t.run->line, t.run->from, t.run->to});
  std::sort(spans.begin(), spans.end());
  return spans;
}

/// One problem for each part, with the number of its stitches.
void tell_over(const Request& request, const Over& over, bool all_held, std::vector<Problem>& problems) {
  std::vector<std::pair<int, std::size_t>> told;  // part, problem
  for (const int i : over.surface) {
    const Surface& surface = request.surface[static_cast<std::size_t>(i)];
    const auto found = std::find_if(told.begin(), told.end(), [&](const auto& t) { return t.first == surface.part; });
    if (found != told.end()) {
      ++problems[found->second].n;
      continue;
    }
    told.emplace_back(surface.part, problems.size());
    problems.push_back({Trouble::surface_over, surface.stitch.a, surface.stitch.b, surface.part, -1, 1});
  }
  if (!all_held) return;  // what would be cut along a block's side lies under that block: told already
  for (const int b : over.blocks) {
    const Bundle& block = request.blocks[static_cast<std::size_t>(b)];
    problems.push_back({Trouble::surface_over, block.stitches.front().a, block.stitches.back().b, block.part, -1,
                        static_cast<int>(block.stitches.size())});
  }
}

}  // namespace

Cutting plan_cutting(const Request& request) {
  Cutting cutting;
  const Walls walls = walls_of(request.blocks);
  const Areas areas = find_areas(request, walls, cutting.problems);
  const Search found = search(request, walls, areas, cutting.problems);
  const Over over = lying_over(request, found.taken);
  tell_over(request, over, found.loose.empty(), cutting.problems);
  const bool sound = cutting.problems.empty();
  Pieces pieces = find_pieces(request, areas, found.taken, cutting.problems);
  if (!sound)  // bars of a cutting that is wrong elsewhere are not worth telling
    cutting.problems.erase(std::remove_if(cutting.problems.begin(), cutting.problems.end(),
                                          [](const Problem& p) { return p.what == Trouble::bar_width || p.what == Trouble::bar_alone; }),
                           cutting.problems.end());
  std::vector<Cut> cuts = cuts_in_order(request, found.taken);
  std::vector<Span> spans = spans_of(found.taken);
  if (const auto at = where_they_differ(request, found, over, simulate(request, cuts, spans)))
    cutting.problems.push_back({Trouble::methods_differ, *at, std::nullopt, -1, -1, 0});
  cutting.areas = areas.runs.areas;
  if (!cutting.problems.empty()) return cutting;
  cutting.cuts = std::move(cuts);
  cutting.withdrawn = std::move(spans);
  cutting.openings = std::move(pieces.openings);
  cutting.bars = std::move(pieces.bars);
  cutting.crossings = std::move(pieces.crossings);
  return cutting;
}

}  // namespace cutwork
