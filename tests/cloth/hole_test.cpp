// Segments against boxes and each other, held against exact fractions (rational.h) on every small case and on a chance of large ones.
#include "cloth/hole.h"

#include <unordered_set>

#include "cloth/as_text.h"
#include "cloth/rational.h"

using cloth::Box;
using cloth::Hole;
using cloth::Stitch;

namespace {

/// Every segment between holes of a square of so many threads.
std::vector<Stitch> all_stitches(int threads) {
  std::vector<Hole> holes;
  for (int x = 0; x <= threads; ++x)
    for (int y = 0; y <= threads; ++y) holes.push_back({x, y});
  std::vector<Stitch> stitches;
  for (const Hole a : holes)
    for (const Hole b : holes)
      if (a != b) stitches.push_back({a, b});
  return stitches;
}

Box between(Hole a, Hole b) {
  Box box{a.x, a.y, a.x, a.y};
  box.grow(b);
  return box;
}

}  // namespace

TEST_CASE("whether a segment passes through a box is the same by fractions, for every segment and box of 5 x 5 threads") {
  int wrong = 0, yes = 0;
  for (const Stitch s : all_stitches(5)) {
    for (const Box box : {Box{1, 1, 3, 2}, Box{2, 2, 3, 3}, Box{0, 0, 5, 5}, Box{1, 1, 4, 4}, Box{0, 2, 5, 3}, Box{2, 1, 2, 4}, Box{3, 3, 3, 3}}) {
      const bool found = cloth::crosses(s, box);
      yes += found;
      wrong += found != rational::crosses(s, box);
    }
  }
  CHECK(wrong == 0);
  CHECK(yes > 1000);
}

TEST_CASE("along an edge, or through a corner, is not through the inside") {
  const Box box{0, 0, 4, 4};
  CHECK_FALSE(cloth::crosses({{0, 0}, {4, 0}}, box));
  CHECK_FALSE(cloth::crosses({{-2, 2}, {2, -2}}, box));
  CHECK_FALSE(cloth::crosses({{-3, 2}, {0, 2}}, box));
  CHECK(cloth::crosses({{-3, 2}, {1, 2}}, box));
  CHECK(cloth::crosses({{0, 0}, {4, 4}}, box));
  CHECK(cloth::crosses({{1, 1}, {2, 3}}, box));
}

TEST_CASE("a corner cut by a hair at the far ends of the largest cloth is still seen") {
  // The line through (-100000, -100000) and (100000, 99999) passes the hole (99999, 99998) on the side of the box, by less than 1e-5 threads.
  const Stitch s{{-100000, -100000}, {100000, 99999}};
  for (const Box box : {Box{99999, 99990, 100010, 99999}, Box{99990, 99998, 99999, 100010}, Box{-100000, -100000, -99999, -99999}, Box{0, -1, 1, 0}, Box{0, 0, 1, 1}}) {
    CAPTURE(box);
    CHECK(cloth::crosses(s, box) == rational::crosses(s, box));
  }
  Chance chance(20270112);
  int wrong = 0, yes = 0;
  for (int i = 0; i < 20000; ++i) {
    const Stitch far = chance.stitch(100000);
    // a box one thread wide that has a corner near the segment
    const int x = std::min(far.a.x, far.b.x) + std::abs(far.b.x - far.a.x) / 3;
    const double slope = far.a.x == far.b.x ? 0 : double(far.b.y - far.a.y) / (far.b.x - far.a.x);
    const int y = static_cast<int>(far.a.y + slope * (x - far.a.x));
    const Hole corner{x + chance.between(-1, 1), y + chance.between(-1, 1)};
    const Box box = between(corner, corner + Hole{1, 1});
    const bool found = cloth::crosses(far, box);
    yes += found;
    wrong += found != rational::crosses(far, box);
  }
  CHECK(wrong == 0);
  CHECK(yes > 1000);
}

TEST_CASE("touching is crossing the box widened by half a thread, in half threads") {
  int wrong = 0, yes = 0;
  for (const Stitch s : all_stitches(5)) {
    for (const Box box : {Box{1, 1, 3, 2}, Box{2, 2, 3, 3}, Box{2, 1, 2, 4}, Box{3, 3, 3, 3}, Box{1, 4, 4, 4}}) {
      // With all lengths a hundredfold, a box wider by one touches exactly what the box itself touches: on 5 x 5 threads, what does not touch
      // stays away by 1/7 of a thread at the least.
      const Stitch large{100 * s.a, 100 * s.b};
      const Box larger{100 * box.x0 - 1, 100 * box.y0 - 1, 100 * box.x1 + 1, 100 * box.y1 + 1};
      const bool found = cloth::touches(s, box);
      yes += found;
      wrong += found != rational::crosses(large, larger);
    }
  }
  CHECK(wrong == 0);
  CHECK(yes > 1000);
}

