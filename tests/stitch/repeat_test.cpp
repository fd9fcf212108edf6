// Repeats, held against geometry worked out another way: rotations as rational arithmetic on doubled coordinates written out here, and the
// counts of a closed staircase diamond (20n - 20 stitches) put together from one flight turned four times.
#include "stitch/repeat.h"

#include <doctest/doctest.h>

#include <random>

#include "parts.h"

using namespace stitch;
using parts::blocks;
using parts::cable;
using parts::normal_set;
using parts::work;

namespace {

/// Clockwise on the chart (y down): what lay to the right lies below.
cloth::Hole quarter(cloth::Hole h, cloth::Hole c2) { return {(c2.x - (2 * h.y - c2.y)) / 2, (c2.y + (2 * h.x - c2.x)) / 2}; }
cloth::Hole left_right(cloth::Hole h, cloth::Hole c2) { return {c2.x - h.x, h.y}; }
cloth::Hole top_bottom(cloth::Hole h, cloth::Hole c2) { return {h.x, c2.y - h.y}; }

template <class Move>
parts::StitchSet moved(const parts::StitchSet& stitches, Move move) {
  parts::StitchSet out;
  for (const cloth::Stitch& s : stitches) out.insert(cloth::Stitch{move(s.a), move(s.b)}.normal());
  return out;
}

parts::StitchSet together(parts::StitchSet a, const parts::StitchSet& b) {
  a.insert(b.begin(), b.end());
  return a;
}

std::vector<cloth::Stitch> worked(const Work& work) {
  std::vector<cloth::Stitch> all;
  for (const Pass& pass : work.passes)
    for (const Run& run : pass.runs)
      for (const cloth::Stitch& s : run.stitches) all.push_back(s.normal());
  return all;
}

void keeps_to_itself(const Work& made) {
  CHECK(normal_set(made.stitches).size() == made.stitches.size());
  CHECK(made.passes.size() % static_cast<std::size_t>(made.places) == 0);
  for (std::size_t i = 0; i < made.passes.size(); ++i) {
    CHECK(made.passes[i].place == static_cast<int>(i) / made.passes_a_place());
    if (made.passes[i].order == Order::turn_about) CHECK(made.passes[i].runs.size() == 2);
    for (const Run& run : made.passes[i].runs) {
      CHECK(!run.stitches.empty());
      CHECK(run.legs.size() == run.stitches.size());
    }
  }
  for (const Feature& feature : made.features)
    for (const cloth::Stitch& s : feature.stitches) CHECK(normal_set(made.stitches).count(s.normal()) == 1);
}

}  // namespace

TEST_CASE("a flight of n blocks turned four times is the closed diamond of 20n - 20 stitches, its apex blocks stitched once") {
  for (const int n : {4, 6, 8}) {
    // The flight's last block is the first one turned: about the middle of the diamond.
    const Work flight = work(blocks({0, 0}, "NE " + std::to_string(n), "across"));
    const Repeat repeat{4, "", {2 * (4 * (n - 1) + 2), 4}};
    const Work ring = repeated(flight, repeat);
    CAPTURE(n);
    CHECK(ring.places == 4);
    CHECK(ring.stitches.size() == static_cast<std::size_t>(20 * n - 20));
    CHECK(normal_set(ring.stitches) == normal_set(work(blocks({0, 0},
                                                              "NE " + std::to_string(n) + ", SE " + std::to_string(n - 1) + ", SW " +
                                                                  std::to_string(n - 1) + ", NW " + std::to_string(n - 2),
                                                              "across"))
                                                      .stitches));
    CHECK(worked(ring).size() == ring.stitches.size());
    CHECK(ring.features.size() == static_cast<std::size_t>(4 * n - 4));  // blocks
    CHECK(ring.doubts.empty());
    keeps_to_itself(ring);
  }
}

TEST_CASE("mirrors and half turns, half threads allowed") {
  const Work line = work(cable({10, 3}, "E 8, SE 6"));
  const auto own = normal_set(line.stitches);
  for (const cloth::Hole c2 : {cloth::Hole{0, 0}, cloth::Hole{1, 0}, cloth::Hole{-3, 5}}) {
    const auto x = moved(own, [&](cloth::Hole h) { return left_right(h, c2); });
    const auto y = moved(own, [&](cloth::Hole h) { return top_bottom(h, c2); });
    const auto half = moved(x, [&](cloth::Hole h) { return top_bottom(h, c2); });
    CHECK(normal_set(repeated(line, {1, "x", c2}).stitches) == together(own, x));
    CHECK(normal_set(repeated(line, {1, "y", c2}).stitches) == together(own, y));
    CHECK(normal_set(repeated(line, {2, "", c2}).stitches) == together(own, half));
    CHECK(normal_set(repeated(line, {1, "xy", c2}).stitches) == together(together(own, x), together(y, half)));
    CHECK(repeated(line, {2, "x", c2}).places == 4);
    CHECK(images_of({2, "xy", c2}).size() == 4);
    CHECK(images_of({4, "x", c2}).size() == 8);
  }
}

TEST_CASE("quarter turns fit a hole or the middle of four, nothing else") {
  CHECK(fits({4, "", {2, 4}}));
  CHECK(fits({4, "", {1, -3}}));
  CHECK(!fits({4, "", {1, 2}}));
  CHECK(fits({2, "xy", {1, 2}}));
}

TEST_CASE("a part that is its own image is one place") {
  const Work diamond = work(blocks({0, 0}, "NE 4, SE 3, SW 3, NW 2", "across"));
  const Work same = repeated(diamond, {4, "", {28, 4}});
  CHECK(same.places == 1);
  CHECK(same.stitches.size() == diamond.stitches.size());
  CHECK(same.features.size() == diamond.features.size());
  CHECK(same.passes.at(0).closed);
}

TEST_CASE("where images cross, it is told once") {
  const Work crossing = repeated(work(cable({-4, 1}, "E 20")), {4, "", {0, 0}});
  REQUIRE(crossing.doubts.size() == 1);
  CHECK(crossing.doubts[0].rule == "image-lies-over");
  CHECK(crossing.doubts[0].numbers.at("n") > 0);
}

TEST_CASE("random parts and middles: every image once and whole, every stitch worked as often as at one place or once where shared") {
  std::mt19937 random(7);
  const auto pick = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  for (int round = 0; round < 200; ++round) {
    const bool rows = pick(0, 1) == 1;
    const Work part =
        rows ? work(cable({pick(-6, 6), pick(-6, 6)}, "E " + std::to_string(2 * pick(2, 6)) + ", SE " + std::to_string(2 * pick(2, 6))))
             : work(blocks({4 * pick(-3, 3), 4 * pick(-3, 3)}, "NE " + std::to_string(pick(1, 4)) + ", SE " + std::to_string(pick(1, 3)),
                           "across"));
    const cloth::Hole c2 = cloth::Hole{4 * pick(-2, 2), 4 * pick(-2, 2)} + pick(0, 1) * cloth::Hole{1, 1};
    const Work made = repeated(part, {4, "", c2});
    auto all = normal_set(part.stitches), image = all;
    for (int q = 1; q < 4; ++q) {
      image = moved(image, [&](cloth::Hole h) { return quarter(h, c2); });
      all = together(all, image);
    }
    CHECK(normal_set(made.stitches) == all);
    CHECK(worked(made).size() == all.size());
    keeps_to_itself(made);
  }
}
