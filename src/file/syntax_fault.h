// What the TOML library has against a text, told in our own plain words with what was found and what was expected.
#pragma once

#include <string_view>

#include "base/fault.h"
#include "file/lines.h"
#include "file/outline.h"

namespace file {

/// `description` is the library's own sentence ("Error while parsing SCOPE: REASON"), `at` its place.
base::Fault syntax_fault(std::string_view description, base::TextPlace at, const Lines& lines, const Outline& outline);

}  // namespace file
