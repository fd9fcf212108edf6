// The piece of cloth that a close-up shows.
#pragma once

#include <string>

#include "guide/close_ups_needle.h"

namespace guide {

/// Holds the points of the numbered stitches, the thread's way on the back between them and `also`, with room for marks and numbers round
/// them; at least 12 threads wide and 10 high.
cloth::Box window_round(const Needle& needle, const Span& numbered, const Span& also = {});

/// 0: "A", 25: "Z", 26: "AA".
std::string letter(int number);

}  // namespace guide
