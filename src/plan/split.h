// Work in one order parted into lessons, as well as can be: exact, by dynamic programming over (lessons, work done). Knows minutes, stops
// and techniques, not stitches.
#pragma once

#include <vector>

namespace plan {

/// A piece of work that is not parted further.
struct SplitUnit {
  double minutes = 0;
  int technique = -1;    ///< what the class must know for it; -1: nothing of its own
  bool may_stop = true;  ///< may a lesson end behind it?
  double stop_cost = 0;  ///< how bad a place to stop it is, in minutes
  int earliest = 1;      ///< lessons between which it must lie, by number
  int latest = 1 << 20;
  int was = 0;  ///< the lesson it lay in before; 0: in none
};

/// A lesson that takes work.
struct SplitLesson {
  int number = 1;
  double room = 0;  ///< minutes of stitching, home work included
};

/// What is weighed against what; everything in minutes.
struct SplitWeights {
  double over = 50;          ///< each minute beyond the room
  double uneven = 1;         ///< each minute off the lesson's fair share of all the work
  double technique = 15;     ///< each new technique beyond the first of a lesson
  double empty = 60;         ///< a lesson without work
  double moved = 0.5;        ///< each minute of work that comes to lie in another lesson than before
  double misplaced = 10000;  ///< a unit outside its earliest and latest lesson
  double bad_stop = 10000;   ///< an end where one may not stop
};

struct SplitTask {
  std::vector<SplitUnit> units;      ///< in the order in which they are worked
  std::vector<SplitLesson> lessons;  ///< numbers rising; at least one
  std::vector<bool> known;           ///< by technique: seen before the course
  SplitWeights weights;
};

struct Split {
  std::vector<int> ends;  ///< for each lesson the first unit behind it; the last is the number of units
  double cost = 0;        ///< the least there is, by lesson_cost
  double over = 0;        ///< minutes beyond the lessons' rooms, added up
};

/// The split of least cost; of equals the one whose last lessons are shorter. Time n * n * lessons at worst, less where work is long.
Split split(const SplitTask& task);

/// What lesson `lesson` (index) costs with the units first..end-1.
double lesson_cost(const SplitTask& task, int lesson, int first, int end);

/// The fewest lessons of that room that hold the units, each ending where one may stop; a unit that no lesson holds has one to itself.
int lessons_needed(const std::vector<SplitUnit>& units, double room);
/// The least room with which so many lessons hold them, to a tenth of a minute.
double room_needed(const std::vector<SplitUnit>& units, int lessons);

}  // namespace plan
