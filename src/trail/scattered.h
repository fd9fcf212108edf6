// Needle order of runs that may follow one another in any order.
#pragma once

#include "trail/trail.h"

namespace trail {

/// As plan_round for scattered runs; a line. Law 2 and what must stay clear come before the thread on the back.
Round scattered_round(const stitch::Pass& pass, const Rules& rules);

}  // namespace trail
