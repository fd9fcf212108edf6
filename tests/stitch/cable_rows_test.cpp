// The geometry of cable rows. Check values: (geometry; common practice, no source).
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "parts.h"
#include "turning.h"

using namespace stitch;
using parts::cable;
using parts::work;

namespace {

std::size_t stitches(const Work& work, std::size_t row) {
  return work.passes.at(row == 0 ? 0 : row - 1).runs.at(row == 0 ? 0 : 1).stitches.size();
}

/// How many stitches the first row has more than the second, further in.
int more_outside(const Work& work) { return static_cast<int>(stitches(work, 0)) - static_cast<int>(stitches(work, 1)); }

std::vector<cloth::Stitch> row(const Work& work, std::size_t number) {
  return work.passes.at(number == 0 ? 0 : number - 1).runs.at(number == 0 ? 0 : 1).stitches;
}

/// A leg as a bound: holes h with side . h <= most lie on its inner side or on it.
struct Bound {
  cloth::Hole side;
  int most = 0;
  int at(cloth::Hole h) const { return side.x * h.x + side.y * h.y; }
};

/// The line of each leg of a clockwise outline, its outside to the left, moved inwards by so many threads along the cloth.
std::vector<Bound> bounds(const std::vector<cloth::Hole>& corners, int inwards) {
  std::vector<Bound> all;
  for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
    const cloth::Hole outside = cloth::step(cloth::turned(*cloth::way_between(corners[i], corners[i + 1]), -2));
    Bound bound{outside, 0};
    bound.most = bound.at(corners[i]) - inwards;
    all.push_back(bound);
  }
  return all;
}

/// Holes of the cloth within all bounds that lie on the one: one stitch over two threads for each two of them.
int stitches_on(const std::vector<Bound>& all, const Bound& one, cloth::Box room) {
  int holes = 0;
  for (int x = room.x0; x <= room.x1; ++x)
    for (int y = room.y0; y <= room.y1; ++y) {
      const cloth::Hole h{x, y};
      bool inside = one.at(h) == one.most;
      for (const Bound& bound : all) inside = inside && bound.at(h) <= bound.most;
      holes += inside ? 1 : 0;
    }
  return (holes - 1) / 2;
}

}  // namespace

TEST_CASE("outer row less the next one: square 8, diamond 4, octagon 4 (geometry)") {
  for (const int side : {8, 14, 40}) {
    const std::string n = std::to_string(side);
    CHECK(more_outside(work(cable({0, 0}, "E " + n + ", S " + n + ", W " + n + ", N " + n))) == 8);
    CHECK(more_outside(work(cable({0, 0}, "NE " + n + ", SE " + n + ", SW " + n + ", NW " + n))) == 4);
    CHECK(more_outside(work(cable({0, 0}, "E 12, SE " + n + ", S 12, SW " + n + ", W 12, NW " + n + ", N 12, NE " + n))) == 4);
  }
}

TEST_CASE("every leg of a random convex ring has as many stitches as holes on its line allow, in each row") {
  CHECK(turning::always("counted by holes", [] {
    // Eight legs, opposite ones alike, so that the ring closes; long enough for three rows.
    std::vector<int> lengths;
    for (int i = 0; i < 4; ++i) lengths.push_back(2 * *rc::gen::inRange(4, 9));
    turning::Items items;
    for (int i = 0; i < 8; ++i) {
      stitch::PathItem item;
      item.way = cloth::turned(cloth::Way::N, i);
      item.number = lengths[static_cast<std::size_t>(i % 4)];
      items.push_back(item);
    }
    const Work made = work(cable(turning::random_hole(), turning::text(items), 3, "right"));
    std::vector<cloth::Hole> corners;
    for (const Corner& corner : made.corners) corners.push_back(corner.hole);
    corners.push_back(corners.front());
    const cloth::Box room = parts::extent(row(made, 0));
    for (int k = 0; k < 3; ++k) {
      const std::vector<Bound> all = bounds(corners, 2 * k);
      for (std::size_t leg = 0; leg < 8; ++leg)
        RC_ASSERT(made.legs[static_cast<std::size_t>(k) * 8 + leg].stitches == stitches_on(all, all[leg], room));
    }
  }));
}

