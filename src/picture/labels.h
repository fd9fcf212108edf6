// Where numbers stand: each near its hole, none on another, on a stitch, on a hole's mark or on the ruler. Candidates stand round the hole
// at rising distance; conflicts are worked off one by one, always in the same order, so that the same picture comes out every time.
#pragma once

#include <string>
#include <vector>

#include "list/measure.h"
#include "picture/geometry.h"

namespace picture {

/// The room that a number's ink takes when its base line begins at `at`: figures stand as high as capitals, a comma
/// hangs a little below, and letters reach further both ways.
Rect number_room(std::string_view text, list::TypeStyle style, const list::Measure& measure, Point left_end);

struct Label {
  Point hole;
  double radius = 0;  ///< of the mark at the hole
  std::string text;
  std::vector<Point> also = {};  ///< further places by which it may stand instead: the corners of a frame
};

struct Surroundings {
  Rect frame;                  ///< labels stand inside it
  std::vector<Capsule> solid;  ///< stitches being worked, marks, rulers: never touched, and leaders keep off them where they can
  std::vector<Capsule> pale;   ///< stitches made before or not yet: never touched, but a leader may cross them
  std::vector<Rect> boxes;     ///< numbers that stand already: never touched
  std::vector<Capsule> thin;   ///< broken lines: touched only where nothing better is left
};

struct PlacedLabel {
  Rect box;          ///< of the ink
  Point base;        ///< left end of the base line
  bool led = false;  ///< it stands off and has a leader
  Point from, to;    ///< the leader
};

inline constexpr double good_place = 16;  ///< cost below which a number stands well

struct Placement {
  std::vector<PlacedLabel> labels;  ///< beside the labels asked for
  bool clean = true;                ///< no two meet, and none meets anything solid
  double strain = 0;                ///< of the number that stands worst: above 16 its leader runs over a stitch or it stands far off
};

Placement place_labels(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure);

}  // namespace picture
