// The one place where stb_image_write is known: whole PNG files, compressed by libdeflate or ISA-L.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <span>

#include "paint/cairo/owned.h"
#include "paint/cairo/paint.h"

namespace paint {

struct PngBytes {
  Owned<std::uint8_t, std::free> memory;  ///< none where memory ran out
  std::size_t length = 0;
  std::span<const std::uint8_t> view() const { return {memory.get(), length}; }
};

/// Rows from the top, without padding, 1 (grey) or 3 (red, green, blue) bytes a pixel. (width * channels + 1) * height must fit an int.
/// Safe in threads.
PngBytes stb_png(const std::uint8_t* pixels, int width, int height, int channels, Packing packing);

}  // namespace paint
