// The design as a chart for the screen: one unit of the list is one thread of the cloth, its origin the upper left of what is seen. Only what is seen is
// listed.
#pragma once

#include <algorithm>
#include <vector>

#include "list/list.h"
#include "picture/cut_index.h"
#include "plan/plan.h"

namespace picture {

/// What lies where in one plan, made once: stitches by tiles of the cloth, so that only what is seen is looked at.
class ChartIndex {
 public:
  ChartIndex(const course::Course& course, const plan::Plan& plan);
  struct Lying {
    cloth::Stitch stitch;
    int part = 0;
    int lesson = 0;  ///< the first lesson that works it; 0 where none does
    int number = 0;  ///< in order of part and stitch
  };
  /// Those that touch the box, in order of part and stitch.
  std::vector<Lying> in(cloth::Box box) const;
  /// The same, told one after another tile by tile.
  template <class Tell>
  void each_in(cloth::Box box, const Tell& tell) const {
    const int first_row = std::max(first_row_, tile(box.y0 - reach_)), last_row = std::min(last_row_, tile(box.y1 + reach_));
    const int first = tile(box.x0 - reach_), last = tile(box.x1 + reach_);
    for (int row = first_row; row <= last_row; ++row)
      for (auto at = from(row, first); at != tiled_.end() && at->row == row && at->column <= last; ++at)
        if (cloth::touches(at->lying.stitch, box)) tell(at->lying);
  }

  cloth::Hole middle() const { return middle_; }     ///< of the cloth
  const cloth::Box& cloth() const { return cloth_; }  ///< its cut edges

 private:
  struct Tiled {
    int row = 0, column = 0;  ///< the tile of the stitch's first end
    Lying lying;
  };
  static int tile(int v);
  std::vector<Tiled>::const_iterator from(int row, int column) const;
  std::vector<Tiled> tiled_;  ///< by row, column, number
  cloth::Hole middle_;
  cloth::Box cloth_;
  int reach_ = 0;             ///< threads from a stitch's first end to its other one, at most
  int first_row_ = 0, last_row_ = -1;
};

/// The chart's colours; light and dark are the caller's.
struct ChartColours {
  list::Colour ground, grid, grid_fourth, now, before, later, ink, accent;
  list::Colour gone, thread;  ///< where the cloth is cut open; threads that are left across
};

struct ChartNeedle {
  int trail = 0;
  int stitch = 0;  ///< the needle has come up and gone down for all stitches of the section up to this one
};

struct ChartView {
  double x = 0, y = 0;           ///< the hole (in parts of a thread) at the upper left
  double width = 60, height = 40;///< threads seen
  double pixels = 16;            ///< of one thread, to leave out what would be too fine to see
  int lesson = 1;
  bool back = false;             ///< dashes for the thread on the back of this lesson's stitches up to the needle
  bool later = true;             ///< work of later lessons is hinted, else left out
  bool mirror = false;           ///< the left hand's picture: x, width are those of the mirrored design
  course::Line line = course::Line::thread;
  std::optional<ChartNeedle> needle;
  int picked = -1;               ///< part drawn in the accent, -1: none
  const CutIndex* cuts = nullptr;  ///< the cloth is shown cut: all of the lessons before, and so many snips of this one
  int snips = 0;
  bool at_hand = false;            ///< the next snip is marked
  bool folds = false;            ///< the cloth's cut edges and the two folds in its middle are drawn
};

/// What of the cloth is seen, with a thread more on every side.
cloth::Box seen_box(const ChartView& view);

list::List chart(const course::Course& course, const plan::Plan& plan, const ChartIndex& index, const ChartView& view, const ChartColours& colours);

}  // namespace picture
