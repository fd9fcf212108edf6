#include "paint/cairo/moving_png.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "base/require.h"
#include "paint/cairo/chunks.h"

namespace paint {
namespace {

constexpr std::size_t signature = 8;

std::uint32_t number_at(const Bytes& bytes, std::size_t at) {
  return static_cast<std::uint32_t>(bytes[at]) << 24 | static_cast<std::uint32_t>(bytes[at + 1]) << 16 |
         static_cast<std::uint32_t>(bytes[at + 2]) << 8 | bytes[at + 3];
}

struct Chunk {
  std::string_view name;
  std::size_t begin = 0, data = 0, length = 0, end = 0;
};

/// Of a file that we have written ourselves.
std::vector<Chunk> chunks_of(const Bytes& png) {
  std::vector<Chunk> chunks;
  for (std::size_t at = signature; at + 12 <= png.size();) {
    const std::size_t length = number_at(png, at);
    base::require(at + 12 + length <= png.size(), "a PNG is whole");
    chunks.push_back({{reinterpret_cast<const char*>(png.data() + at + 4), 4}, at, at + 8, length, at + 12 + length});
    at += 12 + length;
  }
  return chunks;
}

/// Where, how long and how the frame is shown: all of it, in place of the one before.
Bytes frame_control(std::uint32_t number, const Bytes& head, int hundredths) {
  Bytes data;
  add_number(data, number);
  data.insert(data.end(), head.begin(), head.begin() + 8);  // width and height
  add_number(data, 0);
  add_number(data, 0);
  data.push_back(static_cast<std::uint8_t>(hundredths >> 8));
  data.push_back(static_cast<std::uint8_t>(hundredths & 0xFF));
  data.insert(data.end(), {0, 100, 0, 0});  // of a hundred a second; nothing is done afterwards; it replaces what was there
  return data;
}

}  // namespace

base::Result<void> MovingPng::add(const Bytes& png, double seconds) {
  Frame frame;
  frame.hundredths = static_cast<int>(std::clamp(std::lround(100 * seconds), 1L, 65535L));
  Bytes head;
  for (const Chunk& chunk : chunks_of(png)) {
    const auto data = png.begin() + static_cast<std::ptrdiff_t>(chunk.data);
    if (chunk.name == "IHDR") head.assign(data, data + static_cast<std::ptrdiff_t>(chunk.length));
    if (chunk.name == "IDAT") {
      if (before_.empty()) before_.assign(png.begin(), png.begin() + static_cast<std::ptrdiff_t>(chunk.begin));
      frame.packed.insert(frame.packed.end(), data, data + static_cast<std::ptrdiff_t>(chunk.length));
    }
  }
  if (head_.empty()) head_ = head;
  if (head != head_)
    return base::trouble(base::TroubleKind::output, "a moving picture cannot be made of pictures that differ in size or colour");
  frames_.push_back(std::move(frame));
  return {};
}

Bytes MovingPng::file() const {
  base::require(!frames_.empty(), "a moving picture has a picture");
  Bytes file = before_, count;
  add_number(count, static_cast<std::uint32_t>(frames_.size()));
  add_number(count, 0);  // for ever
  add_chunk(file, "acTL", count);
  std::uint32_t number = 0;
  for (const Frame& frame : frames_) {
    const bool first = number == 0;
    add_chunk(file, "fcTL", frame_control(number++, head_, frame.hundredths));
    Bytes data;
    if (!first) add_number(data, number++);
    data.insert(data.end(), frame.packed.begin(), frame.packed.end());
    add_chunk(file, first ? "IDAT" : "fdAT", data);
  }
  add_chunk(file, "IEND", {});
  return file;
}

}  // namespace paint