TEST_CASE("a corner of an octagon worked clockwise, at the end of a slant (worked example; common practice, no source)") {
  // Points as (across, down) from the outer corner: outer 7 (-2,-2) 8 (0,0), 9-10 to (0,2), 13 (0,2) 14 (0,4); inner 11 (-2,0) 12 (-2,2).
  const Work made = work(cable({-32, -20}, "E 12, SE 20, S 12, SW 20, W 12, NW 20, N 12, NE 20"));
  const auto outer = row(made, 0), inner = row(made, 1);
  REQUIRE(made.legs[1].to == cloth::Hole{0, 0});
  CHECK(outer[15] == cloth::Stitch{{-2, -2}, {0, 0}});
  CHECK(outer[16] == cloth::Stitch{{0, 0}, {0, 2}});
  CHECK(outer[17] == cloth::Stitch{{0, 2}, {0, 4}});
  CHECK(inner[15] == cloth::Stitch{{-2, 0}, {-2, 2}});
  CHECK(made.legs[1].stitches == made.legs[8 + 1].stitches + 1);  // the outer row is one stitch longer on every slant
  CHECK(made.legs[0].stitches == made.legs[8].stitches);
}

TEST_CASE("the start of two level rows, straight and on a slant (common practice, no source)") {
  const Work straight = work(cable({0, 0}, "E 6"));
  CHECK(row(straight, 0) == std::vector<cloth::Stitch>{{{0, 0}, {2, 0}}, {{2, 0}, {4, 0}}, {{4, 0}, {6, 0}}});
  CHECK(row(straight, 1) == std::vector<cloth::Stitch>{{{0, 2}, {2, 2}}, {{2, 2}, {4, 2}}, {{4, 2}, {6, 2}}});
  // 1 (0,0) 2 (2,2) 3 (0,2) 4 (2,4) 6 (4,4) 8 (4,6) as (across, up)
  const Work slant = work(cable({0, 0}, "NE 4", 2, "left"));
  CHECK(row(slant, 0) == std::vector<cloth::Stitch>{{{0, 0}, {2, -2}}, {{2, -2}, {4, -4}}});
  CHECK(row(slant, 1) == std::vector<cloth::Stitch>{{{0, -2}, {2, -4}}, {{2, -4}, {4, -6}}});
}

TEST_CASE("a double cable is two passes; the second works the inner row again and a third (common practice, no source)") {
  const Work made = work(cable({0, 0}, "E 20, S 20, W 20, N 20", 3));
  REQUIRE(made.passes.size() == 2);
  CHECK(made.passes[0].runs[1].stitches == made.passes[1].runs[0].stitches);
  CHECK(made.stitches.size() == 40 + 32 + 24);
  CHECK(parts::normal_set(made.stitches).size() == made.stitches.size());
  for (const Pass& pass : made.passes) {
    CHECK(pass.order == Order::turn_about);
    CHECK(pass.closed);
    for (const Run& run : pass.runs) {
      CHECK(run.freedom == Freedom::each_way);
      CHECK(run.down == DownSide::none);
    }
  }
}

TEST_CASE("rows on either side, mitred at corners of every turn") {
  // Each line: two legs, the side, and where the second row begins, turns and ends (worked out on squared paper).
  struct Case {
    const char* path;
    const char* lie;
    cloth::Hole begin, corner, end;
  };
  const Case cases[] = {
      {"E 10, S 10", "right", {0, 2}, {8, 2}, {8, 10}},    {"E 10, S 10", "left", {0, -2}, {12, -2}, {12, 10}},
      {"E 10, SE 10", "right", {0, 2}, {10, 2}, {20, 12}}, {"E 10, SE 10", "left", {0, -2}, {10, -2}, {20, 8}},
      {"E 10, NE 10", "right", {0, 2}, {10, 2}, {20, -8}}, {"E 10, SW 10", "right", {0, 2}, {6, 2}, {0, 8}},
      {"SE 10, S 10", "right", {0, 2}, {8, 10}, {8, 20}},  {"SE 10, NE 10", "left", {0, -2}, {10, 8}, {20, -2}},
      {"SE 10, SW 10", "right", {0, 2}, {8, 10}, {0, 18}}, {"S 10, NE 10", "left", {2, 0}, {2, 6}, {10, -2}},
  };
  for (const Case& one : cases) {
    CAPTURE(one.path);
    CAPTURE(one.lie);
    const Work made = work(cable({0, 0}, one.path, 2, one.lie));
    CHECK(!made.closed);
    CHECK(made.legs[2].from == one.begin);
    CHECK(made.legs[2].to == one.corner);
    CHECK(made.legs[3].from == one.corner);
    CHECK(made.legs[3].to == one.end);
  }
}

