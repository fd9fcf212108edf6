// What must hold before a text is read as a course at all: its size and its letters.
#pragma once

#include <optional>
#include <string_view>

#include "base/fault.h"

namespace file {

/// The text without a byte order mark.
std::string_view without_mark(std::string_view text);
/// The first thing that keeps the text from being read: too large, not UTF-8 (RFC 3629), or a NUL. The place is that of the first bad byte.
std::optional<base::Fault> check_text(std::string_view text);

}  // namespace file
