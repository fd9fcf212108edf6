// The count-in drawn as a ruler: a tick for each hole, a number for each thread counted, joined to its landmark and to the hole it leads
// to. It stands clear of stitches: beside the way that is counted where the way itself is not free.
#pragma once

#include <string>
#include <vector>

#include "guide/guide.h"
#include "list/measure.h"
#include "picture/view.h"

namespace picture {

struct RulerGround {
  std::vector<Capsule> stitched;  ///< stitches that are there, and marks at holes: to be kept clear of
  std::vector<Capsule> later;     ///< stitches that are not: crossed where there is no other way
  std::vector<Capsule> landmark;  ///< the landmark's own: the ruler may touch it, its numbers not
};

struct Ruler {
  struct Number {
    Point base;  ///< left end of its base line
    Rect box;
    std::string text;
  };
  std::vector<Capsule> lines;  ///< ruler, ticks and joints
  std::vector<Number> numbers;
  std::vector<Capsule> turns;  ///< the hole where a count of two legs turns, where no stitch lies over it
  bool clear = true;           ///< it meets nothing that is stitched
};

/// Legs from the landmark's hole on. Numbers stand on threads; where these lie too close, at every second, fifth or tenth.
Ruler make_ruler(cloth::Hole from, const std::vector<guide::Leg>& legs, const View& view, const RulerGround& ground, list::TypeStyle style,
                 const list::Measure& measure);

void draw_ruler(list::List& list, const Ruler& ruler, list::TypeStyle style);

}  // namespace picture
