// Pictures of bars and fillings: the route with its numbers, one bar as the needle goes, a filling step by step.
#pragma once

#include "picture/bar_cloth.h"

namespace picture {

/// The lesson's bars or fillings with their numbers, the ways between them, where a thread begins. What does not fit on one picture is
/// parted; `width` and `height` in mm.
std::vector<Picture> bar_maps(const Sheet& sheet, const BarWork& work, double width, double height);

/// How much larger than on a usual page type is: close-ups grow with it.
double times_larger(const Styles& styles);

/// The needle's points on one bar: two figures of eight, or turns, laid loosely.
Picture bar_picture(const Sheet& sheet, const BarWork& work, int item, double width);

/// A filling in four pictures of one, each with a further loop or leg; of item `item`, its filling `filling`.
Picture filling_picture(const Sheet& sheet, const BarWork& work, int item, int filling, double width);

/// A picot at the middle of a bar, in two.
Picture picot_picture(const Sheet& sheet, const BarWork& work, int item, double width);

}  // namespace picture
