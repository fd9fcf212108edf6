// How large a close-up is and how much of the cloth it shows: at a start the landmarks as well, where they are near enough to be read; else
// the count is for an overview.
#pragma once

#include "picture/window.h"

namespace picture {

struct CloseUpPicture {
  Picture picture;
  const guide::CountIn* count_in = nullptr;  ///< of a start
  bool counts_inside = false;                ///< the landmark stands in the picture, with its ruler
  const guide::Count* proof = nullptr;       ///< the second count to be told, where there is one
  bool proof_inside = false;
};

struct Room {
  double beside = 100;        ///< widest picture that leaves room for text at its side, mm
  double whole = 182;         ///< widest picture, mm
  double height = 150;        ///< with words at its side
  double whole_height = 110;  ///< with words under it
};

CloseUpPicture close_up_picture(const Sheet& sheet, const guide::CloseUp& close_up, const Room& room);

/// The moment at which a close-up is seen.
Moment moment_of(const Sheet& sheet, const guide::CloseUp& close_up);
/// Is the end of the thread numbered in it? At the end of a trail.
Ending ending_of(const Sheet& sheet, const guide::CloseUp& close_up);
/// The count-in of the section that the close-up's first stitch begins, or null.
const guide::CountIn* count_in_of(const plan::Plan& plan, const guide::CloseUp& close_up);

}  // namespace picture
