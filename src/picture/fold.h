// The folds of the cloth, where a count begins at its middle: two long-dashed lines that cross in the middle hole.
#pragma once

#include "picture/geometry.h"

namespace picture {

void draw_folds(list::List& list, Point middle, const Rect& frame);
/// The two lines, as far as the frame goes.
std::vector<Capsule> fold_lines(Point middle, const Rect& frame);

inline constexpr double fold_radius = 0.9;  // mm, of the dot where they cross

}  // namespace picture
