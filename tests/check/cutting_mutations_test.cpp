// Good designs of cutwork with one thing made wrong: each is stopped, by the rule that names the fault, at the place of the fault.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "check/check.h"
#include "course_text.h"

namespace {

struct Block {
  cloth::Hole at;  ///< upper left hole
  bool upright = false;
};

/// A closed staircase diamond of n blocks a side, n even, laid block by block: every one is a part of its own, so that each can be made wrong.
std::vector<Block> diamond(int n) {
  std::vector<Block> blocks;
  cloth::Hole at{0, 0};
  bool upright = false;
  const auto flight = [&](int count, int dx, int dy) {
    for (int i = 0; i < count; ++i) {
      blocks.push_back({at, upright});
      at = at + cloth::Hole{4 * dx, 4 * dy};
      upright = !upright;
    }
  };
  flight(n - 1, 1, -1);
  flight(n - 1, 1, 1);
  flight(n - 1, -1, 1);
  flight(n - 1, -1, -1);
  return blocks;
}

std::string text_of_block(const Block& block, std::size_t i) {
  return part_text("b" + std::to_string(i), "blocks", "[" + std::to_string(block.at.x) + ", " + std::to_string(block.at.y) + "]",
                   std::string("first = \"") + (block.upright ? "upright" : "across") + "\"\npath = \"NE 1\"");
}

course::Course course_with(const std::vector<Block>& blocks, const std::string& more = "") {
  std::string text, names;
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    text += text_of_block(blocks[i], i);
    names += (names.empty() ? "\"b" : ", \"b") + std::to_string(i) + '"';
  }
  return course_of(text + more + "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [" + names + "]\n");
}

std::vector<check::Snag> snags_of(const course::Course& course) {
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  for (const auto& cut : plan->cuttings) {
    const auto snags = check::look(course, *plan);
    if (check::stops(snags)) CHECK(cut.cutting.cuts.empty());
  }
  return check::look(course, *plan);
}

std::string told(const std::vector<check::Snag>& snags) {
  std::string text;
  for (const auto& s : snags) {
    text += s.rule;
    if (s.at) text += " " + std::to_string(s.at->x) + "," + std::to_string(s.at->y);
    if (s.also_at) text += " " + std::to_string(s.also_at->x) + "," + std::to_string(s.also_at->y);
    text += "; ";
  }
  return text;
}

}  // namespace

TEST_CASE("explore") {
  const auto good = diamond(4);
  MESSAGE(told(snags_of(course_with(good))));
  for (std::size_t i = 0; i < good.size(); ++i) {
    for (const cloth::Hole by : {cloth::Hole{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      auto bad = good;
      bad[i].at = bad[i].at + by;
      MESSAGE("move " << i << " " << good[i].at.x << "," << good[i].at.y << (good[i].upright ? "u" : "a") << " by " << by.x << "," << by.y << ": " << told(snags_of(course_with(bad))));
    }
    auto bad = good;
    bad[i].upright = !bad[i].upright;
    MESSAGE("turn " << i << " " << told(snags_of(course_with(bad))));
    bad = good;
    bad.erase(bad.begin() + static_cast<std::ptrdiff_t>(i));
    MESSAGE("drop " << i << " " << told(snags_of(course_with(bad))));
  }
}
