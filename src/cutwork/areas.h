// The areas that the blocks enclose, with rows of blocks four threads apart taken as whole sides. Where a ring is open by a little, the gap
// is told and closed for the search, so that what else is wrong can be told as well.
#pragma once

#include "cutwork/runs.h"

namespace cutwork {

struct Areas {
  Runs runs;
  std::vector<bool> chosen;  ///< of each area: is it to be cut?
};

Areas find_areas(const Request& request, Walls walls, std::vector<Problem>& problems);

}  // namespace cutwork
