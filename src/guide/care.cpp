#include "guide/care.h"

#include <algorithm>
#include <cmath>

namespace guide {
namespace {

Care weight(double seconds) { return seconds > 0 ? std::llround(std::min(seconds, 1000.0) * 1e6) : 0; }

}  // namespace

Costs::Costs(const course::CountCost& cost)
    : glance_(weight(cost.glance)),
      each_(weight(cost.each)),
      second_leg_(weight(cost.second_leg)),
      under_(weight(cost.under_stitches)),
      plain_(weight(cost.plain_landmark)),
      glance_to_(std::max(0, cost.glance_to)) {}

Care Costs::counted(int things) const {
  const int at_a_glance = std::min(things, glance_to_);
  return glance_ * at_a_glance + each_ * (things - at_a_glance);
}

Care Costs::least(int across, int down) const { return counted(across) + counted(down) + (across > 0 && down > 0 ? second_leg_ : 0); }

Care Costs::least_together(int threads) const {
  const Care one_leg = counted(threads);
  if (each_ <= glance_) return one_leg;
  const int at_a_glance = static_cast<int>(std::min<std::int64_t>(threads, std::int64_t{2} * glance_to_));  // in both legs
  return std::min(one_leg, second_leg_ + glance_ * at_a_glance + each_ * (threads - at_a_glance));
}

Care Costs::care(double seconds) { return std::isnan(seconds) ? 0 : static_cast<Care>(std::ceil(std::clamp(seconds, 0.0, 1e9) * 1e6)); }

}  // namespace guide
