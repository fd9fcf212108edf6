// A picture of a paper chart under the grid: loaded with stb_image, laid in place by two points of the picture and the holes they are.
#pragma once

#include <array>
#include <filesystem>
#include <optional>

#include "base/result.h"
#include "cloth/hole.h"
#include "paint/cairo/paint.h"

namespace app {

/// Reads a PNG or JPEG, at most 64 MB and 100 million pixels.
base::Result<paint::Pixels> read_picture(const std::filesystem::path& file);

/// A point of the picture, in its pixels from the upper left.
struct PicturePoint {
  double x = 0, y = 0;
};

/// Where the picture lies: hole = origin + pixel * scale, in threads; its axes stay along the cloth's.
struct Laid {
  double x = 0, y = 0;              ///< of the picture's upper left corner
  double across = 0.1, down = 0.1;  ///< threads a pixel
};

/// The place in which two points of the picture lie on two holes. Where they are level in one direction, its scale is the other's. Nothing where the points
/// are the same, or the holes stand the other way about from the points.
std::optional<Laid> laid(const std::array<PicturePoint, 2>& points, const std::array<cloth::Hole, 2>& holes);

}  // namespace app
