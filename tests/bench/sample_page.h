// A page as full as a handout gets, for measuring painters: two close-ups with grid, stitches, thread on the back, holes and numbers, a map
// of the whole design, and about 2 kB of type. Its contents are invented.
#pragma once

#include "list/list.h"
#include "list/measure.h"

namespace bench {

enum class Ink { coloured, grey };
list::List sample_page(const list::Measure& measure, Ink ink);

}  // namespace bench
