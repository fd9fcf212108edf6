// One close-up drawn: a piece of the cloth with its grid, stitches, numbers, thread on the back and, at a start, the count-in. Everything
// in it is drawn for one moment of the course. It knows nothing of pages or sentences.
#pragma once

#include <limits>
#include <optional>

#include "picture/labels.h"
#include "picture/marks.h"
#include "picture/numbering.h"
#include "picture/sheet.h"

namespace picture {

struct Picture {
  list::List list;  ///< its upper left corner is (0, 0)
  double width = 0, height = 0;
  double scale = 0;   ///< mm a thread
  cloth::Box window;  ///< what it shows
  Uses uses;
  bool clean = true;  ///< no number meets anything
  double strain = 0;  ///< of the number that stands worst
  bool good() const { return clean && strain < good_place; }
};

struct WindowOrder {
  cloth::Box window;
  double scale = 4;
  std::string letter;
  int trail = 0;
  int first = 0, last = 0;  ///< stitches that are numbered
  Ending ending = Ending::left_out;
  Moment moment;
  const guide::Count* count = nullptr;  ///< drawn as a ruler
  const guide::Count* proof = nullptr;  ///< its landmark is marked
  list::TypeStyle number;
  int from = 1, to = std::numeric_limits<int>::max();  ///< of the numbers only these are there
  int loop = -1;       ///< a looped stitch that is shown being made, the thread under the needle; -1: none
  bool cut = false;    ///< with the line along which the piece is cut out of the cloth
  bool bare = false;   ///< without other parts' stitches that are not there yet
  bool made_only = false;  ///< without any stitches that are not there yet
  bool draft = false;  ///< only to see whether it comes out well: nothing is drawn once it is known not to
};

Picture draw_window(const Sheet& sheet, const WindowOrder& order);

/// The stitches of a landmark that bear its hole; none for the cloth's own.
std::vector<cloth::Stitch> landmark_stitches(const course::Course& course, const guide::Landmark& landmark);

/// A hole of the design from which fours are counted in every picture of a course.
cloth::Hole grid_origin(const course::Course& course);

}  // namespace picture
