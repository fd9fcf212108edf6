// The places of a trail at which its rhythm changes: corners of rows worked turn about, and of blocks the bends and the steps from one to
// the next. What of a trail's neighbourhood is compared, and shown, is said here alone.
#pragma once

#include "guide/close_ups_needle.h"

namespace guide {

struct Corner {
  int turn = 0;  ///< first stitch of the new leg; of blocks: first stitch of the block after
  Span core;     ///< rows: stitches worked outside the rhythm, maybe none; blocks: the block at the bend, or the stitches on either side of
                 ///< the step; loops: the stitches that share a hole
  Span around;   ///< what is compared and shown
};

/// Rows: row_corners, blocks: bends, looped stitches: loop_corners (close_ups_loops.h).
std::vector<Corner> corners(const Needle& needle, const Span& within);

/// Corners whose turn lies within: the leg changes between two of its stitches. Rising by turn. `around` is up to four stitches of the
/// rhythm on either side of what is worked at the corner, less where the leg is shorter; it may run over the end of a circle, never of a
/// line.
std::vector<Corner> row_corners(const Needle& needle, const Span& within);
/// The corner that turns with this stitch.
Corner row_corner(const Needle& needle, int turn);

/// Blocks at which the flight changes its way, both steps worked within. `around`: the block and two stitches before and after.
std::vector<Corner> bends(const Needle& needle, const Span& within);
/// Steps between neighbouring blocks worked within. `around`: two stitches on either side.
std::vector<Corner> steps(const Needle& needle, const Span& within);

/// The hole that names the place: rows: the corner hole of the first row; blocks: the hole both blocks share, else where the needle comes
/// up.
cloth::Hole corner_hole(const Needle& needle, const Corner& corner);

/// The first stitches of a section, for its start; not past a corner unless one comes at once.
Span first_stitches(const Needle& needle, const Span& section);
/// The last stitches of a section.
Span last_stitches(const Needle& needle, const Span& section);

/// Fills in what is worked at the corner: rows with stitches over, ways, turn.
void tell_corner(const Needle& needle, const Corner& corner, CloseUp& close_up);

}  // namespace guide
