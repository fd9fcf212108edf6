// Which openings lie side by side, and which fillings the rules give them.
#pragma once

#include "cutwork/needlework.h"

namespace cutwork {

/// For each opening the bars round it: above, to the right, below, to the left, where there is one at the middle of that side; else -1.
using Sides = std::array<int, 4>;
std::vector<Sides> sides_of(const Cutting& cutting);

/// Upright rectangles that a filling fits into.
bool can_be_filled(const Opening& opening);

/// What each opening gets; what cannot be had is told.
std::vector<stitch::Filling> fillings_of(const Cutting& cutting, const Wish& wish, std::vector<NotFilled>& not_filled);

}  // namespace cutwork
