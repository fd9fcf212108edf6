// What a teacher stitches beforehand to show each lesson's beginning: how far, how long it takes, what it needs.
#pragma once

#include <string>
#include <vector>

#include "say/say.h"

namespace say {

struct StagePiece {
  int lesson = 0;      ///< that it is shown in; one more than there are lessons: the finished piece
  std::string shown;   ///< "lesson 3, The edge"
  std::string done;    ///< what is stitched on it: the lessons before
  std::string own;     ///< hours for a piece of its own, from plain cloth
  std::string on;      ///< hours where the piece of the lesson before is carried on
  std::string thread;  ///< of a piece of its own: "heavy 3.4 m, fine 1.2 m", take-up with it, tails not
};

/// A piece for every lesson but the first, and the finished one; cloth: as large as a student's, one for each. Hours by the course's
/// speeds.
std::vector<StagePiece> stage_pieces(const Voice& voice, const plan::Plan& plan);

}  // namespace say
