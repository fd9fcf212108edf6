// Where the cloth is cut away outside the ridge of an edge: the line, the cloth that goes, scissors. Words and cautions stand beside it.
#pragma once

#include <vector>

#include "picture/view.h"
#include "picture/window.h"

namespace picture {

/// The line that the scissors follow along stitches of an edge, as points in threads: outside the ridge by part of a thread, round fans,
/// and at inner corners outside the hole that two stitches share.
struct CutPoint {
  double x = 0, y = 0;
  double out_x = 0, out_y = 0;  ///< away from the piece
};
std::vector<CutPoint> cut_line(const trail::Trail& trail);

void draw_cut(list::List& list, const View& view, const trail::Trail& trail);

/// One picture of a corner of each sort that the edges stitched by this lesson have; of a straight stretch where they have none.
struct CutOutPicture {
  Picture picture;
  bool inner = false;
};
std::vector<CutOutPicture> cut_out_pictures(const Sheet& sheet);

}  // namespace picture
