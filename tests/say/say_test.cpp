// Sentences from facts, for both hands. What the words must say is worked out by hand here.
#include "say/say.h"

#include <doctest/doctest.h>

#include "assets/assets.h"

namespace {

const words::Phrases& english() {
  static const auto table = words::Phrases::read(assets::table("phrases/en.toml"), "en.toml");
  REQUIRE(table);
  return *table;
}

course::Course one_part() {
  course::Course course;
  course.cloth.count = {25.4};  // a thread is a millimetre
  course.parts.resize(1);
  course.parts[0].name = "ring";
  return course;
}

course::Course two_parts() {
  course::Course course;
  course.cloth.count = {25.4};  // a thread is a millimetre
  course.parts.resize(2);
  course.parts[0].name = "ring";
  course.parts[1].name = "border";
  return course;
}

guide::Landmark block(guide::Which which, guide::Spot spot) {
  guide::Landmark landmark;
  landmark.kind = guide::LandmarkKind::bundle;
  landmark.part = 0;
  landmark.which = which;
  landmark.spot = spot;
  return landmark;
}

}  // namespace

TEST_CASE("a block's stitch end, for the right hand and in the mirror of the left") {
  const course::Course course = one_part();
  const say::Voice right{english(), say::Hand::right, course}, left{english(), say::Hand::left, course};
  const auto top = block({guide::Which::extreme, guide::Side::top}, {0, 5, true, guide::Side::top});
  CHECK(say::landmark(right, top) == "the upper end of the left-hand stitch of the topmost block");
  CHECK(say::landmark(left, top) == "the upper end of the right-hand stitch of the topmost block");
  const auto side = block({guide::Which::extreme, guide::Side::left}, {1, 5, false, guide::Side::right});
  CHECK(say::landmark(right, side) == "the right end of the second stitch from the top in the leftmost block");
  CHECK(say::landmark(left, side) == "the left end of the second stitch from the top in the rightmost block");
}

TEST_CASE("blocks after an anchor: clockwise turns round in the mirror, a way is mirrored") {
  const course::Course course = one_part();
  const say::Voice right{english(), say::Hand::right, course}, left{english(), say::Hand::left, course};
  guide::Which after{guide::Which::after, guide::Side::top};
  after.steps = 3;
  const auto third = block(after, {4, 5, true, guide::Side::bottom});
  CHECK(say::landmark(right, third) == "the lower end of the right-hand stitch of the third block clockwise after the topmost block");
  CHECK(say::landmark(left, third) == "the lower end of the left-hand stitch of the third block anticlockwise after the topmost block");
  after.open = true;
  after.towards = cloth::Way::SE;
  CHECK(say::landmark(left, block(after, {4, 5, true, guide::Side::bottom})) ==
        "the lower end of the left-hand stitch of the third block going down to the left from the topmost block");
}

TEST_CASE("where the course has several parts, the part is always named") {
  const course::Course course = two_parts();
  const say::Voice voice{english(), say::Hand::right, course};
  auto landmark = block({guide::Which::extreme_of_row, guide::Side::bottom, guide::Side::right}, {0, 5, true, guide::Side::bottom});
  CHECK(say::landmark(voice, landmark) == "the lower end of the left-hand stitch of the right-hand one of the lowest blocks of the ring");
}

TEST_CASE("count-ins: one leg, two legs, the hole itself, from the cut edges in cm") {
  const course::Course course = one_part();
  const say::Voice right{english(), say::Hand::right, course}, left{english(), say::Hand::left, course};
  guide::CountIn count_in;
  count_in.count.landmark.kind = guide::LandmarkKind::cloth_middle;
  count_in.count.legs = {{cloth::Way::N, 10}};
  CHECK(say::count_in(right, count_in) ==
        "From the crossing of the two folds in the middle of the cloth count 10 threads straight up. The needle comes up there: 1.");
  count_in.count.legs = {{cloth::Way::N, 14}, {cloth::Way::W, 1}};
  CHECK(say::proof(right, count_in.count) == "From the crossing of the two folds in the middle of the cloth: 14 threads up, then 1 thread to the left.");
  CHECK(say::proof(left, count_in.count) == "From the crossing of the two folds in the middle of the cloth: 14 threads up, then 1 thread to the right.");
  count_in.count.landmark.kind = guide::LandmarkKind::cloth_edges;
  count_in.count.legs = {{cloth::Way::E, 85}, {cloth::Way::S, 120}};
  CHECK(say::proof(right, count_in.count) == "It lies 12.0 cm below the upper cut edge and 8.5 cm in from the left cut edge.");
  CHECK(say::proof(left, count_in.count) == "It lies 12.0 cm below the upper cut edge and 8.5 cm in from the right cut edge.");
  guide::CountIn same;
  same.count.landmark = block({guide::Which::extreme, guide::Side::top}, {0, 5, true, guide::Side::top});
  CHECK(say::count_in(right, same) ==
        "The needle comes up in the very hole of a stitch already there: the upper end of the left-hand stitch of the topmost block. That is 1.");
}

TEST_CASE("days in words: 2027-01-26 is a Tuesday, 2005-01-01 a Saturday (ISO 8601: 2004-W53-6)") {
  const course::Course course = one_part();
  const say::Voice voice{english(), say::Hand::right, course};
  CHECK(say::date(voice, *base::parse_date("2027-01-26")) == "Tuesday 26 January 2027");
  CHECK(say::date(voice, *base::parse_date("2005-01-01")) == "Saturday 1 January 2005");
}

TEST_CASE("every snag of the rules has both its sentences") {
  for (const std::string& key : english().keys()) {
    if (key.rfind("snag.", 0) != 0) continue;
    const std::size_t end = key.rfind('.');
    CHECK(english().has(key.substr(0, end) + ".says"));
    CHECK(english().has(key.substr(0, end) + ".do"));
  }
}
