// Items on the page: sizes by ISO 216, areas by school geometry, errors.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <numbers>

#include "page.h"

using page::black, page::draw, page::inked_area, page::item, page::sheet;

TEST_CASE("A4 (ISO 216) and Letter (8.5 x 11 inches) have their pixels") {
  const paint::Pixels a4 = draw(sheet(210, 297, {}), 300), letter = draw(sheet(215.9, 279.4, {}), 300),
                      screen = draw(sheet(210, 297, {}), 72);
  CHECK(a4.width == 2480);
  CHECK(a4.height == 3508);
  CHECK(letter.width == 2550);
  CHECK(letter.height == 3300);
  CHECK(screen.width == 595);
  CHECK(screen.height == 842);
  CHECK(a4.bytes.size() == 2480U * 3508U);
  CHECK(std::ranges::all_of(a4.bytes, [](std::uint8_t b) { return b == 255; }));
}

TEST_CASE("grey pictures take one byte a pixel, others three") {
  const auto dot = [](list::Colour c) { return sheet(10, 10, {item(list::Disc{{5, 5}, 2, c, 0, {}})}); };
  CHECK(draw(dot({40, 40, 40}), 100).grey);
  CHECK_FALSE(draw(dot({40, 40, 41}), 100).grey);
  const paint::Pixels colour = draw(dot(page::accent), 100), grey = draw(dot({90, 90, 90}), 100);
  CHECK(colour.bytes.size() == 3 * grey.bytes.size());
  const std::size_t middle = static_cast<std::size_t>(20 * colour.width + 20);
  CHECK(grey.bytes[middle] == 90);
  CHECK(colour.bytes[3 * middle] == page::accent.r);
  CHECK(colour.bytes[3 * middle + 1] == page::accent.g);
  CHECK(colour.bytes[3 * middle + 2] == page::accent.b);
}

TEST_CASE("areas: a stroke is length by width and its round ends make one circle; a disc is pi r r") {
  constexpr double pi = std::numbers::pi, dpi = 600;
  const auto area = [](list::Item what) { return inked_area(draw(sheet(20, 20, {std::move(what)}), dpi), dpi); };
  const std::vector<list::Point> slant = {{3, 4}, {11, 10}};  // 10 mm long
  CHECK(area(item(list::Stroke{.points = slant, .width = 1.2, .colour = black, .cap = list::Cap::flat})) ==
        doctest::Approx(12).epsilon(0.003));
  CHECK(area(item(list::Stroke{.points = slant, .width = 1.2, .colour = black})) == doctest::Approx(12 + pi * 0.36).epsilon(0.003));
  CHECK(area(item(list::Stroke{.points = {{5, 5}}, .width = 3, .colour = black})) == doctest::Approx(pi * 2.25).epsilon(0.003));
  CHECK(area(item(list::Disc{{10, 10}, 4, black, 0, {}})) == doctest::Approx(pi * 16).epsilon(0.003));
  CHECK(area(item(list::Disc{{10, 10}, 4, page::white, 1, black})) == doctest::Approx(pi * (4.5 * 4.5 - 3.5 * 3.5)).epsilon(0.003));
  CHECK(area(item(list::Fill{{{2, 2}, {12, 2}, {2, 8}}, black})) == doctest::Approx(30).epsilon(0.003));
  CHECK(area(item(list::Panel{{2, 3, 10, 8}, 2, true, black, 0, {}})) == doctest::Approx(80 - (4 - pi) * 4).epsilon(0.003));
  CHECK(area(item(list::Panel{{2, 3, 10, 8}, 0, false, {}, 0.5, black})) ==
        doctest::Approx(36 * 0.5 - (1 - pi / 4) * 0.25).epsilon(0.005));  // round joins
  CHECK(area(item(list::Panel{{2, 3, 10, 8}, 99, true, black, 0, {}})) ==
        doctest::Approx(2 * 8 + pi * 16).epsilon(0.003));  // no rounder than half
}

TEST_CASE("a closed run of lines goes back to its start") {
  constexpr double dpi = 300;
  const list::Stroke open{.points = {{4, 4}, {14, 4}, {14, 14}, {4, 14}}, .width = 1, .colour = black, .cap = list::Cap::flat};
  list::Stroke closed = open;
  closed.closed = true;
  const double corner = 1 - std::numbers::pi / 4;  // what a round join of a 1 mm line leaves off, four times a quarter
  CHECK(inked_area(draw(sheet(20, 20, {item(open)}), dpi), dpi) == doctest::Approx(30 - corner / 2).epsilon(0.003));
  CHECK(inked_area(draw(sheet(20, 20, {item(closed)}), dpi), dpi) == doctest::Approx(40 - corner).epsilon(0.003));
}

