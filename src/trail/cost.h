// What a needle order costs, in the order of the laws and wishes: compared from the first line on, each counts only among equals before it.
#pragma once

#include <compare>
#include <cstdint>

namespace trail {

struct Cost {
  std::int32_t broken = 0;    ///< up in the hole just gone down in
  std::int32_t crossing = 0;  ///< back thread through what must stay clear
  std::int32_t showing = 0;   ///< back thread beside the two blocks it joins, where a free corner would show it
  std::int32_t far_back = 0;  ///< steps back that neither touch a corner or end nor are, or are next to, stitches over
  std::int32_t steps_back = 0;
  std::int64_t off_corner = 0;  ///< stitches between steps back and the corners that they should touch
  std::int32_t wrong_side = 0;  ///< stitches that do not go down on the side that will be cut
  std::int64_t thread = 0;      ///< on the back, in millionths of a thread: whole numbers, so that equals are equal

  friend auto operator<=>(const Cost&, const Cost&) = default;
  Cost& operator+=(const Cost& o) {
    broken += o.broken;
    crossing += o.crossing;
    showing += o.showing;
    far_back += o.far_back;
    steps_back += o.steps_back;
    off_corner += o.off_corner;
    wrong_side += o.wrong_side;
    thread += o.thread;
    return *this;
  }
  Cost& operator-=(const Cost& o) {
    broken -= o.broken;
    crossing -= o.crossing;
    showing -= o.showing;
    far_back -= o.far_back;
    steps_back -= o.steps_back;
    off_corner -= o.off_corner;
    wrong_side -= o.wrong_side;
    thread -= o.thread;
    return *this;
  }
  friend Cost operator+(Cost a, const Cost& b) { return a += b; }
};

}  // namespace trail
