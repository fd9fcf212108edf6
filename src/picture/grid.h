// The cloth's threads as a grid, every fourth heavier, in either convention: a line for each thread (holes are the squares), or a line for
// each row of holes (threads are the squares, holes the crossings).
#pragma once

#include "course/choices.h"
#include "picture/view.h"

namespace picture {

/// `origin`: a hole from which fours are counted.
void draw_grid(list::List& list, const View& view, course::Line line, cloth::Hole origin);

}  // namespace picture
