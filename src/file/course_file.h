// Course files in and out: TOML 1.0, our own schema, every fault with its place, comments kept, canonical form.
#pragma once

#include <string>
#include <string_view>

#include "base/fault.h"
#include "base/result.h"
#include "course/course.h"

namespace file {

inline constexpr int format_version = 1;
inline constexpr std::size_t byte_limit = 4 * 1024 * 1024;

struct Read {
  course::Course course;  ///< to be used only where there are no faults
  base::Faults faults;    ///< in order of place
};
/// Reads a course from text. Never throws, never hangs: limits are checked before anything is expanded.
Read read(std::string_view text);

/// The canonical form of a text that reads without faults: tables and keys in the order of the reference, the teacher's comments kept with
/// the key, table or line they belong to. The canonical form of a canonical text is the same bytes.
std::string tidy(std::string_view text);

/// The whole text of a file or of standard input ("-"): refuses folders, what cannot be read, more than the limit, what is not UTF-8.
base::Result<std::string> load(const std::string& path);

}  // namespace file