TEST_CASE("the broken line of the thread behind: three widths inked, two free, dots with round ends as with flat ones") {
  constexpr double dpi = 600, width = 0.4;
  const auto area = [](list::Cap cap) {
    const list::Stroke s{.points = {{1, 3}, {40.5, 3}}, .width = width, .colour = black, .dash = list::Dash::back, .cap = cap};
    return inked_area(draw(sheet(42, 6, {item(s)}), dpi), dpi);
  };
  CHECK(area(list::Cap::flat) == doctest::Approx(20 * 3 * width * width).epsilon(0.01));
  // 20 strokes in 39.5 mm; with round ends each is a rectangle of two widths and a circle
  CHECK(area(list::Cap::round) == doctest::Approx(20 * (2 + std::numbers::pi / 4) * width * width).epsilon(0.01));
}

TEST_CASE("clips: nothing outside, nested ones meet, afterwards all is free again") {
  constexpr double dpi = 400;
  const list::Panel all{{0, 0, 20, 20}, 0, true, black, 0, {}};
  const auto clipped = [&](std::initializer_list<list::Item> items) { return inked_area(draw(sheet(20, 20, items), dpi), dpi); };
  CHECK(clipped({item(list::ClipIn{{2, 2, 8, 6}, 0}), item(all), item(list::ClipOut{})}) == doctest::Approx(48).epsilon(0.003));
  CHECK(clipped({item(list::ClipIn{{2, 2, 8, 6}, 1.5}), item(all), item(list::ClipOut{})}) ==
        doctest::Approx(48 - (4 - std::numbers::pi) * 2.25).epsilon(0.003));
  CHECK(clipped({item(list::ClipIn{{2, 2, 8, 6}, 0}), item(list::ClipIn{{6, 4, 10, 10}, 0}), item(all), item(list::ClipOut{}),
                 item(list::ClipOut{})}) == doctest::Approx(16).epsilon(0.003));
  CHECK(clipped({item(list::ClipIn{{2, 2, 8, 6}, 0}), item(list::ClipOut{}), item(all)}) == doctest::Approx(400).epsilon(0.003));
}

TEST_CASE("items are painted in their order") {
  const list::Panel dark{{0, 0, 10, 10}, 0, true, black, 0, {}}, light{{0, 0, 10, 10}, 0, true, page::white, 0, {}};
  CHECK(inked_area(draw(sheet(10, 10, {item(dark), item(light)}), 254), 254) < 0.01);
  CHECK(inked_area(draw(sheet(10, 10, {item(light), item(dark)}), 254), 254) == doctest::Approx(100));
}

TEST_CASE("what cannot be drawn is a trouble, and says what") {
  const auto trouble = [](const list::List& list, double dpi) {
    const auto drawn = paint::raster(list, page::type(), dpi);
    REQUIRE_FALSE(drawn.has_value());
    CHECK(drawn.error().kind == base::TroubleKind::output);
    return drawn.error().what;
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(trouble(sheet(210, 297, {}), 71) == "71 dots per inch cannot be drawn, only 72 to 1200");
  CHECK(trouble(sheet(210, 297, {}), 1201).find("1201") != std::string::npos);
  CHECK(trouble(sheet(210, 297, {}), nan).find("nan") != std::string::npos);
  CHECK(trouble(sheet(0, 297, {}), 300).find("0 x 297 mm") != std::string::npos);
  CHECK(trouble(sheet(-5, 297, {}), 300).find("-5 x 297 mm") != std::string::npos);
  CHECK(trouble(sheet(1e12, 297, {}), 300).find("32767") != std::string::npos);
  CHECK(trouble(sheet(690, 690, {}), 1200).find("400000000") != std::string::npos);
  CHECK(trouble(sheet(10, 10, {item(list::Disc{{5, 5}, nan, black, 0, {}})}), 300).find("item 1 of the page's 1") == 0);
  CHECK(trouble(sheet(10, 10, {item(list::Stroke{.points = {{0, 0}, {1e9, 0}}, .colour = black, .dash = list::Dash::back})}), 300)
            .find("item 1") == 0);
}

TEST_CASE("what leaves no mark is left out in peace") {
  const list::List list = sheet(10, 10,
                                {item(list::Stroke{}), item(list::Fill{}), item(list::Fill{{{1, 1}}, black}), item(list::Text{}),
                                 item(list::Stroke{.points = {{1, 1}, {5, 5}}, .width = 0, .colour = black}),
                                 item(list::Panel{{5, 5, -2, -2}, 1, false, black, 0, black}), item(list::Disc{{5, 5}, 0, black, 0, {}}),
                                 item(list::ClipIn{{2, 2, 0, 0}, 1}), item(list::ClipOut{})});
  CHECK(inked_area(draw(list, 200), 200) == 0);
}
