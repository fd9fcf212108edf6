// What must be told apart, by WCAG 2.2 contrast: type on its ground 4.5, graphics 3; and all of it in a grey copy, too.
#include "list/contrast.h"

#include <doctest/doctest.h>

#include <cmath>

#include "picture/styles.h"

namespace {

/// A copier's grey of the same luminance, by the sRGB curve (IEC 61966-2-1).
list::Colour grey(list::Colour c) {
  const double l = list::luminance(c);
  const double v = l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1 / 2.4) - 0.055;
  const auto byte = static_cast<std::uint8_t>(std::lround(255 * v));
  return {byte, byte, byte};
}

}  // namespace

TEST_CASE("type stands out from white by 4.5, stitches and marks by 3, in colour and in grey") {
  using namespace picture::colour;
  for (const auto& c : {ink, accent}) {
    CHECK(list::contrast(c, white) >= 4.5);
    CHECK(list::contrast(grey(c), white) >= 4.45);  // grey is rounded to a byte
  }
  for (const auto& c : {now, before, later, accent}) {
    CHECK(list::contrast(c, white) >= 3);
    CHECK(list::contrast(grey(c), white) >= 2.97);
  }
}

TEST_CASE("these stitches are told from those made before by 3, and from those not yet made by their width as well") {
  using namespace picture;
  CHECK(list::contrast(colour::now, colour::before) >= 3);
  CHECK(list::contrast(grey(colour::now), grey(colour::before)) >= 2.97);
  CHECK(ratio::later * 2.5 < 0.26);  // the thinnest stitch that is there
}

TEST_CASE("the grid stays behind: nearer to white than to any stitch") {
  using namespace picture::colour;
  for (const auto& c : {grid, grid_fourth}) {
    CHECK(list::contrast(c, white) < list::contrast(c, ink));
    CHECK(list::contrast(c, white) < list::contrast(before, white));
  }
  CHECK(list::contrast(grid_fourth, white) > list::contrast(grid, white));
}

TEST_CASE("marks at holes are larger than any line they stand on") {
  using namespace picture;
  CHECK(2 * ratio::dot > ratio::widest_now);
  CHECK(ratio::mark_room > ratio::dot);
}
