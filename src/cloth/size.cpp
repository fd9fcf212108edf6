#include "cloth/size.h"

namespace cloth {

Count per_cm(double threads) { return {threads * 2.54}; }

double mm(double threads, Count count) { return threads * 25.4 / count.per_inch; }

}  // namespace cloth
