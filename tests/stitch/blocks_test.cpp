// Blocks counted and placed. Sources of the counts stand beside them.
#include <doctest/doctest.h>

#include <cstdlib>
#include <map>
#include <string>

#include "parts.h"

using namespace stitch;
using parts::blocks;
using parts::work;

namespace {

/// Flights of a diamond with n blocks a side: n, n-1, n-1, n-2; its first block is the western apex.
std::string diamond(int n) {
  return "NE " + std::to_string(n) + ", SE " + std::to_string(n - 1) + ", SW " + std::to_string(n - 1) +
         (n > 2 ? ", NW " + std::to_string(n - 2) : "");
}

/// A length of thread between two neighbouring holes: its upper or left hole, and whether it runs upright.
using Piece = std::pair<cloth::Hole, bool>;

std::set<Piece> pieces(const std::vector<cloth::Stitch>& stitches) {
  std::set<Piece> all;
  for (const cloth::Stitch& written : stitches) {
    const cloth::Stitch stitch = written.normal();
    const bool upright = stitch.a.x == stitch.b.x;
    for (cloth::Hole at = stitch.a; at != stitch.b; (upright ? at.y : at.x) += 1) all.insert({at, upright});
  }
  return all;
}

/// The same diamond painted cell by cell: a cell of 4 x 4 belongs to it where it lies n-1 cells from the middle, across and up together; in
/// an even ring the western apex runs across, and every second cell along the way is turned.
std::set<Piece> painted_diamond(int n) {
  std::set<Piece> all;
  for (int i = -n; i <= n; ++i)
    for (int j = -n; j <= n; ++j) {
      if (std::abs(i) + std::abs(j) != n - 1) continue;
      const bool upright = (n - 1 - std::abs(i)) % 2 == 1;
      for (int line = 0; line <= 4; ++line)
        for (int piece = 0; piece < 4; ++piece) all.insert({{4 * i + (upright ? line : piece), 4 * j + (upright ? piece : line)}, upright});
    }
  return all;
}

}  // namespace

TEST_CASE("a single block is 5 stitches over 4 threads on 4 x 4 (Archer p. 191)") {
  const Work upright = work(blocks({10, 20}, "N 1"));
  CHECK(upright.stitches ==
        std::vector<cloth::Stitch>{
            {{10, 20}, {10, 24}}, {{11, 20}, {11, 24}}, {{12, 20}, {12, 24}}, {{13, 20}, {13, 24}}, {{14, 20}, {14, 24}}});
  CHECK(!upright.closed);
  REQUIRE(upright.passes.size() == 1);
  REQUIRE(upright.passes[0].runs.size() == 1);
  CHECK(upright.passes[0].runs[0].freedom == Freedom::all_alike);
  CHECK(upright.passes[0].runs[0].legs == std::vector<int>(5, 0));
  REQUIRE(upright.features.size() == 1);
  CHECK(upright.features[0].stitches == upright.stitches);
  CHECK(upright.features[0].hole == cloth::Hole{10, 20});
  REQUIRE(upright.legs.size() == 1);
  CHECK(upright.legs[0].blocks == 1);
  CHECK(upright.corners.empty());
  const Work across = work(blocks({10, 20}, "NE 1", "across"));
  CHECK(across.stitches ==
        std::vector<cloth::Stitch>{
            {{10, 20}, {14, 20}}, {{10, 21}, {14, 21}}, {{10, 22}, {14, 22}}, {{10, 23}, {14, 23}}, {{10, 24}, {14, 24}}});
}

TEST_CASE("closed staircase diamonds, n even: 4n-4 blocks, 20n-20 stitches, extent 8n-4, 36n-36 holes (geometry)") {
  for (int n = 2; n <= 30; n += 2) {
    CAPTURE(n);
    const Work made = work(blocks({-4 * (n - 1), 0}, diamond(n), "across"));
    CHECK(made.closed);
    CHECK(made.passes.at(0).closed);
    CHECK(made.passes[0].runs.size() == static_cast<std::size_t>(4 * n - 4));
    CHECK(made.features.size() == static_cast<std::size_t>(4 * n - 4));
    CHECK(made.stitches.size() == static_cast<std::size_t>(20 * n - 20));
    CHECK(parts::normal_set(made.stitches).size() == made.stitches.size());
    CHECK(parts::extent(made.stitches).width() == 8 * n - 4);
    CHECK(parts::extent(made.stitches).height() == 8 * n - 4);
    CHECK(parts::holes(made.stitches).size() == static_cast<std::size_t>(36 * n - 36));
    CHECK(made.doubts.empty());
  }
}

