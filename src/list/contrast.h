// How well a colour stands out from its ground (WCAG 2.2), whether a colour, or all of a list, is grey, and how it becomes so.
#pragma once

#include "list/list.h"

namespace list {

/// Relative luminance of an sRGB colour, 0 (black) to 1 (white). WCAG 2.2, "relative luminance".
[[nodiscard]] double luminance(Colour colour);

/// (lighter + 0.05) / (darker + 0.05), 1 to 21, whichever way round the two are given. WCAG 2.2, "contrast ratio": text needs 4.5, large
/// text and graphics 3.
[[nodiscard]] double contrast(Colour one, Colour other);

[[nodiscard]] constexpr bool is_grey(Colour colour) { return colour.r == colour.g && colour.g == colour.b; }

/// The grey of the same relative luminance, to the nearest of 256: contrasts stay as they are.
[[nodiscard]] Colour grey_of(Colour colour);
/// The list with each of its colours as grey.
[[nodiscard]] List in_grey(List list);

/// True when every colour that the list really paints is a grey; an outline of width 0 paints none.
[[nodiscard]] bool all_grey(const List& list);

}  // namespace list
