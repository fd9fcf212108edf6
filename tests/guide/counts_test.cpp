// Counts: the cheapest of all there are, held against every landmark asked for by itself and against costs reckoned thread by thread; the
// proof; the bare cloth; the teacher's own landmark.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <set>

#include "guide/care_by_hand.h"
#include "guide/random_cloth.h"

using namespace hand_made;
using guide::Count;
using guide::LandmarkKind;
using guide::Side;
using guide::When;
using guide::Which;

namespace {

bool stitched(const Count& count) { return count.landmark.part >= 0; }

bool same(double a, double b) { return std::abs(a - b) < 1e-5; }

/// Every landmark of every standing feature, each asked for by its own hole.
std::vector<Count> every_count(const Cloth& cloth, const guide::OnCloth& on_cloth, cloth::Hole hole, When now) {
  std::set<cloth::Hole> holes;
  for (const course::Part& part : cloth.course.parts)
    for (const stitch::Feature& f : part.work.features) {
      holes.insert(f.hole);
      for (const cloth::Stitch& s : f.stitches) holes.insert({s.a, s.b});
    }
  std::vector<Count> all;
  for (const cloth::Hole h : holes) {
    auto found = on_cloth.find(hole, now, h);
    if (!found.own_landmark_missing && stitched(found.count)) all.push_back(std::move(found.count));
  }
  return all;
}

bool other_feature(const Count& a, const Count& b) {
  return a.landmark.part != b.landmark.part || a.landmark.feature != b.landmark.feature;
}

void check_arithmetic(const Count& count, cloth::Hole hole, const ByHand& by_hand) {
  cloth::Hole at = count.landmark.hole;
  for (const guide::Leg& leg : count.legs) {
    RC_ASSERT(leg.threads > 0);
    RC_ASSERT(!cloth::slanted(leg.way));
    at = at + leg.threads * cloth::step(leg.way);
  }
  RC_ASSERT(at == hole);
  RC_ASSERT(count.legs.size() <= 2U);
  if (count.landmark.kind == LandmarkKind::cloth_edges) return;
  const double legs = by_hand.of_legs(count.landmark.hole, count.legs);
  RC_ASSERT(same(count.cost_s, legs + by_hand.of_landmark(count.landmark)));
  const std::vector<guide::Leg> turned(count.legs.rbegin(), count.legs.rend());
  RC_ASSERT(by_hand.of_legs(count.landmark.hole, turned) > legs - 1e-9);
}

void check_time(const Cloth& cloth, const Count& count, When now) {
  if (!stitched(count)) return;
  const When ready = cloth.ready(count.landmark.part)[count.landmark.feature];
  RC_ASSERT(ready.lesson > 0);
  RC_ASSERT(ready < now);
  RC_ASSERT(count.landmark.lesson == ready.lesson);
}

void check_choice(const guide::OnCloth::Found& found, const std::vector<Count>& all) {
  for (const Count& count : all) {
    RC_ASSERT(found.count.cost_s < count.cost_s + 1e-5);
    if (!other_feature(count, found.count) || count.landmark.hole == found.count.landmark.hole) continue;
    RC_ASSERT(found.proof.has_value());
    RC_ASSERT(stitched(*found.proof));
    RC_ASSERT(found.proof->cost_s < count.cost_s + 1e-5);
  }
  RC_ASSERT(found.proof.has_value());
  RC_ASSERT(found.proof->landmark.hole != found.count.landmark.hole);
  if (all.empty()) RC_ASSERT(!stitched(found.count));
}

void check_others(const guide::OnCloth::Found& found) {
  std::set<cloth::Hole> holes{found.count.landmark.hole, found.proof->landmark.hole};
  std::set<std::pair<int, int>> features;
  double last = 0;
  RC_ASSERT(found.others.size() <= 6U);
  for (const Count& other : found.others) {
    RC_ASSERT(holes.insert(other.landmark.hole).second);
    RC_ASSERT(other.cost_s > last - 1e-9);
    last = other.cost_s;
    if (!stitched(other)) continue;
    RC_ASSERT(other_feature(other, found.count));
    RC_ASSERT(other_feature(other, *found.proof));
    RC_ASSERT(features.emplace(other.landmark.part, other.landmark.feature).second);
  }
}

void check_costs(const guide::OnCloth& on_cloth, cloth::Hole hole, When now, double cost) {
  RC_ASSERT(same(on_cloth.cost(hole, now), cost));
  RC_ASSERT(same(on_cloth.cost(hole, now, cost + 0.01), cost));
  RC_ASSERT(on_cloth.cost(hole, now, cost / 2) > cost / 2 - 1e-9);
}

/// A ring of blocks along a diamond, n a side, as stitched; its topmost block stands at (4n, 0).
std::vector<stitch::Feature> diamond(int n) {
  std::vector<stitch::Feature> blocks;
  cloth::Hole at{4 * n, 0};
  for (const cloth::Hole step : {cloth::Hole{4, 4}, cloth::Hole{-4, 4}, cloth::Hole{-4, -4}, cloth::Hole{4, -4}})
    for (int i = 0; i < n; ++i) {
      const int along = static_cast<int>(blocks.size());
      blocks.push_back(block(at, along % 2 == 0 ? Grain::upright : Grain::across, along));
      at = at + step;
    }
  return blocks;
}

Cloth stitched_diamond(int n) {
  Cloth cloth;
  cloth.work(cloth.part(work_of(diamond(n), true)), 1, 0);
  return cloth;
}

bool is(const guide::Leg& leg, cloth::Way way, int threads) { return leg.way == way && leg.threads == threads; }

}  // namespace

