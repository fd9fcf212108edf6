// The part of close_ups_corners.h that is about looped stitches (buttonhole). At an outer corner stitches share the inner hole, at an inner
// one the hole on the ridge.
#pragma once

#include "guide/close_ups_corners.h"

namespace guide {

/// `around`: two stitches on either side of those that share a hole.
std::vector<Corner> loop_corners(const Needle& needle, const Span& within);
cloth::Hole loop_corner_hole(const Needle& needle, const Corner& corner);
/// Seven stitches, with needle points 1 to 15; not past a corner unless one comes at once.
Span first_loops(const Needle& needle, const Span& section);
Span last_loops(const Span& section);
void tell_loop_corner(const Needle& needle, const Corner& corner, CloseUp& close_up);

}  // namespace guide
