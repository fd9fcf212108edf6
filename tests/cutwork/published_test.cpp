// Counts by geometry, and published instances: E. A. Archer, Needlecraft (1911), chapter XVII: the pincushion (p. 194, fig. 165) and the
// star (p. 191, fig. 162).
#include <doctest/doctest.h>

#include "designs.h"

using namespace designs;

TEST_CASE("diamonds: openings, bars, solid squares, cuts and withdrawn threads by formula") {
  for (int n = 2; n <= 30; n += 2) {
    CAPTURE(n);
    const int m = n / 2 - 1;
    const auto cutting = cutwork::plan_cutting(request(diamond(n)));
    CHECK(told(cutting) == "");
    CHECK(cutting.openings.size() == static_cast<std::size_t>(m * m + (m + 1) * (m + 1)));
    CHECK(cutting.bars.size() == static_cast<std::size_t>(4 * m * m));
    CHECK(cutting.crossings.size() == static_cast<std::size_t>(2 * m * (m + 1)));
    CHECK(cutting.cuts.size() == static_cast<std::size_t>(16 * n - 16));
    CHECK(cutting.withdrawn.size() == static_cast<std::size_t>(8 * n - 8));
    CHECK(cutting.cuts.back().cutting == 4 * n - 4);
    CHECK(cutting.areas == 1);
  }
}

TEST_CASE("the published pincushion: 28 cuttings of four, 25 openings, 36 bars") {
  const auto cutting = cutwork::plan_cutting(request(path("NE 8, SE 7, SW 7, NW 6", "across")));
  CHECK(told(cutting) == "");
  CHECK(cutting.cuts.size() == 112);
  CHECK(cutting.cuts.back().cutting == 28);
  CHECK(cutting.openings.size() == 25);
  CHECK(cutting.bars.size() == 36);
  CHECK(cutting.withdrawn.size() == 56);
}

TEST_CASE("the published star: sides of 13 stitches, four over 4, five over 8, four over 4") {
  std::vector<cutwork::Bundle> sides(4);
  int at = 0;
  for (const int over : {4, 4, 4, 4, 8, 8, 8, 8, 8, 4, 4, 4, 4}) {
    sides[0].stitches.push_back({{at, -over}, {at, 0}});
    sides[1].stitches.push_back({{at, 12}, {at, 12 + over}});
    sides[2].stitches.push_back({{-over, at}, {0, at}});
    sides[3].stitches.push_back({{12, at}, {12 + over, at}});
    ++at;
  }
  const auto cutting = cutwork::plan_cutting(request(sides, 4));
  CHECK(told(cutting) == "");
  CHECK(cutting.openings.size() == 4);
  CHECK(cutting.bars.size() == 4);
  CHECK(cutting.crossings.size() == 1);
  CHECK(cutting.withdrawn.size() == 16);
  CHECK(cutting.cuts.size() == 32);
}

TEST_CASE("a square of joined rows of 5: nine openings, twelve bars, four crossings; all of it open where nothing is left") {
  const auto square = path("E 5, SE 1, S 4, SW 1, W 4, NW 1, N 4", "upright");
  const auto cutting = cutwork::plan_cutting(request(square, 4));
  CHECK(told(cutting) == "");
  CHECK(cutting.openings.size() == 9);
  CHECK(cutting.bars.size() == 12);
  CHECK(cutting.crossings.size() == 4);
  CHECK(cutting.withdrawn.size() == 24);
  CHECK(cutting.cuts.size() == 48);
  const auto open = cutwork::plan_cutting(request(square));
  CHECK(told(open) == "");
  CHECK(open.openings.size() == 1);
  CHECK(open.openings[0].box == cloth::Box{0, 4, 20, 24});
  CHECK(open.openings[0].outline == std::vector<cloth::Hole>{{0, 4}, {20, 4}, {20, 24}, {0, 24}});
}

TEST_CASE("rows four threads apart hold a square as joined rows do, leaving what lies between the blocks") {
  const auto cutting = cutwork::plan_cutting(request(path("E 3 apart, SE 1, S 2 apart, SW 1, W 2 apart, NW 1, N 2 apart", "upright")));
  CHECK(told(cutting) == "");
  CHECK(cutting.openings.size() == 9);
  CHECK(cutting.bars.size() == 12);
  CHECK(cutting.cuts.size() == 48);
}

