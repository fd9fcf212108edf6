// One entry of a lesson's work: "ring", "ring / 1..70", "border / pass 2", "border / pass 1 / 1..46", "heart / bars / 1..8", "wash", "cut out".
#pragma once

#include <optional>

#include "file/tables.h"

namespace file {

/// Faults point into the text. What hangs on a part with faults of its own (its passes, its stitches) is not checked.
std::optional<course::WorkItem> read_work_item(const Node& node, Reading& reading);

}  // namespace file
