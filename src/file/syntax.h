// From text to a tree of values: the one place that knows the TOML library. Its exceptions end here.
#pragma once

#include <optional>

#include "base/fault.h"
#include "file/lines.h"
#include "file/node.h"
#include "file/outline.h"

namespace file {

struct Parsed {
  Table root;
  std::optional<base::Fault> fault;  ///< the first slip in the form of the text; the root is empty then
};

/// The text must have passed check_text and guard.
Parsed parse(const Lines& lines, const Outline& outline);

}  // namespace file
