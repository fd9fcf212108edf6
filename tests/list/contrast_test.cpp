// Contrast against figures published for WCAG 2.2 and known pairs of greys.
#include "list/contrast.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

namespace {

constexpr list::Colour black{0, 0, 0}, white{255, 255, 255};

constexpr list::Colour grey(std::uint8_t level) { return {level, level, level}; }

}  // namespace

TEST_CASE("contrast on white: WCAG 2.2, contrast ratio") {
  CHECK(list::contrast(black, white) == doctest::Approx(21).epsilon(1e-9));
  CHECK(list::contrast(white, white) == doctest::Approx(1));
  CHECK(list::contrast(grey(0x76), white) == doctest::Approx(4.54).epsilon(0.001));
  CHECK(list::contrast(grey(0x77), white) == doctest::Approx(4.48).epsilon(0.001));
  CHECK(list::contrast(grey(0x94), white) == doctest::Approx(3.03).epsilon(0.002));
  CHECK(list::contrast(grey(0x95), white) == doctest::Approx(2.995).epsilon(0.0005));
  CHECK(list::contrast(grey(0x59), white) == doctest::Approx(7.00).epsilon(0.001));
  CHECK(list::contrast(grey(0x5A), white) == doctest::Approx(6.90).epsilon(0.001));
}

TEST_CASE("the limits fall between neighbours: text 4.5, large text and graphics 3, enhanced 7") {
  CHECK(list::contrast(grey(0x76), white) >= 4.5);
  CHECK(list::contrast(grey(0x77), white) < 4.5);
  CHECK(list::contrast(grey(0x94), white) >= 3);
  CHECK(list::contrast(grey(0x95), white) < 3);
  CHECK(list::contrast(grey(0x59), white) >= 7);
  CHECK(list::contrast(grey(0x5A), white) < 7);
}

TEST_CASE("contrast is the same both ways round") {
  const list::Colour ink{0x16, 0x23, 0x3A}, accent{0xC4, 0x50, 0x1E};
  CHECK(list::contrast(ink, accent) == list::contrast(accent, ink));
  CHECK(list::contrast(ink, accent) > 1);
}

TEST_CASE("luminance: the weights of the three channels, and they add up to white") {
  CHECK(list::luminance({255, 0, 0}) == doctest::Approx(0.2126));
  CHECK(list::luminance({0, 255, 0}) == doctest::Approx(0.7152));
  CHECK(list::luminance({0, 0, 255}) == doctest::Approx(0.0722));
  CHECK(list::luminance(white) == doctest::Approx(1));
  CHECK(list::luminance(grey(10)) == doctest::Approx(10 / 255.0 / 12.92));  // below the bend the curve is a line
}

TEST_CASE("a list is grey when all it paints is grey") {
  const list::Colour blue{0, 0, 200};
  list::List list;
  CHECK(list::all_grey(list));
  list.add(list::Role::frame, list::Panel{{0, 0, 10, 10}, 1, true, grey(200), 0, blue});  // no line is drawn
  list.add(list::Role::frame, list::Panel{{0, 0, 10, 10}, 1, false, blue, 0.3, black});   // no filling is drawn
  list.add(list::Role::hole_up, list::Disc{{5, 5}, 1, black, 0, blue});
  CHECK(list::all_grey(list));

  list::List with_line = list, with_text = list, with_fill = list;
  with_line.add(list::Role::frame, list::Panel{{0, 0, 10, 10}, 1, false, black, 0.3, blue});
  CHECK_FALSE(list::all_grey(with_line));
  with_text.add(list::Role::text, list::Text{{5, 5}, "a", {}, list::Align::left, {1, 1, 2}});
  CHECK_FALSE(list::all_grey(with_text));
  with_fill.add(list::Role::ground, list::Fill{{{0, 0}, {1, 0}, {0, 1}}, blue});
  CHECK_FALSE(list::all_grey(with_fill));
}

TEST_CASE("greys for colours: as light to the eye, so that what can be told apart by lightness still can") {
  CHECK(list::grey_of({255, 255, 255}) == white);
  CHECK(list::grey_of(black) == black);
  for (int r = 0; r < 256; r += 15)
    for (int g = 0; g < 256; g += 15)
      for (int b = 0; b < 256; b += 15) {
        const list::Colour colour{static_cast<std::uint8_t>(r), static_cast<std::uint8_t>(g), static_cast<std::uint8_t>(b)},
            made = list::grey_of(colour);
        CHECK(list::is_grey(made));
        const auto beside = [&](int step) { return list::luminance(grey(static_cast<std::uint8_t>(std::clamp(made.r + step, 0, 255)))); };
        CHECK(std::abs(list::luminance(made) - list::luminance(colour)) <=
              std::max(std::abs(beside(1) - beside(0)), std::abs(beside(-1) - beside(0))));
      }
  list::List list;
  list.add(list::Role::frame, list::Panel{{0, 0, 10, 10}, 1, true, {1, 2, 3}, 1, {200, 0, 0}});
  list.add(list::Role::hole_up, list::Disc{{5, 5}, 1, {0, 0, 99}, 1, {9, 0, 0}});
  list.add(list::Role::text, list::Text{{5, 5}, "a", {}, list::Align::left, {1, 99, 2}});
  list.add(list::Role::ground, list::Fill{{{0, 0}, {1, 0}, {0, 1}}, {4, 5, 6}});
  list.add(list::Role::grid, list::Stroke{.points = {{0, 0}}, .colour = {7, 8, 9}});
  CHECK_FALSE(list::all_grey(list));
  CHECK(list::all_grey(list::in_grey(list)));
}
