// A measure that asks each question once: words come again and again on a page, and type is slow to measure.
#pragma once

#include <map>
#include <string>
#include <utility>

#include "list/measure.h"

namespace picture {

/// For one thread at a time, like the measure behind it.
class Remembered : public list::Measure {
 public:
  explicit Remembered(const list::Measure& behind) : behind_(behind) {}
  list::TypeSize measure(std::string_view text, list::TypeStyle style) const override;

 private:
  const list::Measure& behind_;
  mutable std::map<std::pair<list::TypeStyle, std::string>, list::TypeSize> known_;
};

}  // namespace picture
