// The marks of a picture, drawn alike in close-ups, on the map and in the key: stitches, holes, thread on the back.
#pragma once

#include <set>
#include <string>

#include "list/measure.h"
#include "picture/geometry.h"
#include "picture/stitches.h"

namespace picture {

enum class HoleUse { up, down, both, twice_up, twice_down };

/// Everything that a key may have to name. A page's key has those it uses, in this order.
enum class Mark {
  up,
  down,
  both,
  twice_up,
  twice_down,
  now,
  now_double,
  before,
  before_double,
  later,
  back,
  needle,
  cut,
  snip,
  cut_thread,
  gone,
  cut_band,
  fence,
  cut_number,
  block_number,
  new_thread,
  old_end,
  bar_number,
  bar_way,
  stem,
  picot,
  thread_begins,
  point_up,
  point_down,
  worked_thread,
  hidden_thread,
  landmark,
  ruler,
  proof,
  fold,
  cloth_edge,
  frame,
  place,
  many,
  corner
};

/// What a page uses; `both` comes with an example of its numbers, `many` with its letters.
struct Uses {
  std::set<Mark> marks;
  std::vector<int> both_example;  ///< 2, 5
  bool often = false;             ///< some hole that is used twice one way is used so more than twice
  std::vector<std::string> many;  ///< letters whose places are dots
  void add(const Uses& other);
};

/// The room of a stitch as it is drawn: its ends drawn back by `gap` mm and half its width.
Capsule drawn_stitch(Point a, Point b, double width, double gap);
/// A stitch, its ends drawn back from the holes so that each is told from the next. `width` in mm, `gap` from the round end to the hole's
/// middle.
void draw_stitch(list::List& list, Point a, Point b, double width, double gap, Stage stage, bool doubled);
/// The thread along the ridge of an edge, from hole to hole.
void draw_ridge(list::List& list, Point a, Point b, double width, Stage stage);
void draw_landmark(list::List& list, Point a, Point b, double width, double gap);
/// `unit`: mm a thread.
void draw_hole(list::List& list, Point at, HoleUse use, double unit);
void draw_back(list::List& list, const std::vector<Point>& points, double unit);
/// The landmark of the second count: an open diamond in the accent.
void draw_proof(list::List& list, Point at, double radius);
/// One of so many places on the map that rings would cover it.
void draw_one_of_many(list::List& list, Point at);
/// A corner to be tacked: a small cross.
void draw_corner_mark(list::List& list, Point at);
/// A white letter on a disc: the name of a picture.
void draw_letter(list::List& list, Point middle, double radius, const std::string& letter, list::TypeStyle style,
                 const list::Measure& measure);

}  // namespace picture