TEST_CASE("several rings, a shared side, an island, a zone") {
  auto two = diamond(4);
  const auto other = diamond(4, {28, 0});
  two.insert(two.end(), other.begin(), other.end());
  const auto touching = cutwork::plan_cutting(request(two));
  CHECK(told(touching) == "");
  CHECK(touching.openings.size() == 10);
  CHECK(touching.areas == 2);
  auto asked = request(two);
  asked.zones = {{42, 2}};
  CHECK(cutwork::plan_cutting(asked).openings.size() == 5);
  asked.zones = {{500, 2}};
  CHECK(has(cutwork::plan_cutting(asked), cutwork::Trouble::zone_outside));

  auto ring = diamond(8);  // its middle square is rows of blocks of its own that stay whole
  for (const auto& inner : diamond(2, {24, 0})) ring.push_back(inner);
  const auto island = cutwork::plan_cutting(request(ring));
  CHECK(told(island) == "");
  for (const auto& cut : island.withdrawn)
    for (const auto& bundle : ring)
      for (const auto& s : bundle.stitches) {
        const bool under = cut.axis == cutwork::Axis::v
                               ? s.a.y == s.b.y && s.a.x <= cut.thread && cut.thread < s.b.x && cut.from < s.a.y && s.a.y < cut.to
                               : s.a.x == s.b.x && s.a.y <= cut.thread && cut.thread < s.b.y && cut.from < s.a.x && s.a.x < cut.to;
        CHECK(!under);
      }
}

TEST_CASE("each snip has its own number and four share a cutting, at the end of the stitches") {
  const auto cutting = cutwork::plan_cutting(request(diamond(6)));
  for (std::size_t i = 0; i < cutting.cuts.size(); ++i) {
    CHECK(cutting.cuts[i].order == static_cast<int>(i) + 1);
    CHECK(cutting.cuts[i].cutting == static_cast<int>(i) / 4 + 1);
  }
  for (std::size_t i = 0; i + 8 <= cutting.cuts.size(); i += 8)  // the opposite end follows at once
    CHECK(cutting.cuts[i].thread == cutting.cuts[i + 4].thread);
}

TEST_CASE("a thousand rings are a thousand times one") {
  std::vector<cutwork::Bundle> rings;
  for (int i = 0; i < 1000; ++i)
    for (auto& bundle : diamond(8, {64 * (i % 32), 64 * (i / 32)})) rings.push_back(std::move(bundle));
  const auto cutting = cutwork::plan_cutting(request(rings));
  CHECK(cutting.cuts.size() == 112000);
  CHECK(cutting.openings.size() == 25000);
  CHECK(cutting.bars.size() == 36000);
}

namespace {

/// Stretches of a square crossing's outline without a bar: there it hangs together with the blocks round the area.
int stretches_at_blocks(const cutwork::Cutting& cutting, int crossing) {
  std::array<bool, 4> bar_on{};  // left, above, right, below
  for (const auto& bar : cutting.bars) {
    const std::size_t first = bar.axis == cutwork::Axis::h ? 0 : 1;
    if (bar.crossings[1] == crossing) bar_on[first] = true;
    if (bar.crossings[0] == crossing) bar_on[first + 2] = true;
  }
  int stretches = 0;
  for (std::size_t side = 0; side < 4; ++side) stretches += !bar_on[side] && bar_on[(side + 1) % 4] ? 1 : 0;
  return stretches;
}

/// Euler's relation on the sphere: the blocks round an area with all beyond them are one corner, crossings the others; bars and stretches
/// of crossings at blocks are sides, openings are faces. Corners - sides + faces = 2 for each area.
int euler(const cutwork::Cutting& cutting) {
  int at_blocks = 0;
  for (int c = 0; c < static_cast<int>(cutting.crossings.size()); ++c) at_blocks += stretches_at_blocks(cutting, c);
  return cutting.areas + static_cast<int>(cutting.crossings.size()) - static_cast<int>(cutting.bars.size()) - at_blocks +
         static_cast<int>(cutting.openings.size());
}

}  // namespace

TEST_CASE("openings, bars and crossings keep Euler's relation") {
  for (int n = 2; n <= 30; n += 2) {
    CAPTURE(n);
    CHECK(euler(cutwork::plan_cutting(request(diamond(n)))) == 2);
  }
  for (int n = 3; n <= 15; n += 2) {
    CAPTURE(n);
    const auto leg = [](const char* way, int blocks) { return std::string(way) + " " + std::to_string(blocks) + ", "; };
    const auto square =
        path(leg("E", n) + "SE 1, " + leg("S", n - 1) + "SW 1, " + leg("W", n - 1) + "NW 1, N " + std::to_string(n - 1), "upright");
    const auto cutting = cutwork::plan_cutting(request(square, 4));
    CHECK(cutting.openings.size() == static_cast<std::size_t>((n + 1) / 2 * ((n + 1) / 2)));
    CHECK(euler(cutting) == 2);
  }
  auto two = diamond(8);
  const auto other = diamond(6, {100, 0});
  two.insert(two.end(), other.begin(), other.end());
  CHECK(euler(cutwork::plan_cutting(request(two))) == 4);
}
