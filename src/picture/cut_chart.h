// The chart of the screen where the cloth is cut: the ground with threads out and threads left, and the snip that is at hand.
#pragma once

#include "picture/chart.h"

namespace picture {

/// Under the stitches: where both threads are out the cloth is open, where one is out the others lie across. The view's `cuts` must be
/// there.
void draw_cut_ground(list::List& list, const ChartView& view, const ChartColours& colours);
/// Over them: the cutting whose snip comes next, with the threads that it takes, its number on the block, the scissors at the snip. Nothing
/// once all snips of the lesson are made.
void draw_snip_at_hand(list::List& list, const ChartView& view, const ChartColours& colours);

}  // namespace picture
