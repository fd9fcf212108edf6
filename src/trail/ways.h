// The cheapest ways for a given order of units.
#pragma once

#include <vector>

#include "trail/links.h"

namespace trail {

/// One way for each unit: exact, by dynamic programming over the way of the last unit. Of equally cheap ones that which keeps the lower way
/// longest, counted from unit `cut` (of blocks, that which spends its back thread latest); so where every cheapest one is forward at the cut
/// and between corners, each corner is settled by itself, and like corners alike. `cut` is 0 for a line.
std::vector<Way> cheapest_ways(const Links& links, std::size_t cut);

}  // namespace trail
