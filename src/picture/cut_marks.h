// The marks of cutting, drawn alike in close-ups, on the map of cuttings and in the key. `unit`: mm a thread.
#pragma once

#include <string_view>

#include "list/measure.h"
#include "picture/marks.h"

namespace picture {

/// Slanting strokes and an outline: threads that are cut and come out.
void draw_hatch(list::List& list, const Rect& rect, double unit);
/// Where threads are out already.
void draw_gone(list::List& list, const Rect& rect);
/// Across one thread: here it is snipped.
void draw_snip(list::List& list, Point a, Point b, double unit);
/// Along a block's side: nothing is cut there.
void draw_fence(list::List& list, Point a, Point b, double unit);
/// A cutting's number in a ring.
void draw_cut_number(list::List& list, Point middle, const std::string& number, list::TypeStyle style, const list::Measure& measure);
double cut_number_radius(const std::string& number, list::TypeStyle style, const list::Measure& measure);
/// A block on the map with the end that is cut: which side of it, in units of the page.
void draw_block_box(list::List& list, const Rect& rect);
void draw_cut_end(list::List& list, Point a, Point b);
/// A thread woven in, over and under: its piece on the front, from a to b.
void draw_woven_piece(list::List& list, Point a, Point b, double unit);
/// The same where it runs hidden under stitches.
void draw_woven_under(list::List& list, Point a, Point b, double unit);

/// The phrase of a mark of cutting; "" for every other mark.
std::string_view cut_mark_key(Mark mark);
void draw_cut_mark_sign(list::List& list, Mark mark, const Rect& room, double unit, list::TypeStyle style, const list::Measure& measure);

}  // namespace picture
