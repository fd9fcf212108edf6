// How one filling is worked: where its thread is caught, in which order, and how long it is.
#pragma once

#include "cutwork/openings.h"

namespace cutwork {

/// `tall`: a thread of the cloth down, in threads across, the unit of `FillingWork::threads`.
/// From the middle of side `from` (of Sides: 0 above, 1 right, 2 below, 3 left), clockwise.
FillingWork doves_eye(const Cutting& cutting, int opening, const Sides& sides, int from, double tall);
/// From a corner (0 upper left, then clockwise).
FillingWork square_filet(const Cutting& cutting, int opening, int from, double tall);
FillingWork wheel(const Cutting& cutting, int opening, int from, double tall);

inline constexpr int wheel_rounds = 3;

}  // namespace cutwork
