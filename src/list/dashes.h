// The broken line of the thread behind the cloth, the same for every painter.
#pragma once

#include "list/list.h"

namespace list {

struct Dashes {
  double on = 0, off = 0;  ///< mm along the line, from the middle of one cap to the middle of the next: what a dash array wants
};

/// Three widths seen and two widths free, whatever the cap: round caps reach half a width beyond each end, so `on` is shorter by as much.
[[nodiscard]] constexpr Dashes dashes(double width, Cap cap) {
  return cap == Cap::flat ? Dashes{3 * width, 2 * width} : Dashes{2 * width, 3 * width};
}

}  // namespace list
