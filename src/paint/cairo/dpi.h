// Which densities can be drawn and written.
#pragma once

#include "base/result.h"

namespace paint {

/// 72 to 1200 dots per inch; anything else (not a number, too) is a Trouble.
base::Result<void> check_dpi(double dpi);

}  // namespace paint
