// The steps at the end that need no thread, as work of lessons: the wash, and the cutting out along the edges (Archer 1911, ch. XII: last of all, after
// the wash).
#pragma once

#include <string_view>
#include <vector>

#include "plan/plan.h"

namespace plan {

/// As the course file names it: "wash", "cut out".
std::string_view work_name(Finish finish);
/// The wash by the teacher's habit; the cutting out by the stitches of all edges and the speed "cut-out" (stitches of the edge passed a minute).
double minutes_of(const course::Course& course, Finish finish);
/// What the lessons have of them, all or only the locked ones, in the order of the lessons.
std::vector<Finishing> finishing_written(const course::Course& course, bool locked_only);
/// What the program puts behind all other work: both where an edge is to be cut out, and whatever the teacher's lessons have.
bool finishing_wanted(const course::Course& course, Finish finish);

}  // namespace plan
