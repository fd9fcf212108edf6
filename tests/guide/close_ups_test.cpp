// Close-ups: every different place of a lesson once. Numbers of steps back a round are those of trade.md's laws worked out by hand (common
// practice, no source); likeness of corners is held against a second, slow comparison.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "guide/close_up_checks.h"

using namespace close_up_checks;
using namespace worked_course;
using guide::CloseUp;
using guide::Shows;
using hand_made::Chance;

namespace {

const std::string octagon = "E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34";

/// Does the trail itself find the same corners?
bool turnings_agree(const Whole& whole, int trail) {
  const auto corners = naive::corners(whole, trail);
  const auto turnings = trail::turnings(whole.trails[trail].trail);
  return std::equal(corners.begin(), corners.end(), turnings.begin(), turnings.end(),
                    [](const auto& c, const auto& t) { return t.before < c.turn && c.turn <= t.after; });
}

}  // namespace

TEST_CASE("octagon: the start, both kinds of corner, the join") {
  Whole whole = plan(cable(octagon), 2);
  whole.work(0, 1);
  const auto close_ups = whole.close_ups(1);
  CHECK(check(whole, close_ups, 1) == "");
  CHECK(list(close_ups) == "A start 1, B corner 4, C step back 4, D join 1");
  const CloseUp &plain = close_ups[1], &back = close_ups[2];
  CHECK(!plain.from_slant);
  CHECK(plain.to_slant);
  CHECK(plain.turn_eighths == 1);
  CHECK(plain.row_over == -1);
  CHECK(plain.over_before + plain.over_after == 0);
  CHECK(back.from_slant);
  CHECK(!back.to_slant);
  CHECK(back.turn_eighths == 1);
  CHECK(back.row_over == 0);
  CHECK(back.over_before + back.over_after == 1);
  CHECK(back.steps_back.size() == 1);
  CHECK(close_ups[3].wraps);
}

TEST_CASE("square and diamond: one kind of corner, a step back at each") {
  for (const char* path : {"E 40, S 40, W 40, N 40", "SE 40, SW 40, NW 40, NE 40"}) {
    Whole whole = plan(cable(path));
    whole.work(0, 1);
    const auto close_ups = whole.close_ups(1);
    CAPTURE(path);
    CHECK(check(whole, close_ups, 1) == "");
    CHECK(list(close_ups) == "A start 1, B step back 4, C join 1");
    CHECK(close_ups[1].turn_eighths == 2);
    CHECK(close_ups[1].row_over == 0);
    CHECK(close_ups[1].from_slant == close_ups[1].to_slant);
  }
}

TEST_CASE("a straight corner of a square gives the outer row one stitch over before it and one after (geometry)") {
  Whole whole = plan(cable("E 40, S 40, W 40, N 40"));
  whole.work(0, 1);
  const auto close_ups = whole.close_ups(1);
  CHECK(close_ups[1].over_before == 1);
  CHECK(close_ups[1].over_after == 1);
}

TEST_CASE("notched frame: its outer corners are alike, those of the notch are others") {
  Whole whole = plan(cable("E 24, S 16, E 24, N 16, E 24, S 60, W 72, N 60"));
  whole.work(0, 1);
  const auto close_ups = whole.close_ups(1);
  CHECK(check(whole, close_ups, 1) == "");
  std::map<std::pair<int, int>, int> corners;  // turn and row over
  int windows = 0;
  for (const CloseUp& c : close_ups)
    if (of_corner(c)) corners[{c.turn_eighths, c.row_over}] += static_cast<int>(c.stands_for.size()), ++windows;
  CHECK(windows == 2);
  CHECK(corners[{2, 0}] == 6);
  CHECK(corners[{-2, 1}] == 2);
}

TEST_CASE("what is mirrored is not alike: slants that turn to the left and to the right") {
  Whole whole = plan(cable("E 24, SE 20, E 24, NE 20, E 24"));
  whole.work(0, 1);
  const auto close_ups = whole.close_ups(1);
  CHECK(check(whole, close_ups, 1) == "");
  int windows = 0;
  for (const CloseUp& c : close_ups) windows += of_corner(c) ? 1 : 0;
  CHECK(windows == 4);
}

