// An always-on check for our own mistakes: what it guards is a promise of the code, never of the user's file.
#pragma once

#include <string_view>

namespace base {

/// Stops the program with the text when `holds` is false. For bugs only: bad input is a Fault, a doubtful design a snag.
void require(bool holds, std::string_view what);

}  // namespace base
