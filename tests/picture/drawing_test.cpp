// Pieces of a picture by themselves: numbers of holes, thread on the back, the view, rulers, columns of text.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "list/bounds.h"
#include "picture/back.h"
#include "picture/column.h"
#include "picture/grid.h"
#include "picture/numbering.h"
#include "picture/ruler.h"

namespace {

class PlainType : public list::Measure {
 public:
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override {
    const double em = style.size_pt * list::mm_per_pt;
    return {0.5 * em * static_cast<double>(text.size()), 0.97 * em, 0.24 * em, true};
  }
};

trail::Worked worked(cloth::Hole up, cloth::Hole down, int run = 0) { return {up, down, false, run, 0, 0, false}; }

/// Common practice, no source: the straight start of a cable, 1 (0,0) 2 (2,0) 3 (0,2) 4 (2,2) 5 = 2, 6 (4,0), 7 = 4.
trail::Trail straight_cable() {
  trail::Trail t;
  t.stitches = {worked({0, 0}, {2, 0}), worked({0, 2}, {2, 2}, 1), worked({2, 0}, {4, 0}), worked({2, 2}, {4, 2}, 1)};
  t.ends = {0};
  return t;
}

const picture::HoleNumbers* at(const std::vector<picture::HoleNumbers>& holes, cloth::Hole hole) {
  const auto found = std::find_if(holes.begin(), holes.end(), [&](const auto& h) { return h.hole == hole; });
  return found == holes.end() ? nullptr : &*found;
}

}  // namespace

TEST_CASE("odd numbers up, even numbers down (common practice), two at a hole read as two") {
  const auto holes = picture::numbers_of(straight_cable(), 0, 3);
  REQUIRE(at(holes, {2, 0}));
  CHECK(at(holes, {2, 0})->text() == "2, 5");
  CHECK(at(holes, {2, 0})->use() == picture::HoleUse::both);
  CHECK(at(holes, {2, 2})->text() == "4, 7");
  CHECK(at(holes, {0, 0})->use() == picture::HoleUse::up);
  CHECK(at(holes, {4, 0})->use() == picture::HoleUse::down);
  CHECK(picture::numbers_of(straight_cable(), 2, 3).front().numbers == std::vector<int>{1});  // from 1 in each close-up
}

TEST_CASE("a hole used twice the same way has a mark of its own") {
  trail::Trail t;
  t.stitches = {worked({0, 0}, {4, 0}), worked({8, 0}, {4, 0}), worked({4, 8}, {0, 8}), worked({4, 8}, {8, 8})};
  const auto holes = picture::numbers_of(t, 0, 3);
  CHECK(at(holes, {4, 0})->use() == picture::HoleUse::twice_down);
  CHECK(at(holes, {4, 8})->use() == picture::HoleUse::twice_up);
}

TEST_CASE("thread on the back: none before the first stitch and before a new thread, over its way where it has one") {
  trail::Trail t = straight_cable();
  t.ends = {0, 2};
  t.under = {{3, {{7, 7}}}};
  CHECK(picture::back_before(t, 0).empty());
  CHECK(picture::back_before(t, 1) == std::vector<cloth::Hole>{{2, 0}, {0, 2}});
  CHECK(picture::back_before(t, 2).empty());
  CHECK(picture::back_before(t, 3) == std::vector<cloth::Hole>{{4, 0}, {7, 7}, {2, 2}});
}

TEST_CASE("thread that would lie under a stitch, or run through a mark, is bowed out beside it") {
  const picture::View view{{0, 0, 10, 10}, 4, false};
  const auto straight = picture::back_line({{2, 2}, {6, 2}}, view, {});
  CHECK(straight.size() == 2);
  for (const picture::BackGround& ground :
       {picture::BackGround{{{{2, 2}, {6, 2}}}, {}}, picture::BackGround{{{{4, 2}, {8, 2}}}, {}}, picture::BackGround{{}, {{4, 2}}}}) {
    const auto bowed = picture::back_line({{2, 2}, {6, 2}}, view, ground);
    REQUIRE(bowed.size() > 2);
    const picture::Point top = bowed[bowed.size() / 2];
    CHECK(std::abs(top.y - view.at({4, 2}).y) > 0.5 * view.scale);
  }
  const auto crossing = picture::back_line({{2, 2}, {6, 2}}, view, {{{{4, 0}, {4, 4}}}, {}});
  CHECK(crossing.size() == 2);  // a stitch across hides only a point of it
}

TEST_CASE("a bow swings to the free side") {
  const picture::View view{{0, 0, 10, 10}, 4, false};
  const picture::BackGround ground{{{{2, 4}, {6, 4}}, {{2, 3}, {6, 3}}}, {}};
  const auto bowed = picture::back_line({{2, 4}, {6, 4}}, view, ground);
  CHECK(bowed[bowed.size() / 2].y > view.at({4, 4}).y);
}

