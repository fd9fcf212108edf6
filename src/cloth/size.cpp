#include "cloth/size.h"

#include <cmath>

namespace cloth {

Count per_cm(double threads) { return {threads * 2.54}; }

double mm(double threads, Count count) { return threads * 25.4 / count.per_inch; }

double mm_down(double threads, Count count) { return threads * 25.4 / count.down(); }

double mm_a_thread(Count count) { return (mm(1, count) + mm_down(1, count)) / 2; }

double distance(Hole a, Hole b, double tall) {
  const double dx = double{1} * a.x - b.x, dy = tall * (double{1} * a.y - b.y);
  return std::sqrt(dx * dx + dy * dy);
}

}  // namespace cloth
