// The room that items take, with a made-up type in which every byte is half as wide as the type is high.
#include "list/bounds.h"

#include <doctest/doctest.h>

#include "list/dashes.h"

namespace {

struct PlainType : list::Measure {
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override {
    return {.width = 0.5 * style.size_pt * static_cast<double>(text.size()), .ascent = style.size_pt, .descent = style.size_pt / 4};
  }
};

template <class T>
void check(const T& what, list::Rect expected) {
  const list::Rect got = list::bounds({list::Role::text, what}, PlainType{});
  CHECK(got.x == doctest::Approx(expected.x));
  CHECK(got.y == doctest::Approx(expected.y));
  CHECK(got.w == doctest::Approx(expected.w));
  CHECK(got.h == doctest::Approx(expected.h));
}

}  // namespace

TEST_CASE("bounds of lines and areas hold half the line's width on every side") {
  check(list::Stroke{.points = {{2, 8}, {6, 3}, {4, 9}}, .width = 1, .colour = {}}, {1.5, 2.5, 5, 7});
  check(list::Stroke{.points = {{2, 8}}, .width = 1, .colour = {}}, {1.5, 7.5, 1, 1});
  check(list::Fill{{{1, 1}, {5, 2}, {3, 7}}, {}}, {1, 1, 4, 6});
  check(list::Disc{{5, 5}, 2, {}, 0.5, {}}, {2.75, 2.75, 4.5, 4.5});
  check(list::Disc{{5, 5}, 2, {}, 0, {}}, {3, 3, 4, 4});
  check(list::Panel{{1, 2, 10, 20}, 1, true, {}, 0.4, {}}, {0.8, 1.8, 10.4, 20.4});
  check(list::ClipIn{{1, 2, 3, 4}, 0}, {1, 2, 3, 4});
}

TEST_CASE("bounds of what leaves no mark are empty") {
  check(list::Stroke{}, {});
  check(list::Stroke{.points = {{2, 8}, {3, 8}}, .width = 0, .colour = {}}, {});
  check(list::Fill{}, {});
  check(list::Panel{{1, 2, 10, 20}, 1, false, {}, 0, {}}, {});
  check(list::Text{}, {});
  check(list::ClipOut{}, {});
}

TEST_CASE("bounds of type: from its base line, by its alignment") {
  check(list::Text{{10, 20}, "abcd", {8}, list::Align::left, {}}, {10, 12, 16, 10});
  check(list::Text{{10, 20}, "abcd", {8}, list::Align::centre, {}}, {2, 12, 16, 10});
  check(list::Text{{10, 20}, "abcd", {8}, list::Align::right, {}}, {-6, 12, 16, 10});
}

TEST_CASE("rectangles joined, overlapping, containing") {
  const list::Rect a{0, 0, 4, 4}, b{4, 1, 2, 5};
  CHECK_FALSE(list::overlap(a, b));  // they touch
  CHECK(list::overlap(a, {3.9, 1, 2, 5}));
  CHECK_FALSE(list::overlap(a, {1, 4, 2, 2}));
  CHECK(list::contains(a, {4, 4}));
  CHECK_FALSE(list::contains(a, {4.1, 2}));
  const list::Rect both = list::join(a, b);
  CHECK(both.x == 0);
  CHECK(both.y == 0);
  CHECK(both.w == 6);
  CHECK(both.h == 6);
  CHECK(list::join({}, b).x == 4);
  CHECK(list::join(b, {}).h == 5);
}

TEST_CASE("a broken line shows three widths and leaves two, with either cap") {
  const list::Dashes flat = list::dashes(0.5, list::Cap::flat), round = list::dashes(0.5, list::Cap::round);
  CHECK(flat.on == doctest::Approx(1.5));
  CHECK(flat.off == doctest::Approx(1.0));
  CHECK(round.on + 0.5 == doctest::Approx(flat.on));
  CHECK(round.off - 0.5 == doctest::Approx(flat.off));
}
