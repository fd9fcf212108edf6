// Stitches that meet, held against every pair asked one by one (cloth::meet_inside).
#include "stitch/crossings.h"

#include <doctest/doctest.h>

#include <chrono>
#include <vector>

#include "stitch/line.h"
#include "turning.h"

namespace {

std::optional<std::pair<int, int>> by_pairs(const std::vector<cloth::Stitch>& stitches) {
  for (std::size_t i = 0; i < stitches.size(); ++i)
    for (std::size_t j = 0; j < stitches.size(); ++j)
      if (i != j && cloth::meet_inside(stitches[i], stitches[j])) return std::pair{static_cast<int>(i), static_cast<int>(j)};
  return std::nullopt;
}

cloth::Stitch random_stitch(int room) {
  const cloth::Hole at{*rc::gen::inRange(0, room), *rc::gen::inRange(0, room)};
  return {at, at + 2 * cloth::step(*rc::gen::elementOf(cloth::all_ways))};
}

}  // namespace

TEST_CASE("two stitches over two threads, in every place to one another") {
  for (const cloth::Way one : cloth::all_ways)
    for (const cloth::Way other : cloth::all_ways)
      for (int x = -5; x <= 5; ++x)
        for (int y = -5; y <= 5; ++y) {
          const std::vector<cloth::Stitch> two{{{0, 0}, 2 * cloth::step(one)}, {{x, y}, cloth::Hole{x, y} + 2 * cloth::step(other)}};
          CHECK(stitch::first_meeting(two) == by_pairs(two));
        }
}

TEST_CASE("the first meeting among many stitches is the one that asking pair by pair finds") {
  CHECK(turning::always("first meeting", [] {
    std::vector<cloth::Stitch> stitches;
    const int count = *rc::gen::inRange(0, 30), room = *rc::gen::inRange(1, 60);
    for (int i = 0; i < count; ++i) stitches.push_back(random_stitch(room));
    RC_ASSERT(stitch::first_meeting(stitches) == by_pairs(stitches));
  }));
}

TEST_CASE("the first two stitches that begin in one hole are those that asking pair by pair finds") {
  CHECK(turning::always("first shared start", [] {
    std::vector<cloth::Stitch> stitches;
    const int count = *rc::gen::inRange(0, 30), room = *rc::gen::inRange(1, 30);
    for (int i = 0; i < count; ++i) stitches.push_back(random_stitch(room));
    std::optional<std::pair<int, int>> first;
    for (int i = 0; i < count && !first; ++i)
      for (int j = i + 1; j < count && !first; ++j)
        if (stitches[static_cast<std::size_t>(i)].a == stitches[static_cast<std::size_t>(j)].a) first = std::pair{i, j};
    RC_ASSERT(stitch::first_shared_start(stitches) == first);
  }));
}

TEST_CASE("a hundred thousand stitches on top of one another") {
  const std::vector<cloth::Stitch> heap(100000, {{0, 0}, {2, 2}});
  const auto begun = std::chrono::steady_clock::now();
  CHECK(stitch::first_meeting(heap) == std::pair{0, 1});
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(5));
}
