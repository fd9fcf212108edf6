// Everything worked out from one course: trails, starts, counts, close-ups, lessons. Facts only; sentences and pictures are made from it.
#pragma once

#include <map>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "base/result.h"
#include "course/course.h"
#include "cutwork/needlework.h"
#include "guide/guide.h"
#include "guide/tell_tales.h"

namespace plan {

/// What a student who missed the lesson before must do to be ready for a lesson.
struct Missed {
  std::vector<std::pair<int, int>> sections;  ///< (trail, section) of the lesson before that are needed
  std::vector<int> cuttings;                  ///< of plan.cuttings, likewise
  std::vector<std::pair<int, int>> routes;    ///< (route, section), likewise
  bool wash = false;                          ///< the piece has to be washed first
  double minutes = 0;                         ///< that those take, without the wash
  struct Instead {
    int count_in = 0;  ///< of plan.count_ins
    guide::Count count;
  };
  bool nothing() const { return sections.empty() && cuttings.empty() && routes.empty() && !wash; }

  std::vector<Instead> instead;  ///< starts whose landmark is not there then, and another from which they are counted
};

struct LessonPlan {
  int number = 1;
  std::string title;   ///< as written, or empty: to be named from its work
  std::optional<base::Date> date;
  std::string start;
  int minutes_given = 90;  ///< class time
  double minutes = 0;      ///< worked out from speeds
  double prepare_minutes = 0;  ///< of `minutes`, those for the cloth; of the first lesson only
  double room = 54;        ///< minutes of stitching that the lesson has: its class's share and the home work that follows
  std::string notes;
  std::vector<std::string> work;  ///< for the plan: one entry a section
  std::vector<std::pair<int, int>> sections;  ///< (trail, section) in order
  std::vector<int> cuttings;  ///< of plan.cuttings
  std::vector<std::pair<int, int>> routes;  ///< (route, section) in order: bars and fillings that are worked
  int stitches = 0;
  std::map<std::string, double> thread_mm;  ///< by thread name: path, take-up, without tails
  std::map<std::string, int> lengths;       ///< working lengths begun in it, by thread name; one more where it goes on with one begun before
  course::Place place;
  std::optional<Missed> missed;  ///< none for the first lesson
};

/// One line of the counts to be sure on a lesson's sheet.
struct CountLine {
  enum What { to_first_corner, straight_side, slant, flight, fanned, last_to_start, after_last_corner, whole_round, whole_run, section_total } what = whole_run;
  int trail = 0;
  std::vector<int> numbers;  ///< stitches a row (first, second); else one number: blocks, or stitches of a side
  int legs = 1;              ///< how many such legs there are
  bool each = true;          ///< all such legs have these numbers
};

/// Where a student can make sure on the way: so many stitches or blocks since the lesson's section began, at a corner.
struct Checkpoint {
  int lesson = 0;
  int trail = 0;
  int section = 0;
  int corner = 1;  ///< the how manieth corner of the section
  int stitch = 0;  ///< of the trail: the last one counted; the next one belongs to the leg behind the corner, or to the block behind the corner's
  std::vector<int> numbers;  ///< stitches a row (first, second); else one number: blocks with the corner's own, or stitches
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

/// What is looked over before one area is cut.
struct ReadyArea {
  int area = 0;  ///< from 0: as the cuts have it
  int first_cutting = 0, last_cutting = 0, snips = 0;
  struct Blocks {
    int part = -1, blocks = 0, stitches = 0;
  };
  std::vector<Blocks> blocks;  ///< that are cut along, by part
  struct Finished {
    int part = -1, lesson = 0;
  };
  std::vector<Finished> finished;  ///< what holds the area or lies beside it, with the lesson that finishes it
  struct Tail {
    int trail = 0, stitch = 0;
    bool begins = true;  ///< a thread begins with the stitch, else it ends with it
  };
  std::vector<Tail> tails;  ///< thread ends beside it
  struct Across {
    int trail = 0, stitch = 0;  ///< the stitch that the thread on the back leads to
  };
  std::vector<Across> across;  ///< thread on the back that runs across cloth that is cut
};

/// The cutting of one part. Where anything stops it, `cutting` has its problems only, and nothing is planned as cut.
struct PartCutting {
  int part = -1;
  int lesson = 0;  ///< 0: in none
  int item = 0;    ///< place among the lesson's work
  course::Place place;  ///< of the work that names it
  cutwork::Cutting cutting;
  std::vector<cutwork::Bundle> blocks;  ///< what may hold it: a cut's `block` counts in them
  /// Work on the cloth to be cut, or on the blocks that hold it, that comes later than the cutting or never.
  struct Late {
    int part = -1;
    int lesson = 0;  ///< 0: in none
    cloth::Hole at;
  };
  std::vector<Late> late;
  std::vector<ReadyArea> ready;  ///< by area
};

/// The bars of one part's openings, or the fillings that are worked once its bars are done, in the order in which they are worked. Nothing is
/// there where nothing is planned as cut.
struct PartRoute {
  int part = -1;
  int cutting = -1;  ///< of plan.cuttings
  course::Stage stage = course::Stage::bars;
  std::vector<cutwork::RouteItem> items;
  std::vector<int> starts;   ///< items with which a thread is begun: 0 is always there
  std::vector<int> lengths;  ///< those of them that take a new length; the others go on with what is left of the last
  std::vector<guide::Section> sections;  ///< first and last item
  std::vector<course::Place> places;     ///< of the work that names each section, in step; none where the program parts the work

