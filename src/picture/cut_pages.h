// What a lesson's pages show and say of its cuttings, piece by piece: what is looked over before, the map, close-ups with their words, the
// order, and how a snip that went wrong is mended. No page and no screen shows a piece without the cautions.
#pragma once

#include <optional>

#include "picture/cut_picture.h"
#include "picture/map.h"
#include "picture/table.h"
#include "picture/telling.h"

namespace picture {

struct CutPiece {
  std::string letter;  ///< of a close-up
  std::string name;    ///< for files: "cut-map-1", "d", "mend"; "" where it has no picture
  std::optional<Picture> picture;
  bool gridded = false;  ///< the picture has a grid
  bool part_of_area = false;  ///< a map in several pictures
  Telling telling;
  std::vector<MapFrame> frames;
  std::optional<Table> table;
};

struct CutRooms {
  CutRoom close_up{97, 130}, mend{97, 130};
  double map_width = 178, map_height = 140;  ///< mm
};

/// Empty where the lesson cuts nothing.
std::vector<CutPiece> cut_pieces(const Sheet& sheet, const CutRooms& rooms);

// Its words (tell_cut.cpp).
Telling tell_before_cutting(const Sheet& sheet, const CutWork& work, bool several);
/// "Ready to cut?": one for each sort of area.
std::vector<Telling> tell_ready(const Sheet& sheet, const CutWork& work);
Table table_of_areas(const Sheet& sheet, const CutWork& work);
Telling tell_cut_map(const Sheet& sheet, const CutWork& work, const std::vector<int>& numbers, bool several);
struct CutTold {
  std::vector<int> shown;             ///< cuttings in the picture, its own first
  std::vector<int> alike;             ///< others that look the same
  std::optional<guide::Count> count;  ///< to the hole of its own, where that is told
  bool first = false;
  std::string first_letter;  ///< of the picture that tells the check in full
};
Telling tell_cutting(const Sheet& sheet, const CutWork& work, const CutTold& told);
Table table_of_order(const Sheet& sheet, const CutWork& work);
Telling tell_mending(const Sheet& sheet, const CutWork& work, int number);
Table table_of_new_threads(const Sheet& sheet, const CutWork& work);
/// The tables of all the lesson's cuttings, in order.
std::vector<Table> cut_tables(const Sheet& sheet);

}  // namespace picture
