// Good designs with one thing put wrong: each is stopped, at the right place, and nothing is planned as cut.
#include <doctest/doctest.h>

#include <algorithm>

#include "designs.h"

using namespace designs;
using cutwork::Trouble;

namespace {

void stopped(const cutwork::Cutting& cutting) {
  CHECK(!cutting.problems.empty());
  CHECK(cutting.cuts.empty());
  CHECK(cutting.withdrawn.empty());
  CHECK(cutting.openings.empty());
  CHECK(!has(cutting, Trouble::methods_differ));
}

cloth::Box box_of(const cutwork::Bundle& bundle) {
  cloth::Box box{bundle.stitches[0].a.x, bundle.stitches[0].a.y, bundle.stitches[0].a.x, bundle.stitches[0].a.y};
  for (const auto& s : bundle.stitches) box.grow(s.a), box.grow(s.b);
  return box;
}

/// The place lies at the block, at its neighbours or straight across the ring from it.
bool near_or_facing(const cutwork::Problem& problem, const cloth::Box& block) {
  const auto lies = [&](cloth::Hole h) {
    return block.widened(4).holds(h) || (h.x >= block.x0 - 1 && h.x <= block.x1 + 1) || (h.y >= block.y0 - 1 && h.y <= block.y1 + 1);
  };
  return lies(problem.at) || (problem.also_at && lies(*problem.also_at));
}

}  // namespace

TEST_CASE("a block moved by a thread, to any side") {
  for (const int n : {4, 6, 8})
    for (std::size_t b = 0; b < static_cast<std::size_t>(4 * n - 4); ++b)
      for (const cloth::Hole by : {cloth::Hole{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        CAPTURE(n);
        CAPTURE(b);
        CAPTURE(by.x);
        CAPTURE(by.y);
        auto ring = diamond(n);
        for (auto& s : ring[b].stitches) s = {s.a + by, s.b + by};
        const auto cutting = cutwork::plan_cutting(request(ring));
        CAPTURE(told(cutting));
        stopped(cutting);
        const bool upright = ring[b].stitches[0].a.x == ring[b].stitches[0].b.x;
        if (upright ? by.x != 0 : by.y != 0) CHECK(has(cutting, Trouble::off_partner));
        CHECK(std::any_of(cutting.problems.begin(), cutting.problems.end(),
                          [&](const auto& p) { return near_or_facing(p, box_of(ring[b])); }));
      }
}

TEST_CASE("a block left out: its partner is told, and the two that lost their neighbour") {
  for (const int n : {4, 6, 8})
    for (std::size_t b = 0; b < static_cast<std::size_t>(4 * n - 4); ++b) {
      CAPTURE(n);
      CAPTURE(b);
      auto ring = diamond(n);
      const cloth::Box gone = box_of(ring[b]);
      ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(b));
      const auto cutting = cutwork::plan_cutting(request(ring));
      CAPTURE(told(cutting));
      stopped(cutting);
      CHECK(has(cutting, Trouble::no_partner));
      CHECK(has(cutting, Trouble::ring_open));
      CHECK(std::any_of(cutting.problems.begin(), cutting.problems.end(), [&](const auto& p) { return near_or_facing(p, gone); }));
    }
}

TEST_CASE("a block turned: the cut would run along its side") {
  for (const int n : {4, 6, 8})
    for (std::size_t b = 0; b < static_cast<std::size_t>(4 * n - 4); ++b) {
      CAPTURE(b);
      auto ring = diamond(n);
      const cloth::Box box = box_of(ring[b]);
      const bool upright = ring[b].stitches[0].a.x == ring[b].stitches[0].b.x;
      ring[b] = block(box.x0, box.y0, !upright);
      const auto cutting = cutwork::plan_cutting(request(ring));
      CAPTURE(told(cutting));
      stopped(cutting);
      CHECK(std::any_of(cutting.problems.begin(), cutting.problems.end(),
                        [&](const auto& p) { return p.what == Trouble::along_side && p.also_at && box.holds(*p.also_at); }));
    }
}

TEST_CASE("stitches laid across an opening, a bar or the cut ends are told with their part; those beside are not") {
  const auto with = [](std::vector<cloth::Stitch> stitches) {
    auto asked = request(diamond(6));  // from (0, -20) to (44, 24), its middle at (22, 2)
    for (const auto& s : stitches) asked.surface.push_back({s, 7});
    return cutwork::plan_cutting(asked);
  };
  for (const cloth::Stitch s :
       {cloth::Stitch{{20, 2}, {22, 2}}, {{20, 0}, {22, 2}}, {{22, -1}, {22, 3}}, {{4, 0}, {4, 4}}, {{-10, 2}, {60, 5}}}) {
    const auto cutting = with({s});
    CAPTURE(s.a.x);
    CAPTURE(told(cutting));
    stopped(cutting);
    REQUIRE(has(cutting, Trouble::surface_over));
    CHECK(cutting.problems[0].part == 7);
    CHECK(cutting.problems[0].at == s.a);
  }
  CHECK(told(with({{{-4, 0}, {0, 0}}, {{0, -20}, {2, -18}}})) == "");
}

TEST_CASE("a row that does not come out, bars of another width, bars allowed on purpose") {
  const auto uneven = cutwork::plan_cutting(request(path("E 4, SE 1, S 3, SW 1, W 3, NW 1, N 3", "upright"), 4));
  stopped(uneven);
  CHECK(has(uneven, Trouble::row_uneven));
  std::vector<cutwork::Bundle> wide;  // sides of 4, 6, 4 threads
  for (const int at : {0, 10}) {
    wide.push_back(block(at, -4, true));
    wide.push_back(block(at, 14, true));
    wide.push_back(block(-4, at, false));
    wide.push_back(block(14, at, false));
  }
  wide.push_back(block(4, -10, false, 10, 6));
  wide.push_back(block(4, 14, false, 10, 6));
  wide.push_back(block(-10, 4, true, 10, 6));
  wide.push_back(block(14, 4, true, 10, 6));
  auto asked = request(wide);
  CHECK(has(cutwork::plan_cutting(asked), Trouble::bar_width));
  asked.bar_threads = 6;
  const auto cutting = cutwork::plan_cutting(asked);
  CHECK(told(cutting) == "");
  CHECK(cutting.bars.size() == 4);
}

TEST_CASE("blocks that enclose nothing, and nothing at all") {
  const auto cutting = cutwork::plan_cutting(request({block(0, 0, true), block(0, 40, true)}));
  stopped(cutting);
  CHECK(has(cutting, Trouble::no_area));
  CHECK(cutwork::plan_cutting(request({})).cuts.empty());
}
