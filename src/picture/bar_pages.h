// What a lesson's pages show and say of bars and fillings: the route with its numbers, one bar as the needle goes, each filling step by
// step, the ends.
#pragma once

#include "picture/bar_cloth.h"
#include "picture/cut_pages.h"

namespace picture {

struct BarRooms {
  double width = 97;                         ///< of close-ups, mm
  double map_width = 178, map_height = 140;  ///< mm
};

/// Empty where the lesson works none. `letters`: how many letters the lesson's pictures have used already.
std::vector<CutPiece> bar_pieces(const Sheet& sheet, const BarRooms& rooms, int letters);

// Its words (tell_bars.cpp).
Telling tell_bar_map(const Sheet& sheet, const BarWork& work, bool several);
Telling tell_bar(const Sheet& sheet, const BarWork& work, int item);
Telling tell_filling(const Sheet& sheet, const BarWork& work, int item, int filling, int alike);
Telling tell_picot(const Sheet& sheet, const BarWork& work, int item);
Telling tell_bar_ends(const Sheet& sheet, const BarWork& work);

}  // namespace picture
