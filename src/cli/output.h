// Standard output, written whole and checked: a full disk or a closed pipe is told.
#pragma once

#include <string_view>

namespace cli {

/// Writes the bytes; says on standard error what went wrong. True when all were written.
bool print_out(std::string_view bytes);

}  // namespace cli
