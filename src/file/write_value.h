// Values in canonical form: texts in double quotation marks, numbers as shortest exact decimals, lists in one line where they fit.
#pragma once

#include <string>
#include <string_view>

#include "file/node.h"

namespace file {

inline constexpr int line_width = 110;  ///< characters of a key with a list in one line; a longer one has a line for each item

/// `key = value` without a line end. A text with line breaks is written over several lines.
std::string write_pair(std::string_view key, const Node& node);
/// A key as it is written: bare where that is possible.
std::string write_key(std::string_view key);

}  // namespace file
