// Names of landmarks: each followed back by a finder of the tests' own must lead to exactly its hole, and no name may mean two holes in a
// lesson.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <map>
#include <sstream>

#include "guide/follow.h"
#include "guide/hand_made.h"
#include "guide/random_cloth.h"

using namespace hand_made;
using guide::Side;
using guide::When;
using guide::Which;

namespace {

struct Told {
  int features = 0, named = 0, names = 0;
};

/// Asks for a name for every hole of every feature that stands before `now`, follows it back, and keeps it with those of the same lesson.
void ask_all(const Cloth& cloth, const std::vector<std::vector<When>>& ready, const guide::OnCloth& on_cloth, When now,
             std::map<std::string, cloth::Hole>& of_lesson, Told& told) {
  for (std::size_t p = 0; p < ready.size(); ++p)
    for (std::size_t f = 0; f < ready[p].size(); ++f) {
      if (ready[p][f].lesson == 0 || !(ready[p][f] < now)) continue;
      const stitch::Feature& feature = cloth.course.parts[p].work.features[f];
      std::vector<cloth::Hole> holes{feature.hole};
      if (feature.shape == stitch::Shape::bundle) holes = {feature.stitches[0].a, feature.stitches[2].b, feature.stitches[4].b};
      ++told.features;
      bool named = true;
      for (const cloth::Hole hole : holes) {
        const auto found = on_cloth.find({-50, -50}, now, hole);
        const guide::Landmark& landmark = found.count.landmark;
        const bool has_name = !found.own_landmark_missing && landmark.part >= 0;  // else it may be the middle of the cloth
        named = named && has_name;
        if (!has_name) continue;
        RC_ASSERT(landmark.hole == hole);
        RC_ASSERT(follow(cloth, ready, landmark, now) == std::optional(hole));
        RC_ASSERT(of_lesson.try_emplace(words(landmark), hole).first->second == hole);
        ++told.names;
      }
      told.named += named ? 1 : 0;
    }
}

/// Before every item of every lesson, and after the last.
void ask_always(const Cloth& cloth, Told& told) {
  const guide::OnCloth on_cloth = cloth.on_cloth();
  std::vector<std::vector<When>> ready;
  for (std::size_t p = 0; p < cloth.course.parts.size(); ++p) ready.push_back(cloth.ready(static_cast<int>(p)));
  for (int lesson = 1; lesson <= lessons + 1; ++lesson) {
    std::map<std::string, cloth::Hole> of_lesson;
    for (int item = 0; item < 10; ++item) ask_all(cloth, ready, on_cloth, {lesson, item, 0}, of_lesson, told);
  }
}

Which extreme(Side side) { return {.form = Which::extreme, .side = side}; }

guide::Landmark landmark_at(const Cloth& cloth, cloth::Hole hole, When now) {
  const auto found = cloth.on_cloth().find({-50, -50}, now, hole);
  REQUIRE_FALSE(found.own_landmark_missing);
  return found.count.landmark;
}

}  // namespace

TEST_CASE("names of random rings lead back to their holes, at every stage of their stitching") {
  fix_seed();
  Told told;
  CHECK(rc::check([&](unsigned seed) {
    Chance chance(seed);
    Cloth cloth;
    const int part = cloth.part(work_of(ring_of_blocks(chance, chance.once_in(2)), chance.below(4) > 0));
    work_at_random(cloth, part, chance, 0);
    ask_always(cloth, told);
  }));
  CHECK(told.names > 10000);
  CHECK(told.named > 0.9 * told.features);  // hardly a block that stands cannot be named
}

TEST_CASE("names among several parts and rows lead back to their holes") {
  fix_seed();
  Told told;
  CHECK(rc::check([&](unsigned seed) {
    Chance chance(seed);
    const Cloth cloth = random_cloth(chance);
    ask_always(cloth, told);
  }));
  CHECK(told.names > 10000);
  CHECK(told.named > 0.9 * told.features);
}

TEST_CASE("scattered blocks: extremes, rows of extremes, and nothing that cannot be seen") {
  fix_seed();
  Told told;
  CHECK(rc::check([&](unsigned seed) {
    Chance chance(seed);
    Cloth cloth;
    std::vector<stitch::Feature> blocks;
    std::set<cloth::Hole> taken;
    for (int i = 0; i < 8; ++i) {
      const cloth::Hole at{12 * chance.below(6), 12 * chance.below(6)};
      if (taken.insert(at).second) blocks.push_back(block(at, Grain::upright, i));
    }
    const int part = cloth.part(work_of(blocks, false));
    work_at_random(cloth, part, chance, 0);
    ask_always(cloth, told);
  }));
  CHECK(told.names > 1000);
}

