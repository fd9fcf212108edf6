// Writing PNG chunks: length, name, data, checksum.
#include "paint/cairo/chunks.h"

#include <libdeflate.h>

#include <algorithm>
#include <cmath>

#include "base/require.h"
#include "paint/cairo/letters.h"

namespace paint {

namespace {

void add_bytes(Bytes& to, std::string_view bytes) { to.insert(to.end(), bytes.begin(), bytes.end()); }

bool is_latin1(char32_t point) { return point == '\n' || (point >= 0x20 && point <= 0x7E) || (point >= 0xA0 && point <= 0xFF); }

std::string to_latin1(std::u32string_view points) {
  std::string bytes;
  for (const char32_t point : points) bytes.push_back(static_cast<char>(point));
  return bytes;
}

bool is_keyword(std::string_view word) {
  const bool letters =
      std::ranges::all_of(word, [](char c) { return is_latin1(static_cast<std::uint8_t>(c)) && c != '\n' && c != '\xA0'; });
  return letters && !word.empty() && word.size() <= 79 && word.front() != ' ' && word.back() != ' ' && word.find("  ") == word.npos;
}

}  // namespace

void add_number(Bytes& to, std::uint32_t number) {
  for (int shift = 24; shift >= 0; shift -= 8) to.push_back(static_cast<std::uint8_t>(number >> shift));
}

void add_chunk(Bytes& file, std::string_view name, const Bytes& data) {
  add_number(file, static_cast<std::uint32_t>(data.size()));
  const std::size_t start = file.size();
  file.insert(file.end(), name.begin(), name.end());
  file.insert(file.end(), data.begin(), data.end());
  add_number(file, libdeflate_crc32(0, file.data() + start, file.size() - start));
}

void add_density(Bytes& file, double dpi) {
  const auto dots_per_metre = static_cast<std::uint32_t>(std::lround(dpi / 0.0254));
  Bytes data;
  add_number(data, dots_per_metre);
  add_number(data, dots_per_metre);
  data.push_back(1);  // the unit is the metre
  add_chunk(file, "pHYs", data);
}

void add_text(Bytes& file, const PngText& text) {
  base::require(is_keyword(text.keyword), "a PNG keyword has 1 to 79 Latin-1 letters");
  Letters letters = read_letters(text.text);
  std::ranges::replace_if(
      letters.points, [](char32_t p) { return is_control(p) && p != '\n'; }, U' ');
  Bytes data;
  add_bytes(data, text.keyword);
  const bool latin1 = std::ranges::all_of(letters.points, is_latin1);
  if (latin1) {
    data.push_back(0);
    add_bytes(data, to_latin1(letters.points));
  } else {
    data.insert(data.end(), 5, 0);  // end of keyword; not compressed; method 0; no language; no translated keyword
    add_bytes(data, write_letters(letters.points));
  }
  add_chunk(file, latin1 ? "tEXt" : "iTXt", data);
}

}  // namespace paint
