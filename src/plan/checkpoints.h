// How much is stitched by each corner, for a student to make sure on the way.
#pragma once

#include <vector>

#include "plan/plan.h"

namespace plan {

/// Of every section with two corners or more, each corner; the lessons must be there. Scattered pieces have none. In time linear in the
/// stitches.
[[nodiscard]] std::vector<Checkpoint> checkpoints(const course::Course& course, const Plan& plan);

}  // namespace plan
