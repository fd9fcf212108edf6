// What all tests of this painter share: the fonts opened once, small lists, and ink measured on the picture.
#pragma once

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "paint/cairo/paint.h"

namespace page {

inline const paint::Type& type() {
  static const auto opened = paint::Type::open();
  REQUIRE_MESSAGE(opened.has_value(), (opened ? std::string() : opened.error().what));
  return **opened;
}

inline constexpr list::Colour black{0, 0, 0}, white{255, 255, 255}, ink{0x16, 0x23, 0x3A}, accent{0xC4, 0x50, 0x1E}, pale{0x9F, 0xB0, 0xC6};

inline list::List sheet(double width, double height, std::initializer_list<list::Item> items) {
  return {.width = width, .height = height, .title = "", .items = items, .places = {}, .jumps = {}};
}

template <class T>
list::Item item(T what) {
  return {list::Role::text, std::move(what)};
}

inline paint::Pixels draw(const list::List& list, double dpi) {
  auto drawn = paint::raster(list, type(), dpi);
  REQUIRE_MESSAGE(drawn.has_value(), (drawn ? std::string() : drawn.error().what));
  return std::move(*drawn);
}

/// How dark a pixel of a grey picture is: 0 white, 1 black.
inline double darkness(const paint::Pixels& p, int x, int y) {
  return 1 - p.bytes[static_cast<std::size_t>(y) * static_cast<std::size_t>(p.width) + static_cast<std::size_t>(x)] / 255.0;
}

/// The area inked in black on a grey picture, in square millimetres.
inline double inked_area(const paint::Pixels& p, double dpi) {
  REQUIRE(p.grey);
  double sum = 0;
  for (const std::uint8_t level : p.bytes) sum += 1 - level / 255.0;
  return sum * std::pow(25.4 / dpi, 2);
}

/// The smallest rectangle of pixels round all ink, in millimetres.
inline list::Rect inked_box(const paint::Pixels& p, double dpi) {
  int left = p.width, top = p.height, right = -1, bottom = -1;
  for (int y = 0; y < p.height; ++y)
    for (int x = 0; x < p.width; ++x)
      if (darkness(p, x, y) > 0.05) {
        left = std::min(left, x), right = std::max(right, x);
        top = std::min(top, y), bottom = std::max(bottom, y);
      }
  const double mm = 25.4 / dpi;
  return {left * mm, top * mm, (right - left + 1) * mm, (bottom - top + 1) * mm};
}

}  // namespace page
