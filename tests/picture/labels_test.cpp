// Numbers placed among stitches: whatever is called clean is held against boxes and lines worked out here by another way (points sampled
// along each line).
#include "picture/labels.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "list/bounds.h"

namespace {

/// Type of which every sign is as wide as 0.6 of its size: these tests need no fonts.
class PlainType : public list::Measure {
 public:
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override {
    const double em = style.size_pt * list::mm_per_pt;
    return {0.6 * em * static_cast<double>(text.size()), 0.97 * em, 0.24 * em, true};
  }
};

const list::TypeStyle small{8.5, list::Weight::semibold};

/// Is any point of the capsule's middle line nearer to the box than its radius? Sampled every twentieth of a millimetre.
bool touched(const picture::Rect& box, const picture::Capsule& c) {
  const double all = picture::length(picture::minus(c.b, c.a));
  const int steps = static_cast<int>(all / 0.05) + 1;
  for (int i = 0; i <= steps; ++i) {
    const picture::Point p = picture::between(c.a, c.b, static_cast<double>(i) / steps);
    const double dx = std::max({box.x - p.x, 0.0, p.x - box.x - box.w}), dy = std::max({box.y - p.y, 0.0, p.y - box.y - box.h});
    if (dx * dx + dy * dy < (c.radius - 0.02) * (c.radius - 0.02)) return true;
  }
  return false;
}

struct Case {
  std::vector<picture::Label> labels;
  picture::Surroundings around;
};

/// Two rows of stitches across a frame, numbered like a cable, with some numbers paired.
Case two_rows(double unit, std::mt19937& random) {
  Case c;
  c.around.frame = {0, 0, 20 * unit, 14 * unit};
  int number = 1;
  for (int k = 0; k < 6; ++k)
    for (const int row : {0, 1}) {
      const picture::Point a{(4 + 2 * k) * unit, (6 + 2 * row) * unit}, b{a.x + 2 * unit, a.y};
      c.around.solid.push_back({a, b, 0.16 * unit});
      c.around.solid.push_back({a, a, 0.36 * unit});
      const bool pair = std::uniform_int_distribution<>(0, 1)(random) == 1;
      c.labels.push_back({a, 0.36 * unit, pair ? std::to_string(number) + ", " + std::to_string(number + 3) : std::to_string(number)});
      number += 2;
    }
  return c;
}

}  // namespace

TEST_CASE("numbers stand by their holes: on nothing, on no other, inside the frame") {
  const PlainType type;
  std::mt19937 random(7);  // a fixed seed
  for (int round = 0; round < 40; ++round) {
    const Case c = two_rows(3.6 + 0.05 * round, random);
    const picture::Placement placement = picture::place_labels(c.labels, c.around, small, type);
    REQUIRE(placement.labels.size() == c.labels.size());
    REQUIRE(placement.clean);
    for (std::size_t i = 0; i < c.labels.size(); ++i) {
      const picture::PlacedLabel& label = placement.labels[i];
      CHECK(picture::within(label.box, c.around.frame));
      for (const picture::Capsule& solid : c.around.solid) CHECK_FALSE(touched(label.box, solid));
      for (std::size_t j = i + 1; j < c.labels.size(); ++j) CHECK_FALSE(list::overlap(label.box, placement.labels[j].box));
      for (const picture::PlacedLabel& other : placement.labels)
        if (other.led && &other != &label) CHECK_FALSE(touched(label.box, {other.from, other.to, 0.1}));
      // what has no leader is nearest to its own hole
      if (label.led) continue;
      const double own = picture::distance(label.box, c.labels[i].hole);
      for (std::size_t j = 0; j < c.labels.size(); ++j)
        if (j != i) CHECK(picture::distance(label.box, c.labels[j].hole) > own - 0.01);
    }
  }
}

TEST_CASE("where there is no room, that is said") {
  const PlainType type;
  picture::Surroundings around;
  around.frame = {0, 0, 5, 5};
  around.solid = {{{0, 2.5}, {5, 2.5}, 2.4}};
  CHECK_FALSE(picture::place_labels({{{2.5, 2.5}, 0.5, "12"}}, around, small, type).clean);
  CHECK(picture::place_labels({}, around, small, type).clean);
}

TEST_CASE("a number that stands off has a leader from its hole") {
  const PlainType type;
  picture::Surroundings around;
  around.frame = {0, 0, 40, 40};
  around.boxes = {{14, 14, 12, 12}};  // taken by others all round the hole
  around.solid = {{{20, 20}, {20, 20}, 1}};
  const picture::Placement placement = picture::place_labels({{{20, 20}, 1, "5"}}, around, small, type);
  REQUIRE(placement.labels.size() == 1);
  if (placement.clean) {
    CHECK(placement.labels[0].led);
    CHECK(picture::distance(placement.labels[0].box, picture::Point{20, 20}) > 6);
  }
}

TEST_CASE("the same numbers among the same stitches stand in the same places") {
  const PlainType type;
  std::mt19937 one(3), two(3);
  const Case a = two_rows(4, one), b = two_rows(4, two);
  const auto first = picture::place_labels(a.labels, a.around, small, type),
             second = picture::place_labels(b.labels, b.around, small, type);
  for (std::size_t i = 0; i < first.labels.size(); ++i) {
    CHECK(first.labels[i].base.x == second.labels[i].base.x);
    CHECK(first.labels[i].base.y == second.labels[i].base.y);
  }
}
