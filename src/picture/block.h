// A piece of a page as the flow sees it: how high it is, what it uses, how it is drawn.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "picture/map.h"

namespace picture {

struct Block {
  double height = 0;   ///< mm
  double before = 0;   ///< white space above, except at the top of a page
  bool keep = false;   ///< not parted from the next block where a page holds all that is kept together
  bool bound = false;  ///< not parted from the next block even then: a heading and its text, lines of a paragraph
  Uses uses;
  std::vector<MapFrame> frames;                        ///< close-ups in it, for the map
  std::vector<std::pair<std::string, double>> scales;  ///< letter and mm a thread of each
  bool gridded = false;                                ///< it shows a grid
  bool cutting = false;                                ///< it shows cutting: its page carries the cautions
  bool corners = false;                                ///< it speaks of the corners to be tacked
  std::optional<Rect> aside;                           ///< room at its side, seen from its top left corner, where the page's key may stand
  std::function<void(list::List&, Point)> draw;
  std::shared_ptr<std::vector<Block>> parts;  ///< the same in smaller pieces, for where no page holds it whole
};

}  // namespace picture
