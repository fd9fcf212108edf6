#include "trail/order.h"

#include <cstdint>
#include <cstdlib>
#include <limits>
#include <algorithm>

namespace trail {
namespace {

constexpr int row_distance = 2;  // threads

bool level(cloth::Hole a, cloth::Hole b) { return std::abs(a.x - b.x) + std::abs(a.y - b.y) == row_distance; }

/// The stitches of both rows on one leg: [i, i_end) of the first, [j, j_end) of the second.
struct OnLeg {
  const stitch::Run& first;
  const stitch::Run& second;
  std::size_t i, i_end, j, j_end;

  /// Moves past what lies before the first level pair into `lead_first`, `lead_second`; false where there is no level pair.
  bool find_pair(std::size_t& lead_first, std::size_t& lead_second) const {
    for (std::size_t s = 0; i + s < i_end || j + s < j_end; ++s) {
      if (i + s < i_end && j < j_end && level(first.stitches[i + s].a, second.stitches[j].a)) {
        lead_first = s, lead_second = 0;
        return true;
      }
      if (j + s < j_end && i < i_end && level(first.stitches[i].a, second.stitches[j + s].a)) {
        lead_first = 0, lead_second = s;
        return true;
      }
    }
    return false;
  }

  void take(int run, std::size_t& from, std::size_t to, std::vector<Slot>& order) const {
    while (from < to) order.push_back({run, static_cast<int>(from++), true});
  }

  /// The shortest legs may have no level pair: then whatever lies further back along the leg comes first.
  void by_projection(std::vector<Slot>& order) {
    const cloth::Hole along = first.stitches[i].b - first.stitches[i].a;
    const auto projected = [&](cloth::Hole h) { return std::int64_t{h.x} * along.x + std::int64_t{h.y} * along.y; };
    while (i < i_end && j < j_end) {
      const bool first_next = projected(first.stitches[i].a) <= projected(second.stitches[j].a);
      first_next ? take(0, i, i + 1, order) : take(1, j, j + 1, order);
    }
  }

  void work(std::vector<Slot>& order) {
    std::size_t lead_first = 0, lead_second = 0;
    if (i < i_end && j < j_end) {
      if (find_pair(lead_first, lead_second)) {
        take(0, i, i + lead_first, order);
        take(1, j, j + lead_second, order);
        for (; i < i_end && j < j_end; ++i, ++j) {
          order.push_back({0, static_cast<int>(i), false});
          order.push_back({1, static_cast<int>(j), false});
        }
      } else {
        by_projection(order);
      }
    }
    take(0, i, i_end, order);
    take(1, j, j_end, order);
  }
};

}  // namespace

std::vector<Slot> turn_about_order(const stitch::Run& first, const stitch::Run& second) {
  std::vector<Slot> order;
  order.reserve(first.stitches.size() + second.stitches.size());
  std::size_t i = 0, j = 0;
  constexpr int none = std::numeric_limits<int>::max();
  while (i < first.stitches.size() || j < second.stitches.size()) {
    const int leg = std::min(i < first.stitches.size() ? first.legs[i] : none, j < second.stitches.size() ? second.legs[j] : none);
    OnLeg here{first, second, i, i, j, j};
    while (here.i_end < first.stitches.size() && first.legs[here.i_end] == leg) ++here.i_end;
    while (here.j_end < second.stitches.size() && second.legs[here.j_end] == leg) ++here.j_end;
    i = here.i_end;
    j = here.j_end;
    here.work(order);
  }
  return order;
}

bool at_corner(const stitch::Run& row, int place, bool closed) {
  const int n = static_cast<int>(row.stitches.size());
  const auto leg = [&](int k) { return row.legs[static_cast<std::size_t>((k + n) % n)]; };
  const bool before = (place > 0 || closed) && leg(place - 1) != leg(place);
  const bool after = (place < n - 1 || closed) && leg(place) != leg(place + 1);
  return before || after;
}

}  // namespace trail
