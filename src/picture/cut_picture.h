// A close-up of one cutting, with the end across from it where both have room: the threads that go, the scissors at the block's end, what
// must not be cut. It shows the cloth as it is then: threads of the cuttings before are out.
#pragma once

#include "picture/cut_ends.h"
#include "picture/window.h"

namespace picture {

struct CutRoom {
  double width = 97, height = 140;  ///< mm at the most
};

struct CutPicture {
  Picture picture;
  std::vector<int> numbers;  ///< of the cuttings that it shows, the first one first
};

/// `end`: the number of the cutting.
CutPicture cut_picture(const Sheet& sheet, const CutWork& work, int end, const std::string& letter, const CutRoom& room);

/// A thread beside those of a cutting, cut by mistake, with a new one woven in.
struct MendPicture {
  Picture picture;
  int number = 0;  ///< of the cutting
};
MendPicture mend_picture(const Sheet& sheet, const CutWork& work, const CutRoom& room);

}  // namespace picture