TEST_CASE("a path that starts in the middle of a side is the path that starts at the corner") {
  for (const int begun : {1, 2, 7, 11}) {
    const Work middle = work(cable(
        {begun, 0}, "E " + std::to_string(12 - begun) + ", SE 10, S 12, SW 10, W 12, NW 10, N 12, NE 10, E " + std::to_string(begun), 3));
    const Work corner = work(cable({0, 0}, "E 12, SE 10, S 12, SW 10, W 12, NW 10, N 12, NE 10", 3));
    CHECK(middle.closed);
    CHECK(middle.stitches == corner.stitches);
    CHECK(middle.corners.size() == 8);
    CHECK(middle.corners[0].hole == cloth::Hole{0, 0});
    for (std::size_t k = 0; k < 2; ++k)
      for (std::size_t r = 0; r < 2; ++r) CHECK(middle.passes[k].runs[r].legs == corner.passes[k].runs[r].legs);
  }
}

TEST_CASE("items that go on the same way are one leg") {
  const Work made = work(cable({0, 0}, "E 3, E 5, S 4, 3 x (S 2)"));
  REQUIRE(made.legs.size() == 4);
  CHECK(made.legs[0].stitches == 4);
  CHECK(made.legs[1].stitches == 5);
  CHECK(made.corners.size() == 3);
}

TEST_CASE("legs are numbered alike in both rows and never fall") {
  const Work made = work(cable({0, 0}, "E 12, NE 8, E 4, SE 8, E 12"));
  for (const Run& run : made.passes[0].runs) {
    REQUIRE(run.legs.size() == run.stitches.size());
    CHECK(std::is_sorted(run.legs.begin(), run.legs.end()));
    CHECK(run.legs.front() == 0);
    CHECK(run.legs.back() == 4);
    for (std::size_t i = 0; i < run.stitches.size(); ++i) {
      const bool slanted = cloth::slanted(*cloth::way_between(run.stitches[i].a, run.stitches[i].b));
      CHECK(slanted == (run.legs[i] % 2 == 1));
      if (i > 0) CHECK(run.stitches[i].a == run.stitches[i - 1].b);
    }
  }
}

TEST_CASE("corners and free ends can be found by eye, and corners of the first row are marked") {
  const Work open = work(cable({0, 0}, "E 12, S 8", 3));
  CHECK(open.corners.size() == 3);
  REQUIRE(open.features.size() == 9);
  for (std::size_t i = 0; i < 9; ++i) {
    const Feature& feature = open.features[i];
    CHECK(feature.row == static_cast<int>(i / 3));
    CHECK(feature.along == static_cast<int>(i % 3));
    CHECK((feature.shape == Shape::corner) == (feature.along == 1));
    CHECK(feature.stitches.size() == (feature.along == 1 ? 2u : 1u));
    for (const cloth::Stitch& stitch : feature.stitches) CHECK((stitch.a == feature.hole || stitch.b == feature.hole));
  }
  const Work closed = work(cable({0, 0}, "E 12, S 8, W 12, N 8"));
  CHECK(closed.corners.size() == 4);
  REQUIRE(closed.features.size() == 8);
  for (const Feature& feature : closed.features) {
    CHECK(feature.shape == Shape::corner);
    CHECK(feature.stitches.at(0).b == feature.hole);
    CHECK(feature.stitches.at(1).a == feature.hole);
  }
}
