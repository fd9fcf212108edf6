// A list played onto a page of pixels.
#include <cairo.h>
#include <fmt/core.h>

#include <bit>
#include <cmath>
#include <cstring>
#include <new>
#include <utility>

#include "list/contrast.h"
#include "paint/cairo/dpi.h"
#include "paint/cairo/large_pages.h"
#include "paint/cairo/owned.h"
#include "paint/cairo/paint.h"
#include "paint/cairo/play.h"
#include "paint/cairo/reach.h"

namespace paint {

namespace {

using Surface = Owned<cairo_surface_t, cairo_surface_destroy>;
using Canvas = std::vector<std::uint8_t>;
using Context = Owned<cairo_t, cairo_destroy>;

constexpr double even_letters_from = 200;  ///< dots an inch from which a letter on whole pixels is nowhere more than 0.07 mm out
constexpr int longest_side = 32767;        ///< cairo's own limit
constexpr double most_dots = 400'000'000;  ///< 1.6 GB to draw on: A3 at 1200 dots an inch, and some more

struct PageSize {
  int width = 0, height = 0;
};

base::Result<PageSize> page_size(const list::List& list, double dpi) {
  if (auto allowed = check_dpi(dpi); !allowed) return tl::make_unexpected(allowed.error());
  const double width = std::round(list.width * dpi / 25.4), height = std::round(list.height * dpi / 25.4);
  if (!(width >= 1 && height >= 1 && width <= longest_side && height <= longest_side))
    return base::trouble(base::TroubleKind::output,
                         fmt::format("a page of {} x {} mm at {} dots per inch cannot be drawn: each side must have 1 to {} dots",
                                     list.width, list.height, dpi, longest_side));
  if (width * height > most_dots)
    return base::trouble(base::TroubleKind::output,
                         fmt::format("a page of {} x {} dots cannot be drawn: more than {} dots in all", width, height, most_dots));
  return PageSize{static_cast<int>(width), static_cast<int>(height)};
}

base::Trouble no_room(PageSize size, const char* why) {
  return {base::TroubleKind::output, fmt::format("a page of {} x {} dots cannot be drawn: {}", size.width, size.height, why)};
}

/// 32-bit pixels, white or with nothing in them, rows without padding.
Canvas empty_canvas(PageSize size, Ground ground) {
  const std::size_t bytes = std::size_t{4} * static_cast<std::size_t>(size.width) * static_cast<std::size_t>(size.height);
  Canvas canvas;
  canvas.reserve(bytes);
  ask_large_pages(canvas.data(), bytes);
  canvas.resize(bytes, ground == Ground::white ? 0xFF : 0);
  return canvas;
}

base::Result<Canvas> draw(const list::List& list, const Type& type, double dpi, PageSize size, Ground ground) {
  Canvas canvas = empty_canvas(size, ground);
  Surface surface(cairo_image_surface_create_for_data(canvas.data(), ground == Ground::white ? CAIRO_FORMAT_RGB24 : CAIRO_FORMAT_ARGB32,
                                                      size.width, size.height, 4 * size.width));
  Context cr(cairo_create(surface.get()));
  cairo_scale(cr.get(), dpi / 25.4, dpi / 25.4);
  play(cr.get(), list, type.inside(), dpi < even_letters_from ? Lettering::outlines : Lettering::glyphs);
  cairo_surface_flush(surface.get());
  if (const cairo_status_t status = cairo_status(cr.get()); status != CAIRO_STATUS_SUCCESS)
    return tl::make_unexpected(no_room(size, cairo_status_to_string(status)));
  return canvas;
}

std::uint32_t pixel(const std::uint8_t* canvas, std::size_t i) {
  std::uint32_t rgb;
  std::memcpy(&rgb, canvas + 4 * i, 4);
  return rgb;
}

// A pixel becomes shorter, or stays as long, where it is: what is written never reaches what has still to be read.

/// Cairo's pixel is a 32-bit number 0x00rrggbb in the machine's own byte order. The four bytes stored begin with r, g, b; the fourth is
/// written over by the next pixel. Three times as fast as byte for byte.
void to_rgb(std::uint8_t* canvas, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    const std::uint32_t rgb = pixel(canvas, i) << 8;
    const std::uint32_t bytes = std::endian::native == std::endian::little ? __builtin_bswap32(rgb) : rgb;
    std::memcpy(canvas + 3 * i, &bytes, 4);
  }
}

void to_grey(std::uint8_t* canvas, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) canvas[i] = static_cast<std::uint8_t>(pixel(canvas, i));
}

/// Cairo keeps colours multiplied with how much they cover; a PNG has them as they are.
void to_clear(std::uint8_t* canvas, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    const std::uint32_t from = pixel(canvas, i), cover = from >> 24;
    const auto plain = [&](int shift) {
      return static_cast<std::uint8_t>(cover == 0 ? 0 : ((from >> shift & 0xFF) * 255 + cover / 2) / cover);
    };
    canvas[4 * i] = plain(16);
    canvas[4 * i + 1] = plain(8);
    canvas[4 * i + 2] = plain(0);
    canvas[4 * i + 3] = static_cast<std::uint8_t>(cover);
  }
}

Pixels pixels_of(Canvas canvas, PageSize size, bool grey, Ground ground) {
  Pixels pixels{
      .width = size.width, .height = size.height, .grey = grey && ground == Ground::white, .bytes = {}, .clear = ground == Ground::clear};
  const std::size_t count = static_cast<std::size_t>(size.width) * static_cast<std::size_t>(size.height);
  (pixels.clear ? to_clear : pixels.grey ? to_grey : to_rgb)(canvas.data(), count);
  canvas.resize(count * static_cast<std::size_t>(pixels.channels()));
  pixels.bytes = std::move(canvas);
  return pixels;
}

}  // namespace

base::Result<Pixels> raster(const list::List& list, const Type& type, double dpi, Ground ground) {
  const auto size = page_size(list, dpi);
  if (!size) return tl::make_unexpected(size.error());
  if (auto near = check_reach(list); !near) return tl::make_unexpected(near.error());
  try {
    auto canvas = draw(list, type, dpi, *size, ground);
    if (!canvas) return tl::make_unexpected(canvas.error());
    return pixels_of(std::move(*canvas), *size, list::all_grey(list), ground);
  } catch (const std::bad_alloc&) {
    return tl::make_unexpected(no_room(*size, "out of memory"));
  }
}

}  // namespace paint
