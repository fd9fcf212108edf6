// Close-ups: every different place of a lesson once. Numbers of steps back a round are those of the laws worked out by hand (common
// practice, no source); likeness of corners is held against a second, slow comparison.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "guide/close_up_checks.h"

using namespace close_up_checks;
using namespace worked_course;
using guide::CloseUp;
using guide::Shows;

namespace {

const std::string octagon = "E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34";

}  // namespace

TEST_CASE("octagon: the start, both kinds of corner, the join") {
  Whole whole = plan(cable(octagon), 1);
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
  Whole whole = plan(cable(octagon, 3), 1);
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
  Whole at_once = plan(cable(octagon, 3), 1);
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

TEST_CASE("same points, worked otherwise: not alike") {
  const auto shown = [](bool backward, int run) {
    course::Course course;
    course.parts.emplace_back();
    course.parts[0].work.passes.push_back({{}, stitch::Order::turn_about, false});
    guide::PlacedTrail trail;
    for (int k = 0; k < 8; ++k) trail.trail.stitches.push_back({{2 * k, 0}, {2 * k + 1, 0}, false, k % 2, k / 2, 0, false});
    trail.trail.stitches[3].backward = backward;
    trail.trail.stitches[4].run = run;
    return std::pair(course, trail);
  };
  const auto like_first = [&](bool backward, int run) {
    auto [course, first] = shown(false, 0);
    auto second = shown(backward, run).second;
    first.sections = {{1, 0, 0, 7}};
    second.sections = {{2, 0, 0, 7}};
    const std::vector<guide::PlacedTrail> trails{first, second};
    const auto earlier = guide::close_ups(course, trails, 1, {});
    return guide::close_ups(course, trails, 2, earlier).at(0).like;
  };
  CHECK(like_first(false, 0) == 0);
  CHECK(like_first(true, 0) == -1);
  CHECK(like_first(false, 1) == -1);
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
  Whole whole = plan(cable(octagon), 1);
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
  Whole whole = plan(cable(octagon), 1);
  const naive::Corner corner = naive::corners(whole, 0)[3];
  whole.work(0, 1, 0, corner.turn - 1);
  whole.work(0, 1, corner.turn);
  const auto close_ups = whole.close_ups(1);
  CHECK(check(whole, close_ups, 1) == "");
  CHECK(list(close_ups) == "A start 1, B corner 4, C step back 4, D start 1, E join 1");
}

TEST_CASE("a start close before a corner goes round it") {
  Whole whole = plan(cable(octagon), 1);
  const int turn = naive::corners(whole, 0)[0].turn;
  whole.work(0, 1, 0, turn - 3);
  whole.work(0, 2, turn - 2);
  const auto close_ups = whole.close_ups(2);
  CHECK(check(whole, close_ups, 2) == "");
  const auto start = std::find_if(close_ups.begin(), close_ups.end(), [](const CloseUp& c) { return c.lesson == 2; });
  CHECK(start->first == turn - 2);
  CHECK(start->last >= turn + 2);
}
