// Where no lesson is written: the work in the craft's order, filling lessons by minutes, parted only where a student can stop.
#pragma once

#include "plan/schedule.h"

namespace plan {

/// Goes through the course's lessons as trails are handed to it in the craft's order.
class LayOut {
 public:
  /// `total_minutes` of all the work, to spread it evenly where the teacher asks for a number of lessons.
  LayOut(const course::Course& course, double total_minutes);
  /// The lesson and item at which the next work would begin.
  guide::When next() const { return {lesson_, item_, 0}; }
  /// Work that is not parted, so many minutes of it: in this lesson where there is room, else in the next.
  guide::When place_whole(double minutes);
  /// Parts the trail into sections for this and the following lessons.
  std::vector<guide::Section> place(const trail::Trail& trail, const stitch::Pass& pass, double stitches_a_minute);
  bool overflowed() const { return overflowed_; }

 private:
  void next_lesson();
  double room_;  ///< minutes of one lesson
  int last_lesson_;
  int lesson_ = 1;
  int item_ = 0;
  double used_ = 0;
  bool overflowed_ = false;
};

/// Part indices in the craft's order: by the kinds' own rank, then as written.
std::vector<int> craft_order(const course::Course& course);

/// May a student put the work down after stitch k? At the end of a block; between two pairs of rows, clear of corners.
bool can_stop_after(const trail::Trail& trail, const stitch::Pass& pass, int k);

}  // namespace plan
