// The rules by which openings are filled: [{ kind = "dove's eye", where = "all" }, { kind = "none", where = [[10, 2]], turn = 4 }].
#pragma once

#include <optional>
#include <vector>

#include "file/fault_list.h"
#include "file/node.h"
#include "stitch/kind.h"

namespace file {

/// Every faulty rule is told.
std::optional<std::vector<stitch::FillingRule>> read_fillings(const Node& node, FaultList& faults);

}  // namespace file
