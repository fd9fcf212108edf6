// From threads to millimetres. The inch is 25.4 mm exactly (international yard and pound agreement, 1959); ISO 7211-2 counts threads per cm.
#pragma once

namespace cloth {

/// Threads an inch; a count per cm is kept as count * 2.54.
struct Count {
  double per_inch = 22;
};

Count per_cm(double threads);
/// Millimetres of so many threads.
double mm(double threads, Count count);

}  // namespace cloth
