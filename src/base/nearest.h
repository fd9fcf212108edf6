// The right word nearest to a mistyped one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace base {

/// The candidate with the fewest letters to change (a swap of neighbours counts one), or "" where none is near enough
/// (at most a third of the longer word's letters, at least one). Case is ignored. First of equals.
std::string nearest_word(std::string_view word, const std::vector<std::string>& candidates);

}  // namespace base