TEST_CASE("whether two stitches meet inside is the same by fractions, for every pair on 3 x 3 threads") {
  const std::vector<Stitch> all = all_stitches(3);
  int wrong = 0, yes = 0;
  for (const Stitch s : all) {
    for (const Stitch t : all) {
      const bool found = cloth::meet_inside(s, t);
      yes += found;
      wrong += found != rational::meet_inside(s, t);
    }
  }
  CHECK(wrong == 0);
  CHECK(yes > 1000);
}

TEST_CASE("and on a chance of larger ones") {
  Chance chance(7);
  int wrong = 0, yes = 0;
  for (int i = 0; i < 100000; ++i) {
    const int reach = i % 2 ? 12 : 60;
    const Stitch s = chance.stitch(reach), t = chance.stitch(reach);
    const bool found = cloth::meet_inside(s, t);
    CHECK_MESSAGE(found == cloth::meet_inside(t.reversed(), s), "not the same the other way round");
    yes += found;
    wrong += found != rational::meet_inside(s, t);
  }
  CHECK(wrong == 0);
  CHECK(yes > 10000);
}

TEST_CASE("what meeting inside means, case by case") {
  const Stitch s{{0, 0}, {4, 0}};
  CHECK_FALSE(cloth::meet_inside(s, {{4, 0}, {8, 0}}));  // end to end
  CHECK_FALSE(cloth::meet_inside(s, {{4, 0}, {4, 4}}));  // a shared corner hole
  CHECK_FALSE(cloth::meet_inside(s, {{0, 1}, {4, 1}}));  // side by side
  CHECK(cloth::meet_inside(s, {{3, 0}, {8, 0}}));        // lapped
  CHECK(cloth::meet_inside(s, {{0, 0}, {2, 0}}));        // lapped from a shared end
  CHECK(cloth::meet_inside(s, {{2, 0}, {2, 4}}));        // a T
  CHECK(cloth::meet_inside(s, {{1, -1}, {2, 1}}));       // crossed between holes
  CHECK(cloth::meet_inside(s, s.reversed()));            // the same stitch
}

TEST_CASE("a stitch is the same worked either way") {
  const Stitch s{{4, 0}, {0, 4}};
  CHECK(s.normal() == Stitch{{0, 4}, {4, 0}});
  CHECK(s.reversed().normal() == s.normal());
  CHECK(s.normal().normal() == s.normal());
}

TEST_CASE("distances in threads") {
  CHECK(cloth::squared({0, 0}, {3, -4}) == 25);
  CHECK(cloth::distance({0, 0}, {3, -4}) == 5.0);
  CHECK(cloth::distance({0, 0}, {1, 4}) == doctest::Approx(std::sqrt(17.0)));  // the step on the back within a block, trade facts: 4 x sqrt 17
  CHECK(cloth::squared({-1000000000, 0}, {1000000000, 0}) == 4'000'000'000'000'000'000);
}

TEST_CASE("boxes hold their edges and grow to a hole") {
  Box box{2, 3, 2, 3};
  box.grow({-1, 5});
  CHECK(box == Box{-1, 3, 2, 5});
  CHECK(box.holds({-1, 5}));
  CHECK_FALSE(box.holds({3, 4}));
  CHECK(box.widened(2) == Box{-3, 1, 4, 7});
  CHECK(box.width() == 3);
  CHECK(box.height() == 2);
}

TEST_CASE("holes and stitches go into sets") {
  std::unordered_set<Hole> holes;
  for (int x = -20; x <= 20; ++x)
    for (int y = -20; y <= 20; ++y) holes.insert({x, y});
  CHECK(holes.size() == 41 * 41);
  CHECK(holes.contains({-20, 20}));
  CHECK_FALSE(holes.contains({21, 0}));
  CHECK(std::hash<Stitch>{}({{1, 2}, {3, 4}}) != std::hash<Stitch>{}({{3, 4}, {1, 2}}));
}
