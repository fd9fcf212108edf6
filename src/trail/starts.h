// Where a trail may begin in a round: what Round::starts holds.
#pragma once

#include <vector>

#include "trail/trail.h"

namespace trail {

/// Of a line only its first stitch; else, rising: of rows worked turn about the first stitch of level pairs that are worked forward and
/// have two other pairs of their leg on either side, on a leg too short for that one; where there is none, of any worked forward; at last of any.
/// Of blocks the first stitch of every one; of a row worked alone its stitches between others of their leg that are worked forward.
std::vector<int> starts_of(const stitch::Pass& pass, const Round& round);

}  // namespace trail
