// Stops texts that would make reading slow or deep, or that the TOML library does not stand, before anything is read: brackets in
// brackets, endless keys, endless numbers, headers without a name.
#pragma once

#include <optional>

#include "base/fault.h"
#include "file/lines.h"
#include "file/outline.h"

namespace file {

inline constexpr int bracket_limit = 64;        ///< brackets within brackets
inline constexpr int key_dot_limit = 8;         ///< dots in one key
inline constexpr std::size_t dot_limit = 20000; ///< dots in all keys of a file
inline constexpr std::size_t header_limit = 30000;

/// The first such thing, or nothing. What is within these limits is read in time near to linear and with a bounded stack.
std::optional<base::Fault> guard(const Outline& outline, const Lines& lines);

}  // namespace file
