// The part of close_ups_corners.h that is about runs worked one after another (blocks).
#pragma once

#include "guide/close_ups_corners.h"

namespace guide {

cloth::Hole block_corner_hole(const Needle& needle, const Corner& corner);
Span first_blocks(const Needle& needle, const Span& section);
Span last_block(const Needle& needle, const Span& section);
void tell_block_corner(const Needle& needle, const Corner& corner, CloseUp& close_up);

}  // namespace guide
