#include "guide/close_ups_corners.h"

#include "guide/close_ups_blocks.h"
#include "guide/close_ups_loops.h"
#include "guide/close_ups_rows.h"

namespace guide {

std::vector<Corner> corners(const Needle& needle, const Span& within) {
  if (needle.looped()) return loop_corners(needle, within);
  return needle.rows() ? row_corners(needle, within) : bends(needle, within);
}

cloth::Hole corner_hole(const Needle& needle, const Corner& corner) {
  if (needle.looped()) return loop_corner_hole(needle, corner);
  return needle.rows() ? row_corner_hole(needle, corner) : block_corner_hole(needle, corner);
}

Span first_stitches(const Needle& needle, const Span& section) {
  if (needle.looped()) return first_loops(needle, section);
  return needle.rows() ? first_row_stitches(needle, section) : first_blocks(needle, section);
}

Span last_stitches(const Needle& needle, const Span& section) {
  if (needle.looped()) return last_loops(section);
  return needle.rows() ? last_row_stitches(section) : last_block(needle, section);
}

void tell_corner(const Needle& needle, const Corner& corner, CloseUp& close_up) {
  if (needle.looped()) return tell_loop_corner(needle, corner, close_up);
  needle.rows() ? tell_row_corner(needle, corner, close_up) : tell_block_corner(needle, corner, close_up);
}

}  // namespace guide
