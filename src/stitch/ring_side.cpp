// Even-odd by counting the sides left of a point in its row. Between two lattice rows every side is one straight piece, so that sorted
// pieces answer for a point just beside a corner without a word about fractions.
#include "stitch/ring_side.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace stitch {

RingInside::RingInside(const std::vector<cloth::Hole>& corners, int unit) : origin_(corners.front()), unit_(unit) {
  for (std::size_t i = 0; i < corners.size(); ++i) add_side(corners[i], corners[(i + 1) % corners.size()]);
  std::sort(by_upper_.begin(), by_upper_.end());
  std::sort(by_lower_.begin(), by_lower_.end());
}

void RingInside::add_side(cloth::Hole from, cloth::Hole to) {
  if (to.y < from.y) std::swap(from, to);
  const int rows = (to.y - from.y) / unit_;
  const int sideways = ((to.x > from.x) - (to.x < from.x));
  cloth::Hole upper{(from.x - origin_.x) / unit_, (from.y - origin_.y) / unit_};
  for (int i = 0; i < rows; ++i, ++upper.y, upper.x += sideways) {
    by_upper_.push_back({upper.y, upper.x, upper.x + sideways});
    by_lower_.push_back({upper.y, upper.x + sideways, upper.x});
  }
}

bool RingInside::odd_before(const std::vector<Piece>& pieces, Piece piece) {
  const auto first = std::lower_bound(pieces.begin(), pieces.end(), Piece{piece.row, std::numeric_limits<int>::min(), 0});
  return (std::lower_bound(first, pieces.end(), piece) - first) % 2 != 0;
}

bool RingInside::holds(cloth::Hole corner, cloth::Way towards) const {
  constexpr int least = std::numeric_limits<int>::min();
  const int x = (corner.x - origin_.x) / unit_, y = (corner.y - origin_.y) / unit_;
  switch (towards) {
    case cloth::Way::S:
      return odd_before(by_upper_, {y, x, x});
    case cloth::Way::N:
      return odd_before(by_lower_, {y - 1, x, x});
    case cloth::Way::E:
      return odd_before(by_upper_, {y, x + 1, least});
    default:
      return odd_before(by_upper_, {y, x, least});
  }
}

bool on_right(cloth::Way in, cloth::Way out, cloth::Way towards) {
  const auto clockwise_from_out = [out](cloth::Way way) { return (static_cast<int>(way) - static_cast<int>(out) + 8) % 8; };
  const int back = clockwise_from_out(cloth::turned(in, 4));
  const int there = clockwise_from_out(towards);
  return 0 < there && there < back;
}

}  // namespace stitch
