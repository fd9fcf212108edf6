// Where in a trail the thread may well be changed.
#pragma once

#include <cstdint>
#include <vector>

#include "trail/trail.h"

namespace trail {

/// How good each place is for a new thread to start: 0 the best.
struct Changes {
  std::vector<std::uint8_t> grades;  ///< of each stitch, as the first of a new thread
  int last_clear = 0;                ///< grades up to this one lie more than two stitches from any corner
};
inline constexpr int worst_grade = 5;

Changes grade_changes(const std::vector<Worked>& stitches, stitch::Order order);

}  // namespace trail