TEST_CASE("closed staircase diamonds, painted cell by cell, are the same") {
  for (int n = 2; n <= 30; n += 2) {
    CAPTURE(n);
    CHECK(pieces(work(blocks({-4 * (n - 1), 0}, diamond(n), "across")).stitches) == painted_diamond(n));
  }
}

TEST_CASE(
    "a published pincushion: flights of 8, 7, 7 and 6 blocks, 28 in all (Archer p. 194); 140 stitches, 60 x 60, 252 holes (computed)") {
  const Work made = work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 6", "across"));
  CHECK(made.passes.at(0).runs.size() == 28);
  CHECK(made.stitches.size() == 140);
  CHECK(parts::extent(made.stitches).width() == 60);
  CHECK(parts::extent(made.stitches).height() == 60);
  CHECK(parts::holes(made.stitches).size() == 252);
  REQUIRE(made.legs.size() == 4);
  for (const Leg& leg : made.legs) {
    CHECK(leg.blocks == 8);  // shared corner blocks in both flights
    CHECK(leg.slant);
  }
}

TEST_CASE("n blocks joined in a straight row have 4n+1 stitches (geometry)") {
  for (int n = 1; n <= 12; ++n) {
    CAPTURE(n);
    const Work upright = work(blocks({3, -7}, "E " + std::to_string(n)));
    CHECK(upright.stitches.size() == static_cast<std::size_t>(4 * n + 1));
    CHECK(upright.passes.at(0).runs.size() == static_cast<std::size_t>(n));
    CHECK(upright.features.size() == static_cast<std::size_t>(n));
    for (const Feature& feature : upright.features) CHECK(feature.stitches.size() == 5);
    CHECK(work(blocks({3, -7}, "N " + std::to_string(n), "across")).stitches.size() == static_cast<std::size_t>(4 * n + 1));
    CHECK(!upright.closed);
  }
}

TEST_CASE("a row apart leaves 4 threads free between blocks (Archer)") {
  const Work made = work(blocks({0, 0}, "E 3 apart, W 1"));
  CHECK(work(blocks({0, 0}, "E 3 apart")).stitches.size() == 15);
  CHECK(parts::extent(work(blocks({0, 0}, "E 3 apart")).stitches).width() == 20);
  CHECK(made.stitches.size() == 18);  // one more between the last two, sharing a stitch with the last
}

TEST_CASE("a square whose sides are joined rows of 5 blocks: 4 x 21 stitches (geometry)") {
  const Work made = work(blocks({0, -4}, "E 5, SE 1, S 4, SW 1, W 4, NW 1, N 4"));
  CHECK(made.closed);
  CHECK(made.passes.at(0).runs.size() == 20);
  CHECK(made.stitches.size() == 84);
  CHECK(parts::extent(made.stitches) == cloth::Box{-4, -4, 24, 24});
  REQUIRE(made.legs.size() == 8);
  for (std::size_t i = 0; i < 8; ++i) {
    CHECK(made.legs[i].number == static_cast<int>(i));
    CHECK(made.legs[i].slant == (i % 2 == 1));
    CHECK(made.legs[i].blocks == (i % 2 == 1 ? 2 : 5));
  }
  // down sides lie within, and so do the ends of the flights
  CHECK(made.legs[0].from == cloth::Hole{0, 0});
  CHECK(made.legs[0].to == cloth::Hole{20, 0});
  CHECK(made.legs[2].from == cloth::Hole{20, 0});
  CHECK(made.legs[2].to == cloth::Hole{20, 20});
}

TEST_CASE("a ring that starts in the middle of a flight is the same ring") {
  const Work corner = work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 6", "across"));
  const Work middle = work(blocks({12, -12}, "NE 5, SE 7, SW 7, NW 7, NE 2", "upright"));
  CHECK(middle.closed);
  CHECK(parts::normal_set(middle.stitches) == parts::normal_set(corner.stitches));
  REQUIRE(middle.legs.size() == 4);
  for (const Leg& leg : middle.legs) CHECK(leg.blocks == 8);
  CHECK(middle.legs[0].from == corner.legs[0].from);
  CHECK(middle.legs[0].to == corner.legs[0].to);
  CHECK(middle.passes[0].runs.back().legs.front() == 0);
}