TEST_CASE("the count is the cheapest of all, its proof the cheapest from another block, and all of it adds up") {
  fix_seed();
  int asked = 0;
  CHECK(rc::check([&](unsigned seed) {
    Chance chance(seed);
    Cloth cloth = random_cloth(chance);
    if (chance.once_in(3)) cloth.course.choices.begin = course::Begin::edges;
    const guide::OnCloth on_cloth = cloth.on_cloth();
    for (int i = 0; i < 4; ++i) {
      const When now{1 + chance.below(4), chance.below(10), 0};
      const cloth::Hole hole{chance.below(180) - 20, chance.below(180) - 20};
      const ByHand by_hand(cloth, now);
      const auto found = on_cloth.find(hole, now);
      check_choice(found, every_count(cloth, on_cloth, hole, now));
      std::vector<Count> told = found.others;
      told.push_back(found.count);
      told.push_back(*found.proof);
      for (const Count& count : told) {
        check_arithmetic(count, hole, by_hand);
        check_time(cloth, count, now);
      }
      check_others(found);
      check_costs(on_cloth, hole, now, found.count.cost_s);
      asked += stitched(found.count) ? 1 : 0;
    }
  }));
  CHECK(asked > 100);
}

TEST_CASE("ten threads straight up from the topmost block, and a proof from the next block") {
  const Cloth cloth = stitched_diamond(4);
  const auto found = cloth.on_cloth().find({16, -10}, {2, 0, 0});
  CHECK(found.count.landmark.hole == cloth::Hole{16, 0});
  CHECK(found.count.landmark.which == Which{.form = Which::extreme, .side = Side::top});
  CHECK(found.count.landmark.spot.stitch == 0);
  CHECK(found.count.landmark.spot.end == Side::top);
  REQUIRE(found.count.legs.size() == 1);
  CHECK(is(found.count.legs[0], cloth::Way::N, 10));
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.part == 0);
  CHECK(found.proof->landmark.feature == 15);  // the last block of the ring, left of the topmost: 4 threads to the side and 4 lower
  CHECK(found.proof->landmark.which == Which{.form = Which::after, .side = Side::top, .steps = 1, .clockwise = false});
}

TEST_CASE("a hole that is a landmark needs no counting") {
  const Cloth cloth = stitched_diamond(4);
  const auto found = cloth.on_cloth().find({20, 0}, {2, 0, 0});
  CHECK(found.count.legs.empty());
  CHECK(found.count.landmark.hole == cloth::Hole{20, 0});
  CHECK(found.count.cost_s == 0);
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.hole != cloth::Hole{20, 0});
}

TEST_CASE("a count goes round stitches rather than under them") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false)), 1, 0);
  // Straight up first would go along the block's own left-hand stitch.
  const auto found = cloth.on_cloth().find({10, -6}, {2, 0, 0}, cloth::Hole{0, 4});
  REQUIRE(found.count.legs.size() == 2);
  CHECK(is(found.count.legs[0], cloth::Way::E, 10));
  CHECK(is(found.count.legs[1], cloth::Way::N, 10));
}

TEST_CASE("on bare cloth the first count starts where the teacher begins, the other is its proof") {
  Cloth cloth;
  cloth.part(work_of(diamond(4), true));
  cloth.course.cloth.count = {25.4};  // a thread a millimetre
  cloth.course.cloth.margin_mm = 50;
  auto found = cloth.on_cloth().find({16, 0}, {1, 0, 0});
  CHECK(found.count.landmark.kind == LandmarkKind::cloth_middle);
  CHECK(found.count.landmark.hole == course::middle(cloth.course));
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.kind == LandmarkKind::cloth_edges);
  CHECK(found.proof->landmark.hole == course::corner(cloth.course));
  REQUIRE(found.proof->legs.size() == 2);
  CHECK(is(found.proof->legs[0], cloth::Way::E, 16 - course::corner(cloth.course).x));
  CHECK(is(found.proof->legs[1], cloth::Way::S, 0 - course::corner(cloth.course).y));
  cloth.course.choices.begin = course::Begin::edges;
  found = cloth.on_cloth().find({16, 0}, {1, 0, 0});
  CHECK(found.count.landmark.kind == LandmarkKind::cloth_edges);
  CHECK(found.count.cost_s == 8);
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.kind == LandmarkKind::cloth_middle);
}

