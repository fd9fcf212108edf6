// The room that an item takes on the page: for hit-testing, for "nothing lies on another", and to see whether a page holds what is on it.
#pragma once

#include "list/list.h"
#include "list/measure.h"

namespace list {

/// The smallest upright rectangle, in mm, round all that the item inks, line widths and caps with it (joins are round, so half a line's
/// width on every side is enough). Type: its advance by its font's ascent and descent, a little more than its ink. A clip: its rectangle,
/// or nothing for ClipOut. An item that inks nothing (no points, no line and no filling) gives an empty rectangle, all 0.
[[nodiscard]] Rect bounds(const Item& item, const Measure& measure);

/// The left end of a line of type of this width, mm.
[[nodiscard]] constexpr double left_end(const Text& text, double width) {
  return text.align == Align::left ? text.at.x : text.align == Align::centre ? text.at.x - width / 2 : text.at.x - width;
}

/// The smallest rectangle round both; an empty one (w and h 0) counts for nothing.
[[nodiscard]] Rect join(const Rect& one, const Rect& other);
[[nodiscard]] bool contains(const Rect& rect, Point point);
[[nodiscard]] bool overlap(const Rect& one, const Rect& other);  ///< touching edges do not overlap

}  // namespace list
