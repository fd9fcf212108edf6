// Where stitches of a line meet other than end to end.
#pragma once

#include <optional>
#include <span>
#include <utility>

#include "cloth/hole.h"

namespace stitch {

/// The first stitch that crosses or lies on another, and the first other one it meets (in the sense of cloth::meet_inside). All stitches
/// are two threads long, in the eight ways. Time grows as n log n, however many lie on one another.
std::optional<std::pair<int, int>> first_meeting(std::span<const cloth::Stitch> stitches);

/// The first stitch that begins in the hole where an earlier one begins too, and that earlier one: rows that run through one hole.
std::optional<std::pair<int, int>> first_shared_start(std::span<const cloth::Stitch> stitches);

}  // namespace stitch
