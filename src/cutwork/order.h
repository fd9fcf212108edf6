// The order of the snips: area by area, in each block by block as the blocks are worked, the opposite end straight after.
#pragma once

#include "cutwork/search.h"

namespace cutwork {

std::vector<Cut> cuts_in_order(const Request& request, const std::vector<Taken>& taken);

}  // namespace cutwork