TEST_CASE("where one block stands alone the check count starts at another of its stitches, or at the middle where that is easier") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false)), 1, 0);
  cloth.course.cloth.middle = cloth::Hole{200, 200};
  auto found = cloth.on_cloth().find({0, -6}, {2, 0, 0});
  CHECK(found.count.landmark.hole == cloth::Hole{0, 0});
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.feature == 0);
  CHECK(found.proof->landmark.hole != cloth::Hole{0, 0});
  cloth.course.cloth.middle = cloth::Hole{0, -17};
  found = cloth.on_cloth().find({0, -16}, {2, 0, 0});
  CHECK(found.count.landmark.kind == LandmarkKind::cloth_middle);
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.hole == cloth::Hole{0, 0});
}

TEST_CASE("the teacher's own landmark comes first, the computed one proves it") {
  const Cloth cloth = stitched_diamond(4);
  auto found = cloth.on_cloth().find({16, -10}, {2, 0, 0}, cloth::Hole{36, 16});
  CHECK_FALSE(found.own_landmark_missing);
  CHECK(found.count.landmark.hole == cloth::Hole{36, 16});
  REQUIRE(found.proof);
  CHECK(found.proof->landmark.hole == cloth::Hole{16, 0});
  found = cloth.on_cloth().find({16, -10}, {2, 0, 0}, cloth::Hole{17, 1});
  CHECK(found.own_landmark_missing);
  CHECK(found.count.landmark.hole == cloth::Hole{16, 0});
  found = cloth.on_cloth().find({16, -10}, {1, 0, 0}, cloth::Hole{36, 16});
  CHECK(found.own_landmark_missing);  // it is not stitched yet
  CHECK(found.count.landmark.kind == LandmarkKind::cloth_middle);
}

TEST_CASE("in a joined row only its ends are seen: the seams cost like a middle stitch") {
  Cloth cloth;
  const int part =
      cloth.part(work_of({block({0, 0}, Grain::upright, 0), block({4, 0}, Grain::upright, 1), block({8, 0}, Grain::upright, 2)}, false));
  cloth.work(part, 1, 0);
  const guide::OnCloth on_cloth = cloth.on_cloth();
  CHECK(same(on_cloth.find({0, -3}, {2, 0, 0}).count.cost_s, 3 * 0.07));
  const double seam = on_cloth.find({4, -3}, {2, 0, 0}, cloth::Hole{4, 0}).count.cost_s;
  CHECK(seam > 3 * 0.07 + 1.5);
}

TEST_CASE("a trail added later counts as if it had been there from the first") {
  fix_seed();
  CHECK(rc::check([](unsigned seed) {
    Chance chance(seed);
    const Cloth cloth = random_cloth(chance);
    const guide::OnCloth at_once = cloth.on_cloth();
    guide::OnCloth grown(cloth.course, {});
    for (const guide::PlacedTrail& trail : cloth.trails) grown.add(trail);
    for (int i = 0; i < 20; ++i) {
      const When now{1 + chance.below(4), chance.below(10), 0};
      const cloth::Hole hole{chance.below(180) - 20, chance.below(180) - 20};
      const auto a = at_once.find(hole, now), b = grown.find(hole, now);
      RC_ASSERT(a.count.landmark.hole == b.count.landmark.hole);
      RC_ASSERT(a.count.landmark.feature == b.count.landmark.feature);
      RC_ASSERT(a.count.cost_s == b.count.cost_s);
      RC_ASSERT(a.others.size() == b.others.size());
    }
  }));
}

TEST_CASE("in a ring of thousands of blocks a count is still found and still true") {
  const Cloth cloth = stitched_diamond(1000);
  const guide::OnCloth on_cloth = cloth.on_cloth();
  for (const cloth::Hole hole : {cloth::Hole{6000, 1990}, cloth::Hole{4000, 4000}, cloth::Hole{-300, 9000}, cloth::Hole{4002, -3}}) {
    const auto found = on_cloth.find(hole, {2, 0, 0});
    cloth::Hole at = found.count.landmark.hole;
    for (const guide::Leg& leg : found.count.legs) at = at + leg.threads * cloth::step(leg.way);
    CHECK(at == hole);
    CHECK(found.proof.has_value());
    CHECK(found.count.landmark.which.steps < 100);
  }
}
