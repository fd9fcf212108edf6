// Chooses how a pass is planned, by its order.
#include <cmath>

#include "base/require.h"
#include "trail/chain.h"
#include "trail/rounds.h"

namespace trail {

std::int64_t fine(cloth::Hole a, cloth::Hole b) {
  constexpr double millionths = 1e6;
  return std::llround(std::sqrt(static_cast<double>(cloth::squared(a, b))) * millionths);
}

Round plan_round(const stitch::Pass& pass, const Rules& rules) {
  const Clear clear(rules.keep_clear);
  if (pass.order == stitch::Order::in_turn) return in_turn(pass, clear);
  base::require(pass.runs.size() == 2, "turn about needs two rows");
  return turn_about(pass, clear);
}

}  // namespace trail
