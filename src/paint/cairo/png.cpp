// A PNG file: stb writes head, pixels and end; density and texts go in after the head.
#include <fmt/core.h>

#include <limits>
#include <new>

#include "base/require.h"
#include "paint/cairo/chunks.h"
#include "paint/cairo/dpi.h"
#include "paint/cairo/paint.h"
#include "paint/cairo/stb.h"

namespace paint {

namespace {

constexpr std::size_t head_length = 8 + 12 + 13;  ///< the signature and IHDR

base::Trouble no_file(const Pixels& pixels, const char* why) {
  return {base::TroubleKind::output, fmt::format("a picture of {} x {} dots cannot be written: {}", pixels.width, pixels.height, why)};
}

bool fits_stb(std::size_t width, std::size_t height, std::size_t channels) {
  return (width * channels + 1) * height <= static_cast<std::size_t>(std::numeric_limits<int>::max());
}

Bytes put_together(std::span<const std::uint8_t> plain, double dpi, std::span<const PngText> texts) {
  Bytes chunks;
  add_density(chunks, dpi);
  for (const PngText& text : texts) add_text(chunks, text);
  Bytes file;
  file.reserve(plain.size() + chunks.size());
  file.insert(file.end(), plain.begin(), plain.begin() + head_length);
  file.insert(file.end(), chunks.begin(), chunks.end());
  file.insert(file.end(), plain.begin() + head_length, plain.end());
  return file;
}

}  // namespace

base::Result<std::vector<std::uint8_t>> png(const Pixels& pixels, double dpi, std::span<const PngText> texts, Packing packing) {
  if (auto allowed = check_dpi(dpi); !allowed) return tl::make_unexpected(allowed.error());
  const auto channels = static_cast<std::size_t>(pixels.channels());
  base::require(pixels.width > 0 && pixels.height > 0, "a picture has pixels");
  const auto width = static_cast<std::size_t>(pixels.width), height = static_cast<std::size_t>(pixels.height);
  base::require(pixels.bytes.size() == width * height * channels, "a picture has all its pixels");
  if (!fits_stb(width, height, channels)) return tl::make_unexpected(no_file(pixels, "it is too large"));
  const PngBytes plain = stb_png(pixels.bytes.data(), pixels.width, pixels.height, static_cast<int>(channels), packing);
  if (!plain.memory) return tl::make_unexpected(no_file(pixels, "out of memory"));
  try {
    return put_together(plain.view(), dpi, texts);
  } catch (const std::bad_alloc&) {
    return tl::make_unexpected(no_file(pixels, "out of memory"));
  }
}

}  // namespace paint
