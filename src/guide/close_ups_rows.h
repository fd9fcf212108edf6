// The part of close_ups_corners.h that is about rows worked turn about.
#pragma once

#include "guide/close_ups_corners.h"

namespace guide {

cloth::Hole row_corner_hole(const Needle& needle, const Corner& corner);
Span first_row_stitches(const Needle& needle, const Span& section);
Span last_row_stitches(const Span& section);
void tell_row_corner(const Needle& needle, const Corner& corner, CloseUp& close_up);

}  // namespace guide
