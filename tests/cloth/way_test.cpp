// Ways across the cloth, and turns: they must agree with each other, and with a compass whose north is up the chart (y runs down).
#include "cloth/way.h"

#include <set>

#include "cloth/as_text.h"
#include "cloth/turn.h"

using cloth::Hole;
using cloth::Turn;
using cloth::Way;

TEST_CASE("steps follow the compass") {
  CHECK(cloth::step(Way::N) == Hole{0, -1});
  CHECK(cloth::step(Way::E) == Hole{1, 0});
  for (const Way way : cloth::all_ways) {
    CHECK(cloth::slanted(way) == (cloth::name(way).size() == 2));
    if (!cloth::slanted(way)) continue;  // NE is N and E in one step
    const auto first = cloth::parse_way(cloth::name(way).substr(0, 1)), second = cloth::parse_way(cloth::name(way).substr(1));
    REQUIRE(first);
    REQUIRE(second);
    CHECK(cloth::step(way) == cloth::step(*first) + cloth::step(*second));
  }
}

TEST_CASE("names are read back, and nothing else is read") {
  for (const Way way : cloth::all_ways) CHECK(cloth::parse_way(cloth::name(way)) == way);
  for (const std::string_view text : {"", "n", "EN", "NNE", "north", " N"}) CHECK_FALSE(cloth::parse_way(text));
}

TEST_CASE("eight turns to the right come home, and two are a quarter turn of the cloth") {
  for (const Way way : cloth::all_ways) {
    CHECK(cloth::turned(way, 8) == way);
    CHECK(cloth::turned(way, -3) == cloth::turned(way, 13));
    CHECK(cloth::step(cloth::turned(way, 4)) == -1 * cloth::step(way));
    CHECK(cloth::step(cloth::turned(way, 2)) == cloth::apply({1, false}, cloth::step(way)));
    CHECK(cloth::step(cloth::mirrored(way)) == cloth::apply({0, true}, cloth::step(way)));
    CHECK(cloth::mirrored(cloth::mirrored(way)) == way);
  }
  CHECK(cloth::turned(Way::N, 2) == Way::E);  // to the right
}

TEST_CASE("the way between two holes is one of the eight or none") {
  for (const Way way : cloth::all_ways)
    for (const int far : {1, 2, 7, 1000}) CHECK(cloth::way_between({3, -5}, Hole{3, -5} + far * cloth::step(way)) == way);
  CHECK_FALSE(cloth::way_between({3, -5}, {3, -5}));
  CHECK_FALSE(cloth::way_between({0, 0}, {2, 1}));
  CHECK_FALSE(cloth::way_between({0, 0}, {-3, 4}));
}

TEST_CASE("a quarter turn is clockwise on the chart, after the mirror") {
  CHECK(cloth::apply({1, false}, {0, -1}) == Hole{1, 0});  // what was up is to the right
  CHECK(cloth::apply({0, true}, {5, 2}) == Hole{-5, 2});
  CHECK(cloth::apply({1, true}, {5, 2}) == cloth::apply({1, false}, {-5, 2}));
  CHECK(cloth::apply({-1, false}, {5, 2}) == cloth::apply({3, false}, {5, 2}));
}

TEST_CASE("four turns, each with and without the mirror, are the eight symmetries of a square and nothing more") {
  std::set<std::pair<Hole, Hole>> images;  // of two holes that tell all eight apart
  for (const bool mirror : {false, true})
    for (const Turn quarter : cloth::quarter_turns) images.insert({cloth::apply({quarter.quarters, mirror}, {3, 1}), cloth::apply({quarter.quarters, mirror}, {0, 2})});
  CHECK(images.size() == 8);
  for (const Turn first : cloth::quarter_turns)
    for (const Turn second : cloth::quarter_turns) {
      const Hole once = cloth::apply({first.quarters + second.quarters, false}, {3, 1});
      CHECK(cloth::apply(second, cloth::apply(first, {3, 1})) == once);
      CHECK(cloth::squared(once, {0, 0}) == 10);
    }
}
