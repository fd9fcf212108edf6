// From threads to millimetres. The inch is 25.4 mm exactly (international yard and pound agreement, 1959); ISO 7211-2 counts threads per cm.
#pragma once

#include <optional>

#include "cloth/hole.h"

namespace cloth {

/// Threads an inch; a count per cm is kept as count * 2.54. Warp and weft may be counted apart.
struct Count {
  double per_inch = 22;                    ///< met on a way across
  std::optional<double> down_per_inch{};   ///< met on a way down, where that is another number

  double down() const { return down_per_inch.value_or(per_inch); }
  /// A thread on the way down, in threads on the way across: 1 where both counts are one.
  double tall() const { return per_inch / down(); }
};

Count per_cm(double threads);
/// Millimetres of so many threads on a way across, or on any way that was measured with `tall`.
double mm(double threads, Count count);
/// Millimetres of so many threads on a way down.
double mm_down(double threads, Count count);
/// Of a middling thread: where a length has no way, or many (a scale, a width of thread).
double mm_a_thread(Count count);

/// Distance in threads on the way across, one on the way down being `tall` of them.
double distance(Hole a, Hole b, double tall);

}  // namespace cloth
