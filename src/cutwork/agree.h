// Do the two methods say the same?
#pragma once

#include "cutwork/search.h"
#include "cutwork/simulate.h"

namespace cutwork {

/// A place where they differ, or nothing. `over` is what the first method found lying over.
std::optional<cloth::Hole> where_they_differ(const Request& request, const Search& search, const Over& over, const Simulated& simulated);

}  // namespace cutwork
