#include "guide/close_ups_corners.h"

#include "guide/close_ups_blocks.h"
#include "guide/close_ups_rows.h"

namespace guide {

cloth::Hole corner_hole(const Needle& needle, const Corner& corner) {
  return needle.rows() ? row_corner_hole(needle, corner) : block_corner_hole(needle, corner);
}

Span first_stitches(const Needle& needle, const Span& section) {
  return needle.rows() ? first_row_stitches(needle, section) : first_blocks(needle, section);
}

Span last_stitches(const Needle& needle, const Span& section) {
  return needle.rows() ? last_row_stitches(section) : last_block(needle, section);
}

void tell_corner(const Needle& needle, const Corner& corner, CloseUp& close_up) {
  needle.rows() ? tell_row_corner(needle, corner, close_up) : tell_block_corner(needle, corner, close_up);
}

}  // namespace guide
