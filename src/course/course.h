// The course as the teacher wrote it. Coordinates are hers; nothing is worked out here.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/fault.h"
#include "cloth/hole.h"
#include "cloth/size.h"
#include "course/choices.h"
#include "stitch/kind.h"
#include "stitch/repeat.h"

namespace course {

using Place = base::TextPlace;  ///< where it stands in the file; line 0: nowhere

enum class Every { week, two_weeks, day };

struct Cloth {
  cloth::Count count;
  bool written_per_cm = false;
  double margin_mm = 60;
  std::string colour = "#FFFFFF";
  std::optional<cloth::Hole> size_threads;  ///< width, height
  std::optional<cloth::Hole> middle;
  std::string price, currency;  ///< of one student's piece: exact decimals as text
};

enum class Form { ball, skein };

/// How a pearl cotton is sold, by the table in assets/tables/threads.toml.
struct SoldAs {
  int pearl = 0;
  Form form = Form::ball;
  double metres = 0, grams = 0;  ///< of one; 0: not known
  int needle = 24;               ///< tapestry needle size
};

struct Thread {
  std::string name;            ///< the teacher's short name
  std::optional<int> pearl;    ///< pearl cotton size
  std::optional<double> tex;
  std::string colour = "#FFFFFF";
  std::optional<int> needle;   ///< tapestry needle size
  std::optional<double> ball_m, ball_g;
  std::optional<Form> form;
  std::string price, currency; ///< of one ball or skein: exact decimals as text
  std::optional<SoldAs> sold;  ///< of a pearl cotton: what the table says
  Place place;
};

struct Part {
  std::string name;
  std::string kind;
  std::string thread;
  std::string notes;
  std::optional<cloth::Hole> begin_at;
  std::optional<cloth::Hole> count_from;  ///< the teacher's own landmark hole, checked
  stitch::Values values;                  ///< the kind's own keys, defaults filled in
  stitch::Repeat repeat;
  stitch::Work work;                      ///< what the kind made of them, at all its places
  Place place;                            ///< of its name
  std::map<std::string, Place, std::less<>> key_places;  ///< of each written key's value
};

/// Where a part's key stands in the file, or the part's name where it was not written.
Place place_of(const Part& part, std::string_view key);

/// What is done to cloth that is cut, in this order.
enum class Stage { cut, bars, fillings };

/// One entry of a lesson's `work`: "ring", "ring / 1..70", "border / pass 2", "border / pass 1 / 1..46", "heart / bars / 1..8".
struct WorkItem {
  std::string text;              ///< as written
  int part = -1;                 ///< index in parts; -1 for `wash` and `cut out`
  std::optional<int> pass;       ///< 1..; absent: all passes
  std::optional<Stage> stage;    ///< of a part that is cut; absent: all of them
  std::optional<int> first, last;///< stitches, bars or fillings in planned order, counted from 1; absent: all
  Place place;
};

struct Lesson {
  std::string title;
  std::vector<WorkItem> work;
  std::string notes;
  std::optional<base::Date> date;
  std::optional<int> minutes;
  bool locked = false;
  Place place;
};

/// One of the class, as far as it is written down.
struct Student {
  std::string name;         ///< may be empty
  Hand hand = Hand::right;  ///< that holds the needle: right or left
  Place place;
};

struct Course {
  std::string title, teacher;
  std::optional<base::Date> first_day;
  Every every = Every::week;
  std::vector<base::Date> days;      ///< given days, instead of a rhythm
  std::string start_time, time_zone;
  std::vector<base::Date> holidays;
  int minutes = 90;
  std::optional<int> lessons_wanted;
  int students = 1;
  int spares = 0;  ///< further sets to buy, beyond the students'
  int home_minutes = 0;
  std::vector<std::string> seen_before;
  Cloth cloth;
  std::vector<Thread> threads;
  std::vector<Part> parts;
  std::vector<Lesson> lessons;       ///< as written; empty: to be worked out
  Choices choices;
  std::vector<Student> class_list;   ///< as written; may be shorter than `students`: the others stitch with the right hand
};

/// Limits of a course, told in errors.
inline constexpr int part_limit = 10000;
inline constexpr int lesson_limit = 200;
inline constexpr int student_limit = 1000;

/// How many of the class list hold the needle with the left hand.
int left_handed(const Course& course);
const Thread* find_thread(const Course& course, std::string_view name);
int find_part(const Course& course, std::string_view name);  ///< index, or -1

/// Needle size for a thread: as written, else by the table of sizes, else 24.
int needle_size(const Thread& thread);
/// Metres of one ball or skein: as written; else from its written grams and its tex (grams of 1000 m, ISO 1144), else by the table.
/// Nothing where none of these is known.
std::optional<double> ball_metres(const Thread& thread);
/// Grams of 1000 m: as written, else from the table.
std::optional<double> tex(const Thread& thread);
Form form(const Thread& thread);
/// All holes of all stitches; a single hole at the origin where there are none.
cloth::Box extent(const Course& course);
/// Is the design its own mirror image, left for right? Then a piece stitched after mirrored pages is like all others. By its front stitches alone.
bool mirror_alike(const Course& course);
/// Its written middle, else the middle hole of the extent; of a half thread the one left of it and above.
cloth::Hole middle(const Course& course);
/// Width and height in threads, margins included: as written, else extent and margins, rounded up.
cloth::Hole size_threads(const Course& course);
/// Upper left hole of the cut cloth, so that the middle of the cloth is the middle.
cloth::Hole corner(const Course& course);

}  // namespace course
