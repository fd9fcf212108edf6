// What the index finds, against looking at every stitch.
#include "cloth/index.h"

#include "cloth/as_text.h"

using cloth::Box;
using cloth::Hole;
using cloth::Index;
using cloth::Stitch;

namespace {

/// A few hundred stitches: most short, some long, over all four quarters, in holes where several meet; numbers far apart and out of order.
struct Sample {
  std::vector<std::pair<int, Stitch>> all;
  Index index;

  explicit Sample(std::uint32_t seed) {
    Chance chance(seed);
    for (int i = 0; i < 400; ++i) {
      const Hole a = chance.hole(60);
      Hole b = a + chance.hole(i % 20 == 0 ? 150 : 5);
      if (a == b) b = a + Hole{0, 4};
      const int number = (i * 7919) % 400 * 3;
      all.push_back({number, {a, b}});
      index.add({a, b}, number);
    }
    std::sort(all.begin(), all.end());
  }

  template <class Wanted>
  std::vector<int> naive(Wanted wanted) const {
    std::vector<int> numbers;
    for (const auto& [number, stitch] : all)
      if (wanted(stitch)) numbers.push_back(number);
    return numbers;
  }
};

}  // namespace

TEST_CASE("the index finds by hole, by segment and by box what looking at every stitch finds") {
  for (const std::uint32_t seed : {1u, 2u, 3u}) {
    const Sample sample(seed);
    CHECK(sample.index.size() == 400);
    Chance chance(seed + 100);
    std::size_t found = 0;
    for (int i = 0; i < 300; ++i) {
      const Hole hole = i % 2 ? sample.all[i].second.b : chance.hole(60);
      const auto at = sample.index.at(hole);
      CHECK(at == sample.naive([&](Stitch s) { return s.a == hole || s.b == hole; }));
      const Stitch segment = chance.stitch(i % 3 == 0 ? 200 : 70);
      const auto meeting = sample.index.meeting(segment);
      CHECK(meeting == sample.naive([&](Stitch s) { return cloth::meet_inside(s, segment); }));
      const Hole corner = chance.hole(70);
      const Box box{corner.x, corner.y, corner.x + chance.between(0, i % 5 ? 20 : 3000), corner.y + chance.between(0, i % 5 ? 20 : 3000)};
      const auto in = sample.index.in(box);
      CHECK(in == sample.naive([&](Stitch s) { return cloth::touches(s, box); }));
      found += at.size() + meeting.size() + in.size();
    }
    CHECK(found > 3000);
  }
}

TEST_CASE("upright, level, slanted and reversed stitches across tiles are found at every hole they pass") {
  for (const Hole way : {Hole{0, 1}, Hole{1, 0}, Hole{1, 1}, Hole{1, -1}, Hole{-1, 0}, Hole{2, -1}, Hole{-1, -2}, Hole{5, 3}}) {
    for (const Hole start : {Hole{0, 0}, Hole{-16, 16}, Hole{-17, 15}, Hole{31, -33}}) {
      Index index;
      index.add({start, start + 40 * way}, 5);
      for (int i = 0; i <= 40; ++i) {
        const Hole h = start + i * way;
        CHECK(index.in({h.x, h.y, h.x, h.y}) == std::vector<int>{5});
      }
      CHECK(index.at(start + 40 * way) == std::vector<int>{5});
      CHECK(index.at(start + 1 * way).empty());
    }
  }
}

TEST_CASE("threads across the largest cloth cost no more than their length") {
  Index index;
  for (int i = 0; i < 200; ++i) index.add({{-100000, -100000 + i}, {100000, 100000 - i}}, i);  // a box round each would fill 150 million tiles
  CHECK(index.at({-100000, -99990}) == std::vector<int>{10});
  CHECK(index.meeting({{0, -1}, {0, 1}}).size() == 200);
  CHECK(index.in({-100000, -100000, 100000, 100000}).size() == 200);
  CHECK(index.in({50000, -100000, 100000, -50000}).empty());
}

TEST_CASE("an empty index finds nothing") {
  const Index index;
  CHECK(index.at({0, 0}).empty());
  CHECK(index.in({-5, -5, 5, 5}).empty());
  CHECK(index.meeting({{0, 0}, {4, 0}}).empty());
}
