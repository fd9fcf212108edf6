// The limits of density: 72 is a screen of old, 1200 a fine printer; an A4 page at 1200 takes nearly a gigabyte to draw.
#include "paint/cairo/dpi.h"

#include <fmt/core.h>

namespace paint {

base::Result<void> check_dpi(double dpi) {
  constexpr double least = 72, most = 1200;
  if (dpi >= least && dpi <= most) return {};
  return base::trouble(base::TroubleKind::output, fmt::format("{} dots per inch cannot be drawn, only {} to {}", dpi, least, most));
}

}  // namespace paint