TEST_CASE("second pass: like the first one's windows where it is the same") {
  Whole whole = plan(cable(octagon, 3), 2);
  whole.work(0, 1);
  whole.work(1, 2);
  const auto close_ups = whole.close_ups(2);
  CHECK(check(whole, close_ups, 1) == "");
  CHECK(check(whole, close_ups, 2) == "");
  CHECK(list(close_ups, 2) == "A start 1, B corner 4, C step back 4, D join 1");
  for (const CloseUp& c : close_ups) {
    if (c.lesson == 1) CHECK(c.like == -1);
    if (c.lesson == 2 && of_corner(c)) {
      REQUIRE(c.like >= 0);
      CHECK(close_ups[c.like].lesson == 1);
      CHECK(close_ups[c.like].shows == c.shows);
    }
  }
  Whole at_once = plan(cable(octagon, 3), 2);
  at_once.work(0, 1);
  at_once.work(1, 1);
  const auto both = at_once.close_ups(1);
  CHECK(check(at_once, both, 1) == "");
  CHECK(list(both) == "A start 1, B corner 8, C step back 8, D join 1, E start 1, F join 1");
}

TEST_CASE("second pass: a corner that differs from the first pass's says so") {
  // A slant of 10 threads has three level pairs on the first pass and two on the second.
  Whole whole = plan(cable("E 30, SE 6, S 30, SW 20, W 30, NW 20, N 30, NE 6", 3));
  whole.work(0, 1);
  whole.work(1, 2);
  const auto close_ups = whole.close_ups(2);
  CHECK(check(whole, close_ups, 2) == "");
  int differ = 0;
  for (const CloseUp& c : close_ups) {
    CHECK((c.shows != Shows::second_pass || c.lesson == 2));
    differ += c.shows == Shows::second_pass ? 1 : 0;
    if (c.shows == Shows::second_pass) CHECK(c.like == -1);
  }
  CHECK(differ > 0);
}

TEST_CASE("the cloth turned: the same windows") {
  for (const std::string& path :
       {octagon, std::string("E 24, S 16, E 24, N 16, E 24, S 60, W 72, N 60"), std::string("E 24, SE 20, E 24, NE 20, E 24")}) {
    std::string of_first;
    std::string turned_path = path;
    for (int turns = 0; turns < 4; ++turns, turned_path = turned(turned_path)) {
      Whole whole = plan(cable(turned_path));
      whole.work(0, 1);
      const std::string now = list(whole.close_ups(1));
      if (turns == 0) of_first = now;
      CAPTURE(turned_path);
      CHECK(now == of_first);
    }
  }
}

TEST_CASE("ring of blocks: the start with both kinds of step, the bend, the join") {
  for (const int begin : {3, 5, 12}) {
    Whole whole = plan(blocks("NE 8, SE 7, SW 7, NW 6"), begin);
    whole.work(0, 1);
    const auto close_ups = whole.close_ups(1);
    CAPTURE(begin);
    CHECK(trouble(whole, close_ups, 1) == "");
    CHECK(list(close_ups) == "A start 1, B corner 4, C join 1");
    CHECK(close_ups[0].first == 0);
    CHECK(close_ups[0].last == 10);  // two blocks of five and the first stitch of the third
    CHECK(close_ups[1].turn_eighths == 2);
    CHECK(close_ups[1].from_slant);
    CHECK(close_ups[1].last - close_ups[1].first + 1 == 9);
    CHECK(close_ups[2].last - close_ups[2].first + 1 == 5);
  }
}

TEST_CASE("a ring of blocks begun at a bend: that one is seen at the start") {
  Whole whole = plan(blocks("NE 8, SE 7, SW 7, NW 6"), 7);
  whole.work(0, 1);
  CHECK(list(whole.close_ups(1)) == "A start 1, B corner 3, C join 1");
}

TEST_CASE("staircases nobody drew: every bend is in exactly one window, like ones together") {
  hand_made::fix_seed();
  CHECK(rc::check("bends", [] {
    Chance chance(*rc::gen::arbitrary<unsigned>());
    std::string path = "NE " + std::to_string(3 + chance.below(3));
    const int flights = 2 + chance.below(5);
    for (int i = 1; i < flights; ++i) path += (i % 2 ? ", SE " : ", NE ") + std::to_string(1 + chance.below(4));
    Whole whole = plan(blocks(path, chance.once_in(2) ? "across" : "upright"));
    whole.work(0, 1);
    const auto close_ups = whole.close_ups(1);
    RC_ASSERT(trouble(whole, close_ups, 1) == "");
    const std::vector<naive::Corner> bends = naive::bends(whole, 0);
    std::map<cloth::Hole, int> window;
    for (std::size_t i = 0; i < close_ups.size(); ++i)
      if (of_corner(close_ups[i]) && close_ups[i].turn_eighths != 0)
        for (const cloth::Hole h : close_ups[i].stands_for) RC_ASSERT(window.emplace(h, static_cast<int>(i)).second);
    RC_ASSERT(window.size() == bends.size());
    for (const auto& a : bends)
      if (!window.contains(a.hole)) RC_FAIL(path + " has a bend that no window stands for");
    for (const auto& a : bends)
      for (const auto& b : bends) RC_ASSERT((window.at(a.hole) == window.at(b.hole)) == naive::alike(a, b));
  }));
}

