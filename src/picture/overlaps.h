// What lies on what on a finished page. Pages are made so that there is nothing to report; tests hold every page against it.
#pragma once

#include <string>
#include <vector>

#include "list/list.h"
#include "list/measure.h"

namespace picture {

/// Each fault in a few words, for developers, none on a good page: numbers on stitches, marks of holes, rulers, leaders, numbers or outside
/// their picture; a ruler on a stitch; lines of type on one another or on a picture; type nearer than 10 mm to the paper's edge. A number
/// on the map may stand on a line of what is not stitched yet.
std::vector<std::string> overlaps(const list::List& list, const list::Measure& measure);

}  // namespace picture
