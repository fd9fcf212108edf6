// The interface that measures type for whoever lays out a page. Painters implement it with the very fonts they draw.
#pragma once

#include <string_view>

#include "list/list.h"

namespace list {

struct TypeSize {
  double width = 0;    ///< mm, advance of the whole line
  double ascent = 0;   ///< mm above the base line, of the font
  double descent = 0;  ///< mm below it, of the font
  bool complete = true;  ///< false when the fonts lack a letter of the text
};

class Measure {
 public:
  virtual ~Measure() = default;
  virtual TypeSize measure(std::string_view text, TypeStyle style) const = 0;
};

inline constexpr double mm_per_pt = 25.4 / 72.0;

}  // namespace list