TEST_CASE("for the left hand the picture is the mirror image, and nothing else changes") {
  const picture::View right{{3, 5, 13, 12}, 4, false}, left{{3, 5, 13, 12}, 4, true};
  for (int x = 3; x <= 13; ++x) {
    CHECK(right.at({x, 7}).x == doctest::Approx(left.width() - left.at({x, 7}).x));
    CHECK(right.at({x, 7}).y == left.at({x, 7}).y);
  }
}

TEST_CASE("a grid line for each thread runs between the holes; a line for each row of holes runs through them") {
  const picture::View view{{0, 0, 8, 8}, 4, false};
  for (const course::Line convention : {course::Line::thread, course::Line::hole}) {
    list::List list;
    picture::draw_grid(list, view, convention, {0, 0});
    int heavy = 0;
    for (const list::Item& item : list.items) {
      const auto& line = std::get<list::Stroke>(item.what);
      const bool upright = line.points[0].x == line.points[1].x;
      const double at = (upright ? line.points[0].x : line.points[0].y) / view.scale - 0.5;  // in threads: holes are whole numbers
      CHECK(at - std::floor(at) == doctest::Approx(convention == course::Line::thread ? 0.5 : 0.0));
      heavy += line.width > 0.2 ? 1 : 0;
    }
    CHECK(heavy == (convention == course::Line::thread ? 4 : 6));  // every fourth of 8 threads, or of 9 rows of holes, both ways
  }
}

TEST_CASE("the ruler has a tick for each hole and a number for each thread, and stands clear of stitches") {
  const PlainType type;
  const picture::View view{{0, 0, 20, 20}, 4, false};
  picture::RulerGround ground;
  ground.stitched.push_back({view.at({5, 10}), view.at({5, 14}), 1});  // on the way that is counted
  const auto ruler = picture::make_ruler({5, 16}, {{cloth::Way::N, 8}}, view, ground, {7.5, list::Weight::semibold}, type);
  CHECK(ruler.clear);
  REQUIRE(ruler.numbers.size() == 8);
  for (int j = 0; j < 8; ++j) {
    CHECK(ruler.numbers[static_cast<std::size_t>(j)].text == std::to_string(j + 1));
    const double middle = ruler.numbers[static_cast<std::size_t>(j)].box.y + ruler.numbers[static_cast<std::size_t>(j)].box.h / 2;
    CHECK(middle == doctest::Approx(view.at(0, 15.5 - j).y));  // on the thread between two holes
  }
  int ticks = 0;
  for (const picture::Capsule& line : ruler.lines) {
    for (const picture::Capsule& s : ground.stitched) CHECK_FALSE(picture::meet(line, s));
    if (line.a.y == line.b.y && std::abs(line.a.x - line.b.x) < 2) ++ticks;
  }
  CHECK(ticks == 9);
}

TEST_CASE("a count of two legs turns at its hole, and its numbers do not lie on one another") {
  const PlainType type;
  for (const cloth::Way first : {cloth::Way::N, cloth::Way::S})
    for (const cloth::Way second : {cloth::Way::E, cloth::Way::W}) {
      const picture::View view{{0, 0, 40, 40}, 3.8, false};
      const auto ruler = picture::make_ruler({20, 20}, {{first, 12}, {second, 7}}, view, {}, {7.5, list::Weight::semibold}, type);
      CHECK(ruler.clear);
      CHECK(ruler.turns.size() == 1);
      for (std::size_t i = 0; i < ruler.numbers.size(); ++i)
        for (std::size_t j = i + 1; j < ruler.numbers.size(); ++j) CHECK_FALSE(list::overlap(ruler.numbers[i].box, ruler.numbers[j].box));
    }
}

TEST_CASE("numbers of a ruler that is too fine stand further apart, the last one always") {
  const PlainType type;
  const picture::View view{{0, 0, 60, 60}, 1.5, false};
  const auto ruler = picture::make_ruler({10, 50}, {{cloth::Way::N, 37}}, view, {}, {7.5, list::Weight::semibold}, type);
  CHECK(ruler.numbers.back().text == "37");
  CHECK(ruler.numbers.size() < 20);
}

TEST_CASE("lines of text are no wider than their column; numbers stay with what they count") {
  const PlainType type;
  const list::TypeStyle style{12, list::Weight::regular};
  const std::string text =
      "From the upper end of the topmost block count 10 threads straight up. The needle comes up there: 1. "
      "Averyveryverylongwordthatfitsnowhere ends it.";
  for (const double width : {30.0, 45.0, 60.0, 90.0}) {
    std::string joined;
    for (const std::string& line : picture::wrapped(text, style, width, type)) {
      CHECK(type.measure(line, style).width <= width + 1e-9);
      CHECK(line != "1.");
      CHECK_FALSE(line.ends_with(" 10"));
      joined += line;
    }
    std::string wanted = text;
    std::erase(wanted, ' ');
    std::erase(joined, ' ');
    CHECK(joined == wanted);
  }
  CHECK(picture::wrapped("one\ntwo", style, 90, type).size() == 2);
}
