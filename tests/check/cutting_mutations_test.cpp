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

/// A closed staircase diamond of n blocks a side, n even, laid block by block: every one is a part of its own, so that each can be made
/// wrong.
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

/// Is there a stop of that rule with both its places, one of them at the block or at a neighbour of it, or straight across from it?
bool stopped_at(const std::vector<check::Snag>& snags, const std::string& rule, const Block& block) {
  const cloth::Box box = cloth::Box{block.at.x, block.at.y, block.at.x + 4, block.at.y + 4}.widened(4);
  return std::any_of(snags.begin(), snags.end(), [&](const check::Snag& s) {
    if (s.rule != rule || s.severity != check::Severity::stop || !s.at || !s.also_at) return false;
    return box.holds(*s.at) || box.holds(*s.also_at);
  });
}

std::vector<Block> moved(std::vector<Block> blocks, std::size_t i, cloth::Hole by) {
  blocks[i].at = blocks[i].at + by;
  return blocks;
}

}  // namespace

TEST_CASE("each block of a good ring moved by one thread to any side: stopped there, by the rule that says so") {
  for (const int n : {2, 4, 6}) {
    const auto good = diamond(n);
    REQUIRE(told(snags_of(course_with(good))) == "");
    for (std::size_t i = 0; i < good.size(); ++i)
      for (const cloth::Hole by : {cloth::Hole{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        const auto snags = snags_of(course_with(moved(good, i, by)));
        CAPTURE(n);
        CAPTURE(i);
        CAPTURE(told(snags));
        // Square to its stitches it no longer faces its partner; along them it leaves a neighbour or pushes into one's threads.
        const bool square = good[i].upright ? by.x != 0 : by.y != 0;
        CHECK((stopped_at(snags, "cut-partner-aside", good[i]) || (!square && stopped_at(snags, "cut-ring-open", good[i]))));
      }
  }
}

TEST_CASE("each block left out: both its neighbours are told, and its partner") {
  for (const int n : {4, 6}) {
    const auto good = diamond(n);
    for (std::size_t i = 0; i < good.size(); ++i) {
      auto bad = good;
      bad.erase(bad.begin() + static_cast<std::ptrdiff_t>(i));
      const auto snags = snags_of(course_with(bad));
      CAPTURE(told(snags));
      CHECK(stopped_at(snags, "cut-ring-open", good[i]));
      CHECK(stopped_at(snags, "cut-no-partner", good[i]));
    }
  }
}

TEST_CASE("each block turned: the cut would run along its side") {
  for (const int n : {4, 6}) {
    const auto good = diamond(n);
    for (std::size_t i = 0; i < good.size(); ++i) {
      auto bad = good;
      bad[i].upright = !bad[i].upright;
      const auto snags = snags_of(course_with(bad));
      CAPTURE(told(snags));
      CHECK(stopped_at(snags, "cut-along-side", good[i]));
    }
  }
}

TEST_CASE("a cable across the ring, along it or on a slant: stopped at the cable") {
  for (const auto& [start, path] :
       {std::pair<std::string, std::string>{"[6, 2]", "E 10"}, {"[12, -4]", "S 8"}, {"[8, 0]", "SE 6"}, {"[-8, 2]", "E 44"}}) {
    const auto snags = snags_of(course_with(diamond(4), part_text("line", "cable", start, "path = \"" + path + "\"\nrows = 2")));
    CAPTURE(told(snags));
    CHECK(std::any_of(snags.begin(), snags.end(), [](const check::Snag& s) {
      return s.rule == "cut-under-stitches" && s.severity == check::Severity::stop && s.words.at("block") == "line" && s.at && s.also_at;
    }));
  }
}
