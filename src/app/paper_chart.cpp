#include "app/paper_chart.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <memory>

#define STB_IMAGE_STATIC
#define STB_IMAGE_IMPLEMENTATION
#define STBI_ONLY_PNG
#define STBI_ONLY_JPEG
#define STBI_NO_STDIO
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wunused-function"
#include <stb/stb_image.h>
#pragma GCC diagnostic pop

namespace app {
namespace {

constexpr std::uintmax_t most_bytes = 64U << 20U;
constexpr std::int64_t most_pixels = 100'000'000;
constexpr double level = 3;  // pixels within which two points count as level

auto cannot(const std::filesystem::path& file, std::string_view why) {
  return base::trouble(base::TroubleKind::input, fmt::format("{} cannot be laid under the grid: {}", file.string(), why));
}

}  // namespace

base::Result<paint::Pixels> read_picture(const std::filesystem::path& file) {
  std::error_code error;
  const std::uintmax_t size = std::filesystem::file_size(file, error);
  if (error) return cannot(file, error.message());
  if (size > most_bytes) return cannot(file, "it is larger than 64 MB");
  std::ifstream in(file, std::ios::binary);
  const std::vector<unsigned char> bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
  int width = 0, height = 0, channels = 0;
  const auto length = static_cast<int>(bytes.size());
  if (stbi_info_from_memory(bytes.data(), length, &width, &height, &channels) == 0) return cannot(file, "it is no PNG or JPEG picture");
  if (std::int64_t{width} * height > most_pixels) return cannot(file, "it has more than 100 million pixels");
  const std::unique_ptr<unsigned char, decltype(&std::free)> pixels(stbi_load_from_memory(bytes.data(), length, &width, &height, &channels, 3), &std::free);
  if (!pixels) return cannot(file, "the picture is damaged");
  return paint::Pixels{width, height, false, {pixels.get(), pixels.get() + std::size_t{3} * static_cast<std::size_t>(width) * static_cast<std::size_t>(height)}};
}

std::optional<Laid> laid(const std::array<PicturePoint, 2>& points, const std::array<cloth::Hole, 2>& holes) {
  const double dx = points[1].x - points[0].x, dy = points[1].y - points[0].y;
  const int nx = holes[1].x - holes[0].x, ny = holes[1].y - holes[0].y;
  const bool across = std::abs(dx) > level, down = std::abs(dy) > level;
  if (!across && !down) return std::nullopt;
  Laid found;
  if (across) found.across = nx / dx;
  if (down) found.down = ny / dy;
  if (!across || nx == 0) found.across = found.down;
  if (!down || ny == 0) found.down = found.across;
  if (found.across <= 0 || found.down <= 0) return std::nullopt;
  found.x = holes[0].x - points[0].x * found.across;
  found.y = holes[0].y - points[0].y * found.down;
  return found;
}

}  // namespace app
