// A list played onto a page of pixels.
#include <cairo.h>
#include <fmt/core.h>

#include <cmath>
#include <new>

#include "list/contrast.h"
#include "paint/cairo/dpi.h"
#include "paint/cairo/owned.h"
#include "paint/cairo/paint.h"
#include "paint/cairo/play.h"

namespace paint {

namespace {

using Surface = Owned<cairo_surface_t, cairo_surface_destroy>;
using Context = Owned<cairo_t, cairo_destroy>;

constexpr int longest_side = 32767;  ///< cairo's own limit

struct PageSize {
  int width = 0, height = 0;
};

base::Result<PageSize> page_size(const list::List& list, double dpi) {
  if (auto allowed = check_dpi(dpi); !allowed) return tl::make_unexpected(allowed.error());
  const double width = std::round(list.width * dpi / 25.4), height = std::round(list.height * dpi / 25.4);
  if (!(width >= 1 && height >= 1 && width <= longest_side && height <= longest_side))
    return base::trouble(base::TroubleKind::output, fmt::format("a page of {} x {} mm at {} dots per inch cannot be drawn: each side must have 1 to {} dots",
                                                                list.width, list.height, dpi, longest_side));
  return PageSize{static_cast<int>(width), static_cast<int>(height)};
}

base::Trouble no_room(PageSize size, const char* why) {
  return {base::TroubleKind::output, fmt::format("a page of {} x {} dots cannot be drawn: {}", size.width, size.height, why)};
}

base::Result<Surface> draw(const list::List& list, const Type& type, double dpi, PageSize size) {
  Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, size.width, size.height));
  Context cr(cairo_create(surface.get()));
  cairo_set_source_rgb(cr.get(), 1, 1, 1);
  cairo_paint(cr.get());
  cairo_scale(cr.get(), dpi / 25.4, dpi / 25.4);
  play(cr.get(), list, type.inside());
  cairo_surface_flush(surface.get());
  if (const cairo_status_t status = cairo_status(cr.get()); status != CAIRO_STATUS_SUCCESS)
    return tl::make_unexpected(no_room(size, cairo_status_to_string(status)));
  return surface;
}

/// Cairo's pixel is a 32-bit number 0x00rrggbb in the machine's own byte order.
void to_rgb(std::vector<std::uint8_t>& row, const std::uint32_t* from, int width) {
  for (int x = 0; x < width; ++x) {
    row[3 * x] = static_cast<std::uint8_t>(from[x] >> 16);
    row[3 * x + 1] = static_cast<std::uint8_t>(from[x] >> 8);
    row[3 * x + 2] = static_cast<std::uint8_t>(from[x]);
  }
}

void to_grey(std::vector<std::uint8_t>& row, const std::uint32_t* from, int width) {
  for (int x = 0; x < width; ++x) row[x] = static_cast<std::uint8_t>(from[x]);
}

Pixels copy_pixels(cairo_surface_t* surface, PageSize size, bool grey) {
  Pixels pixels{.width = size.width, .height = size.height, .grey = grey, .bytes = {}};
  const std::uint8_t* first = cairo_image_surface_get_data(surface);
  const std::size_t stride = static_cast<std::size_t>(cairo_image_surface_get_stride(surface));
  std::vector<std::uint8_t> row(static_cast<std::size_t>(size.width) * (grey ? 1 : 3));
  pixels.bytes.reserve(row.size() * static_cast<std::size_t>(size.height));
  for (std::size_t y = 0; y < static_cast<std::size_t>(size.height); ++y) {
    (grey ? to_grey : to_rgb)(row, reinterpret_cast<const std::uint32_t*>(first + y * stride), size.width);
    pixels.bytes.insert(pixels.bytes.end(), row.begin(), row.end());
  }
  return pixels;
}

}  // namespace

base::Result<Pixels> raster(const list::List& list, const Type& type, double dpi) {
  const auto size = page_size(list, dpi);
  if (!size) return tl::make_unexpected(size.error());
  try {
    auto surface = draw(list, type, dpi, *size);
    if (!surface) return tl::make_unexpected(surface.error());
    return copy_pixels(surface->get(), *size, list::all_grey(list));
  } catch (const std::bad_alloc&) {
    return tl::make_unexpected(no_room(*size, "out of memory"));
  }
}

}  // namespace paint