TEST_CASE("a block belongs to the flight that leads to it, a ring's first block to its first flight") {
  const auto flights = [](const Work& made) {
    std::string all;
    for (const Run& run : made.passes.at(0).runs) all += std::to_string(run.legs.at(0));
    return all;
  };
  CHECK(flights(work(blocks({0, 0}, "NE 4, SE 3, SW 3, NW 2", "across"))) == "000011122233");
  CHECK(flights(work(blocks({0, 0}, "NE 2, SE 3, SW 3, NW 3, NE 1", "upright"))) == "001112223330");
  CHECK(flights(work(blocks({0, 0}, "E 3, SE 2, E 1, E 2 apart"))) == "00011233");
  CHECK(flights(work(blocks({0, 0}, "E 2, E 1, SE 2"))) == "00011");
}

TEST_CASE("closed: the last block is the first again, or stands one legal step before it") {
  CHECK(work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 7", "across")).passes[0].runs.size() == 28);
  CHECK(work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 7", "across")).closed);
  CHECK(work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 6", "across")).closed);
  CHECK(!work(blocks({0, 0}, "NE 8, SE 7, SW 7, NW 5", "across")).closed);
  CHECK(work(blocks({0, 0}, "NE 2, SE 1, SW 1", "across")).closed);
  CHECK(work(blocks({0, 0}, "NE 2, SE 1, W 1 apart")).closed);
  const Work apart = work(blocks({0, -4}, "E 3 apart, SE 1, S 2 apart, SW 1, W 2 apart, NW 1, N 2 apart"));
  CHECK(apart.closed);
  CHECK(apart.passes[0].runs.size() == 12);
  CHECK(work(blocks({8, -4}, "E 2 apart, SE 1, S 2 apart, SW 1, W 2 apart, NW 1, N 2 apart, NE 1")).closed);
}

TEST_CASE("neither a row nor a short arch nor a way there and back is a ring") {
  CHECK(!work(blocks({0, 0}, "E 3")).closed);
  CHECK(!work(blocks({0, 0}, "E 9")).closed);
  CHECK(!work(blocks({0, 0}, "NE 2, SE 1")).closed);
  CHECK(!work(blocks({0, 0}, "NE 2")).closed);
  CHECK(!work(blocks({0, 0}, "E 5, W 4")).closed);
  CHECK(!work(blocks({0, 0}, "E 2, NE 1, SE 1, SW 1, NW 1")).closed);  // a diamond with a tail: it ends on the second block
  CHECK(work(blocks({0, 0}, "E 5, W 4")).stitches.size() == 21);
  CHECK(work(blocks({0, 0}, "E 5, W 4")).passes[0].runs.size() == 5);
}

TEST_CASE("stitches of a run go from the block before to the block after") {
  const auto firsts = [](const Work& made) {
    std::string all;
    for (const Run& run : made.passes.at(0).runs) {
      const cloth::Hole way = run.stitches.at(1).a - run.stitches.at(0).a;
      all += way == cloth::Hole{1, 0} ? '>' : way == cloth::Hole{-1, 0} ? '<' : way == cloth::Hole{0, 1} ? 'v' : '^';
      for (const cloth::Stitch& stitch : run.stitches) CHECK(stitch == stitch.normal());  // a is the upper or left end
    }
    return all;
  };
  CHECK(firsts(work(blocks({0, 0}, "E 3"))) == ">>>");
  CHECK(firsts(work(blocks({0, 0}, "W 3"))) == "<<<");
  CHECK(firsts(work(blocks({0, 0}, "N 3", "across"))) == "^^^");
  CHECK(firsts(work(blocks({0, 0}, "NE 3, SE 2", "upright"))) == ">^>v>");
  CHECK(firsts(work(blocks({0, 0}, "SW 4", "across"))) == "v<v<");
}

TEST_CASE("a block square across another is doubtful and stops, a block on its like is there once") {
  const Work made = work(blocks({0, 0}, "E 2, SE 1, N 1, NW 1, SW 1, NW 1"));  // the sixth block comes back across the first
  REQUIRE(made.doubts.size() == 1);
  CHECK(made.doubts[0].rule == "blocks-overlap");
  CHECK(made.doubts[0].stops);
  CHECK(made.doubts[0].at == cloth::Hole{0, 0});
  CHECK(made.doubts[0].also_at == cloth::Hole{0, 0});
  CHECK(made.doubts[0].numbers == std::map<std::string, int>{{"block", 6}, {"other", 1}});
  const Work twice = work(blocks({0, 0}, "NE 3, SW 2, SE 3"));
  CHECK(twice.doubts.empty());
  CHECK(twice.features.size() == 6);
  CHECK(twice.stitches.size() == 30);
}
