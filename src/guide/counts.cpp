#include "guide/counts.h"

#include <algorithm>
#include <cstdlib>

namespace guide {
namespace {

std::vector<Leg> legs_over(cloth::Hole from, cloth::Hole to, First first) {
  const int across = to.x - from.x, down = to.y - from.y;
  std::vector<Leg> legs;
  if (down != 0) legs.push_back({down > 0 ? cloth::Way::S : cloth::Way::N, std::abs(down)});
  if (across != 0) {
    const Leg leg{across > 0 ? cloth::Way::E : cloth::Way::W, std::abs(across)};
    legs.insert(first == First::across ? legs.begin() : legs.end(), leg);
  }
  return legs;
}

}  // namespace

Counted counted_legs(const Costs& costs, const Hidden& hidden, cloth::Hole from, cloth::Hole to, When now, First first) {
  const auto under = [&](First order) {
    const cloth::Hole turn = order == First::down ? cloth::Hole{from.x, to.y} : cloth::Hole{to.x, from.y};
    return costs.under(hidden.threads(from, turn, now) + hidden.threads(turn, to, now));
  };
  const Care least = costs.least(std::abs(to.x - from.x), std::abs(to.y - from.y));
  const First other = first == First::down ? First::across : First::down;
  const Care as_asked = under(first);
  const Care otherwise = as_asked > 0 ? under(other) : as_asked;
  const First order = otherwise < as_asked ? other : first;
  return {legs_over(from, to, order), least + std::min(as_asked, otherwise)};
}

}  // namespace guide