TEST_CASE("a diamond of four blocks has a name for each side; a fifth to the right of the topmost is counted") {
  Cloth cloth;
  const int part = cloth.part(work_of({block({20, 0}, Grain::upright, 0), block({40, 20}, Grain::across, 1),
                                       block({20, 40}, Grain::upright, 2), block({0, 20}, Grain::across, 3)},
                                      true));
  cloth.work(part, 1, 0);
  CHECK(landmark_at(cloth, {20, 0}, {2, 0, 0}).which == extreme(Side::top));
  CHECK(landmark_at(cloth, {44, 20}, {2, 0, 0}).which == extreme(Side::right));
  CHECK(landmark_at(cloth, {20, 44}, {2, 0, 0}).which == extreme(Side::bottom));
  CHECK(landmark_at(cloth, {0, 24}, {2, 0, 0}).which == extreme(Side::left));
  const guide::Spot spot = landmark_at(cloth, {24, 0}, {2, 0, 0}).spot;
  CHECK(spot.stitch == 4);
  CHECK(spot.of == 5);
  CHECK(spot.upright);
  CHECK(spot.end == Side::top);
}

TEST_CASE("one block alone is the block") {
  Cloth cloth;
  const int part = cloth.part(work_of({block({0, 0}, Grain::upright, 0), block({12, 0}, Grain::upright, 1)}, false));
  cloth.work(part, 1, 0);
  CHECK(landmark_at(cloth, {0, 0}, {1, 0, 5}).which.form == Which::only);
  CHECK(cloth.on_cloth().find({0, 0}, {1, 0, 4}, cloth::Hole{0, 0}).own_landmark_missing);  // four of five stitches are no block yet
  CHECK(landmark_at(cloth, {12, 0}, {2, 0, 0}).which == extreme(Side::right));
}

TEST_CASE("what stands out by one thread only does not stand out by eye") {
  Cloth cloth;
  const int part =
      cloth.part(work_of({block({0, 1}, Grain::upright, 0), block({20, 0}, Grain::upright, 1), block({40, 1}, Grain::upright, 2)}, false));
  cloth.work(part, 1, 0);
  const auto found = cloth.on_cloth().find({20, -10}, {2, 0, 0}, cloth::Hole{20, 0});
  CHECK(found.own_landmark_missing);
}

TEST_CASE("a chain that goes away from its outermost block twice the same way is counted from elsewhere") {
  // The rightmost block is a hairpin's tip: both its neighbours lie to the left of it. They are counted from the upper and the lower ends.
  Cloth cloth;
  std::vector<stitch::Feature> blocks;
  const cloth::Hole places[] = {{0, 10}, {6, 10}, {12, 7}, {18, 5}, {12, 3}, {6, 0}, {0, 0}};
  for (int i = 0; i < 7; ++i) blocks.push_back(block(places[i], Grain::upright, i));
  const int part = cloth.part(work_of(blocks, false));
  cloth.work(part, 1, 0);
  CHECK(landmark_at(cloth, {22, 5}, {2, 0, 0}).which == extreme(Side::right));
  Which lower{.form = Which::after, .side = Side::bottom, .within = Side::right, .anchor_within = true, .steps = 1, .open = true};
  lower.towards = cloth::Way::NE;
  CHECK(landmark_at(cloth, {12, 7}, {2, 0, 0}).which == lower);
  Which upper = lower;
  upper.side = Side::top;
  upper.towards = cloth::Way::SE;
  CHECK(landmark_at(cloth, {12, 3}, {2, 0, 0}).which == upper);
}

TEST_CASE("a name keeps its meaning through a lesson") {
  // Before the lesson's second item the lower block is the topmost; after it another one is: that one goes by another name in this lesson.
  Cloth cloth;
  const int part =
      cloth.part(work_of({block({0, 40}, Grain::upright, 0), block({0, 60}, Grain::upright, 1), block({0, 0}, Grain::upright, 2)}, false));
  cloth.work(part, 1, 0, 0, 9);
  cloth.work(part, 2, 1, 10);
  CHECK(landmark_at(cloth, {0, 40}, {2, 0, 0}).which == extreme(Side::top));
  CHECK(cloth.on_cloth().find({0, 0}, {2, 2, 0}, cloth::Hole{0, 0}).own_landmark_missing);
  CHECK(landmark_at(cloth, {0, 0}, {3, 0, 0}).which == extreme(Side::top));
}

TEST_CASE("the part is named where another has the like") {
  Cloth cloth;
  const int one = cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false));
  const int other = cloth.part(work_of({block({50, 0}, Grain::upright, 0)}, false));
  cloth.work(one, 1, 0);
  cloth.work(other, 2, 0);
  CHECK_FALSE(landmark_at(cloth, {0, 0}, {2, 0, 0}).name_part);
  CHECK(landmark_at(cloth, {0, 0}, {3, 0, 0}).name_part);
  CHECK(landmark_at(cloth, {50, 0}, {3, 0, 0}).name_part);
}

TEST_CASE("a row is named with its part where any other part has rows, begun or not") {
  Chance chance(5);
  Cloth cloth;
  const int inner = cloth.part(work_of(rows_of_corners(chance), true));
  cloth.work(inner, 1, 0);
  const cloth::Hole hole = cloth.course.parts[inner].work.features[0].hole;
  CHECK(landmark_at(cloth, hole, {2, 0, 0}).name_row);
  CHECK_FALSE(landmark_at(cloth, hole, {2, 0, 0}).name_part);
  auto outer = rows_of_corners(chance);
  move(outer, {0, 300});
  cloth.part(work_of(outer, true));
  CHECK(landmark_at(cloth, hole, {2, 0, 0}).name_part);
}
