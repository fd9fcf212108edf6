// The right word nearest to a mistyped one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace base {

/// The candidate with the fewest letters to change (a swap of neighbours counts one), or "" where none is near enough
/// (at most a third of the longer word's letters, at least one, and not all of them). A letter is a code point; case of A to Z is
/// ignored. First of equals. Words of more than 60 bytes are near to nothing.
std::string nearest_word(std::string_view word, const std::vector<std::string>& candidates);

}  // namespace base
