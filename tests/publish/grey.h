// Pictures in shades of grey, ours and other programs', and how far two of them are apart.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <sstream>
#include <string>
#include <vector>

#include "paint/cairo/paint.h"

namespace test {

struct Grey {
  int width = 0, height = 0;
  std::vector<int> shades;  ///< rows from the top, 0 black to 255
  int at(int x, int y) const { return shades[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)]; }
};

/// PGM as netpbm has it: "P5 width height 255" and one byte a dot.
inline Grey read_pgm(const std::string& bytes) {
  std::istringstream in(bytes);
  std::string magic;
  Grey grey;
  int most = 0;
  in >> magic >> grey.width >> grey.height >> most;
  in.get();
  if (magic != "P5" || most != 255) return {};
  for (char c; in.get(c);) grey.shades.push_back(static_cast<unsigned char>(c));
  return grey;
}

/// By the weights of ITU-R BT.601.
inline Grey grey_of(const paint::Pixels& pixels) {
  Grey grey{pixels.width, pixels.height, {}};
  const std::size_t step = pixels.grey ? 1 : 3;
  for (std::size_t i = 0; i < pixels.bytes.size(); i += step)
    grey.shades.push_back(
        pixels.grey ? pixels.bytes[i]
                    : static_cast<int>(std::lround(0.299 * pixels.bytes[i] + 0.587 * pixels.bytes[i + 1] + 0.114 * pixels.bytes[i + 2])));
  return grey;
}

struct Apart {
  double mean = 0;   ///< shades between the two in a square of `cell` dots, over all squares
  double alone = 0;  ///< share of dots that are dark in one and white in the other with all their neighbours
};

inline double mean_of(const Grey& grey, int x, int y, int cell) {
  double sum = 0;
  for (int v = y; v < y + cell; ++v)
    for (int u = x; u < x + cell; ++u) sum += grey.at(u, v);
  return sum / cell / cell;
}

/// Dots beyond the smaller of the two are left out: rounding of a page's size may differ by one.
inline Apart apart(const Grey& one, const Grey& other, int cell) {
  const int width = std::min(one.width, other.width), height = std::min(one.height, other.height);
  const auto alone = [&](const Grey& dark, const Grey& light, int x, int y) {
    if (dark.at(x, y) > 100) return false;
    for (int v = std::max(0, y - 1); v <= std::min(height - 1, y + 1); ++v)
      for (int u = std::max(0, x - 1); u <= std::min(width - 1, x + 1); ++u)
        if (light.at(u, v) < 235) return false;
    return true;
  };
  Apart found;
  const double squares = static_cast<double>(width / cell) * (height / cell);
  for (int y = 0; y + cell <= height; y += cell)
    for (int x = 0; x + cell <= width; x += cell) found.mean += std::abs(mean_of(one, x, y, cell) - mean_of(other, x, y, cell)) / squares;
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x)
      if (alone(one, other, x, y) || alone(other, one, x, y)) found.alone += 1.0 / width / height;
  return found;
}

}  // namespace test