  /// Of the items first..last, in threads of the cloth.
  double threads(int first, int last) const;
};

enum class Finish { wash, cut_out };
/// A step that needs no thread, as it lies in a lesson.
struct Finishing {
  Finish finish = Finish::wash;
  int lesson = 0;
  int item = 0;  ///< place among the lesson's work
};

/// What must be bought. Every figure of thread is one student's; `sets` students' worth is bought in all.
struct Supplies {
  struct Thread {
    std::vector<std::string> names;  ///< the teacher's short names of this one thread (same size, colour and ball): at least one
    int thread = 0;                  ///< index in the course's threads, of the first of them
    double front_mm = 0, back_mm = 0;  ///< paths of the stitches
    double take_up_mm = 0;             ///< what the thread is longer than its path
    double tails_mm = 0;               ///< both ends of every working length
    int lengths = 0;                   ///< working lengths that are begun
    double cut_mm = 0;                 ///< those lengths, cut whole
    double waste = 0;                  ///< share bought on top

    double needed_mm() const { return front_mm + back_mm + take_up_mm + tails_mm; }
    /// What is needed and the waste.
    double metres() const { return needed_mm() * (1 + waste) / 1000; }
    /// What to buy: the same, reckoned from the whole lengths that are cut off where these are more.
    double metres_to_buy() const { return (needed_mm() > cut_mm ? needed_mm() : cut_mm) * (1 + waste) / 1000; }
  };
  int sets = 1;  ///< students and spares
  std::vector<Thread> threads;  ///< in the order of the course
  std::vector<int> needles;     ///< tapestry needle sizes, rising; one of each a student
  bool tacking_thread = false;  ///< for lines marked beforehand
};

/// How the work was parted into lessons where the program did it.
struct SplitReport {
  int lessons = 0;    ///< that took work; 0: the teacher parted it
  double cost = 0;    ///< of the split, in minutes (see split.h)
  double bound = 0;   ///< no split of the same order costs less by more than this; 0: it is the best
  double over = 0;    ///< minutes that the lessons lack
  int more_lessons = 0, more_minutes = 0, more_home = 0;  ///< where they lack some: each by itself would do; minutes a lesson
};

struct Plan {
  std::vector<guide::PlacedTrail> trails;
  std::vector<std::vector<guide::Anchor>> anchors;  ///< for each trail
  std::vector<guide::CountIn> count_ins;
  std::vector<guide::TellTale> tell_tales;  ///< four for each count-in, in their order
  std::vector<guide::Mark> marks;
  std::vector<guide::CloseUp> close_ups;
  std::vector<PartCutting> cuttings;  ///< in order of part
  std::vector<PartRoute> routes;      ///< in order of part, bars before fillings
  std::vector<Finishing> finishing;   ///< in the order of the lessons
  std::vector<LessonPlan> lessons;
  std::vector<std::vector<CountLine>> counts;  ///< for each lesson
  std::vector<Checkpoint> checkpoints;              ///< by lesson, in the order of its work
  Supplies supplies;
  SplitReport split;
  std::vector<Finding> findings;
};

enum class Lessons {
  as_written,   ///< those of the course; without any, the program parts the work
  split_again,  ///< the program parts the work anew; locked lessons stay, and little else moves
};

/// Plans the whole course. Fails only when stopped; what is doubtful is in `findings`.
base::Result<Plan> make_plan(const course::Course& course, std::stop_token stop = {}, Lessons lessons = Lessons::as_written);

}  // namespace plan
