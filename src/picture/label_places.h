// Where one number may stand: places round its hole at rising distance that touch nothing, each with its cost.
#pragma once

#include "picture/labels.h"

namespace picture {

/// How many places are looked at: few at first, more where these do not do.
struct PlaceSearch {
  int enough = 16;        ///< good ones looked for
  std::size_t kept = 40;  ///< cheapest ones kept
};

struct LabelPlace {
  PlacedLabel placed;
  Rect room;   ///< the box and what parts it from the next number
  Rect reach;  ///< room and leader together
  double cost = 0;
};

/// Cheapest first; empty where there is no room at all.
std::vector<LabelPlace> places_for(Label label, const Surroundings& around, list::TypeStyle style, const list::Measure& measure,
                                   const PlaceSearch& search);

/// Would the two lie on one another, or one on the other's leader?
bool clash(const LabelPlace& a, const LabelPlace& b);

}  // namespace picture
