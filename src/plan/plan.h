// Everything worked out from one course: trails, starts, counts, close-ups, lessons. Facts only; sentences and pictures are made from it.
#pragma once

#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "base/result.h"
#include "course/course.h"
#include "guide/guide.h"

namespace plan {

struct LessonPlan {
  int number = 1;
  std::string title;   ///< as written, or empty: to be named from its work
  std::optional<base::Date> date;
  std::string start;
  int minutes_given = 90;  ///< class time
  double minutes = 0;      ///< worked out from speeds
  std::string notes;
  std::vector<std::string> work;  ///< for the plan: one entry a section
  std::vector<std::pair<int, int>> sections;  ///< (trail, section) in order
  int stitches = 0;
  std::map<std::string, double> thread_mm;  ///< by thread name: path, take-up, without tails
  std::map<std::string, int> lengths;       ///< working lengths begun in it, by thread name; one more where it goes on with one begun before
  course::Place place;
};

/// One line of the counts to be sure on a lesson's sheet.
struct CountLine {
  enum What { to_first_corner, straight_side, slant, flight, last_to_start, after_last_corner, whole_round, whole_run, section_total } what = whole_run;
  int trail = 0;
  std::vector<int> numbers;  ///< stitches a row (first, second); for blocks one number: blocks
  int legs = 1;              ///< how many such legs there are
  bool each = true;          ///< all such legs have these numbers
};

/// A questionable thing found while planning; `check` adds its own.
struct Finding {
  std::string rule;
  bool stops = false;
  int part = -1;
  int lesson = 0;
  std::optional<cloth::Hole> at, also_at;
  std::map<std::string, std::string> words;
  std::map<std::string, std::int64_t> numbers;
  course::Place place;
};

struct Supplies {
  struct Thread {
    std::string name;
    std::optional<int> pearl;
    double metres = 0;  ///< a student's, waste included
    int lengths = 0;
    int balls = 0;
  };
  std::vector<Thread> per_student, for_class;
  std::vector<int> needles;  ///< tapestry needle sizes, rising
};

struct Plan {
  std::vector<guide::PlacedTrail> trails;
  std::vector<std::vector<guide::Anchor>> anchors;  ///< for each trail
  std::vector<guide::CountIn> count_ins;
  std::vector<guide::Mark> marks;
  std::vector<guide::CloseUp> close_ups;
  std::vector<LessonPlan> lessons;
  std::vector<std::vector<CountLine>> counts;  ///< for each lesson
  Supplies supplies;
  std::vector<Finding> findings;
};

/// Plans the whole course. Fails only when stopped; what is doubtful is in `findings`.
base::Result<Plan> make_plan(const course::Course& course, std::stop_token stop = {});

}  // namespace plan
