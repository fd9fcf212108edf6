// UTF-8 taken apart into code points.
#pragma once

#include <string>
#include <string_view>

namespace paint {

struct Letters {
  std::u32string points;
  bool whole = true;  ///< false where bytes were no UTF-8 (or NUL): U+FFFD stands for them
};
Letters read_letters(std::string_view utf8);
/// Line breaks, tabs, other controls: what cannot stand in one line of type.
bool is_control(char32_t point);
std::string write_letters(std::u32string_view points);

}  // namespace paint
