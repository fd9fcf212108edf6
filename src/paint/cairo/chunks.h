// Chunks that go into a PNG between its head and its pixels (PNG specification, third edition, chapter 11).
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "paint/cairo/paint.h"

namespace paint {

using Bytes = std::vector<std::uint8_t>;

void add_number(Bytes& to, std::uint32_t number);  ///< four bytes, the greatest first
/// Length, name of four letters, data, checksum over name and data.
void add_chunk(Bytes& file, std::string_view name, const Bytes& data);
/// pHYs: dots per metre both ways, rounded (300 dots per inch: 11811).
void add_density(Bytes& file, double dpi);
/// tEXt where every letter is Latin-1, else iTXt, not compressed. Controls other than the line break become spaces, bytes that are not
/// UTF-8 U+FFFD. The keyword must be 1 to 79 Latin-1 letters without a space at either end or two together.
void add_text(Bytes& file, const PngText& text);

}  // namespace paint
