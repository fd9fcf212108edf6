// A PNG file read back with libpng, which knows nothing of how it was written.
#pragma once

#include <doctest/doctest.h>
#include <png.h>

#include <cstdlib>
#include <cstring>
#include <span>
#include <string>
#include <vector>

#include "paint/cairo/paint.h"

namespace page {

struct ReadText {
  int compression = 0;  ///< PNG_TEXT_COMPRESSION_NONE: tEXt; PNG_ITXT_COMPRESSION_NONE: iTXt
  std::string keyword, text;
};
struct ReadPng {
  paint::Pixels pixels;
  int bit_depth = 0;
  png_uint_32 dots_per_metre_x = 0, dots_per_metre_y = 0;
  int unit = -1;
  std::vector<ReadText> texts;
};

namespace inside {

struct Source {
  std::span<const std::uint8_t> bytes;
  std::size_t at = 0;
};

inline void take(png_structp png, png_bytep to, size_t length) {
  auto& source = *static_cast<Source*>(png_get_io_ptr(png));
  if (length > source.bytes.size() - source.at) png_error(png, "the file ends too early");
  std::memcpy(to, source.bytes.data() + source.at, length);
  source.at += length;
}

/// Errors and warnings alike fail the test (libpng only warns of a bad checksum in a text chunk).
[[noreturn]] inline void fail(png_structp, png_const_charp what) {
  FAIL(what);
  std::abort();
}
inline void warn(png_structp, png_const_charp what) { FAIL_CHECK(what); }

inline void read_pixels(png_structp png, png_infop info, ReadPng& read) {
  paint::Pixels& p = read.pixels;
  p.width = static_cast<int>(png_get_image_width(png, info));
  p.height = static_cast<int>(png_get_image_height(png, info));
  p.grey = png_get_color_type(png, info) == PNG_COLOR_TYPE_GRAY;
  read.bit_depth = png_get_bit_depth(png, info);
  const std::size_t row = png_get_rowbytes(png, info);
  p.bytes.resize(row * static_cast<std::size_t>(p.height));
  for (std::size_t y = 0; y < static_cast<std::size_t>(p.height); ++y) png_read_row(png, p.bytes.data() + y * row, nullptr);
}

inline void read_texts(png_structp png, png_infop info, ReadPng& read) {
  png_textp texts = nullptr;
  const int count = png_get_text(png, info, &texts, nullptr);
  for (int i = 0; i < count; ++i) {
    const bool international = texts[i].compression == PNG_ITXT_COMPRESSION_NONE;
    const std::size_t length = international ? texts[i].itxt_length : texts[i].text_length;
    read.texts.push_back({texts[i].compression, texts[i].key, std::string(texts[i].text, length)});
  }
}

}  // namespace inside

inline ReadPng read_png(std::span<const std::uint8_t> file) {
  inside::Source source{file};
  ReadPng read;
  png_structp png = png_create_read_struct(PNG_LIBPNG_VER_STRING, nullptr, inside::fail, inside::warn);
  png_infop info = png_create_info_struct(png);
  png_set_read_fn(png, &source, inside::take);
  png_read_info(png, info);
  png_get_pHYs(png, info, &read.dots_per_metre_x, &read.dots_per_metre_y, &read.unit);
  inside::read_pixels(png, info, read);
  png_read_end(png, info);
  inside::read_texts(png, info, read);
  png_destroy_read_struct(&png, &info, nullptr);
  CHECK(source.at == file.size());
  return read;
}

}  // namespace page