TEST_CASE("rows of blocks, joined and apart: the other kind of step has a window") {
  Whole whole = plan(blocks("E 5, E 4 apart", "upright"));
  whole.work(0, 1);
  const auto close_ups = whole.close_ups(1);
  CHECK(trouble(whole, close_ups, 1) == "");
  CHECK(list(close_ups) == "A start 1, B corner 4, C end 1");
  Whole alike = plan(blocks("E 9", "upright"));
  alike.work(0, 1);
  CHECK(list(alike.close_ups(1)) == "A start 1, B end 1");
}

TEST_CASE("an open line ends in a window unless its end is seen") {
  Whole line = plan(cable("E 40"));
  line.work(0, 1);
  CHECK(list(line.close_ups(1)) == "A start 1, B end 1");
  Whole brief = plan(cable("E 8"));
  brief.work(0, 1);
  CHECK(list(brief.close_ups(1)) == "A start 1");
}

TEST_CASE("a round in two lessons: each page stands alone, the second says where it was seen") {
  Whole whole = plan(cable(octagon), 2);
  whole.work(0, 1, 0, 89);
  whole.work(0, 2, 90);
  const auto close_ups = whole.close_ups(2);
  CHECK(check(whole, close_ups, 1) == "");
  CHECK(check(whole, close_ups, 2) == "");
  int corners = 0;
  for (const CloseUp& c : close_ups) {
    if (of_corner(c)) corners += static_cast<int>(c.stands_for.size());
    if (of_corner(c) && c.lesson == 2) CHECK(c.like >= 0);
    if (c.lesson == 1) CHECK(c.shows != Shows::join);
  }
  CHECK(corners == 8);
  CHECK(close_ups.back().shows == Shows::join);
}

TEST_CASE("two sections of a trail in one lesson: a corner between them is whole") {
  Whole whole = plan(cable(octagon), 2);
  const naive::Corner corner = naive::corners(whole, 0)[3];
  whole.work(0, 1, 0, corner.turn - 1);
  whole.work(0, 1, corner.turn);
  const auto close_ups = whole.close_ups(1);
  CHECK(check(whole, close_ups, 1) == "");
  CHECK(list(close_ups) == "A start 1, B corner 4, C step back 4, D start 1, E join 1");
}

TEST_CASE("a start close before a corner goes round it") {
  Whole whole = plan(cable(octagon), 2);
  const int turn = naive::corners(whole, 0)[0].turn;
  whole.work(0, 1, 0, turn - 3);
  whole.work(0, 2, turn - 2);
  const auto close_ups = whole.close_ups(2);
  CHECK(check(whole, close_ups, 2) == "");
  const auto start = std::find_if(close_ups.begin(), close_ups.end(), [](const CloseUp& c) { return c.lesson == 2; });
  CHECK(start->first == turn - 2);
  CHECK(start->last >= turn + 2);
}

TEST_CASE("rows along paths nobody drew, told into lessons at random") {
  hand_made::fix_seed();
  CHECK(rc::check("every corner is in exactly one window, like ones together", [] {
    Chance chance(*rc::gen::arbitrary<unsigned>());
    const std::string path = chance.once_in(2) ? outline_path(chance) : octagon_path(chance);
    Whole whole = plan(cable(path, 2 + chance.below(2)), chance.below(40));
    const int lessons = 3;
    for (std::size_t t = 0; t < whole.trails.size(); ++t) {
      const int n = whole.size(static_cast<int>(t));
      std::vector<int> cuts{0, chance.below(n), chance.below(n), n};
      std::sort(cuts.begin(), cuts.end());
      for (int i = 0; i < 3; ++i)
        if (cuts[i] < cuts[i + 1]) whole.work(static_cast<int>(t), 1 + std::min(2, i + static_cast<int>(t)), cuts[i], cuts[i + 1] - 1);
    }
    for (std::size_t t = 0; t < whole.trails.size(); ++t) RC_ASSERT(turnings_agree(whole, static_cast<int>(t)));
    const auto close_ups = whole.close_ups(lessons);
    for (int lesson = 1; lesson <= lessons; ++lesson) {
      const std::string wrong = check(whole, close_ups, lesson);
      if (!wrong.empty()) RC_FAIL(path + ": " + wrong);
    }
  }));
}
