// Which stitches of which pass are worked when: the teacher's lessons read as sections, and what they forget or double.
#pragma once

#include <vector>

#include "course/course.h"
#include "guide/guide.h"
#include "plan/plan.h"

namespace plan {

/// One pass of one part, before its trail is known.
struct PassOf {
  int part = 0;
  int pass = 1;
  int place = 0;
  int stitches = 0;
  int before = 0;  ///< stitches of the same pass at the part's earlier places: ranges of work count on through all places
  std::vector<guide::Section> sections;  ///< in order of stitches
};

/// Every pass of every part that can be worked, in order of part, pass and place; no sections yet.
std::vector<PassOf> passes_of(const course::Course& course);

/// Reads the written lessons into the passes' sections, the cuttings' lessons and the routes' sections. A stitch already given to an earlier place is taken out of
/// the later one, and said. With `locked`, only the lessons that are locked.
enum class Which { all, locked };
void schedule_written(const course::Course& course, std::vector<PassOf>& passes, Plan& plan, Which which = Which::all);

/// "ring", "border / pass 2", "ring / 1..70": the section as the course file would name it.
/// Stitches are counted through all places of the part.
std::string work_text(const course::Course& course, const PassOf& pass, int first, int last);

/// Stitches a minute of a kind: the teacher's own, else the one assumed for the class's pace, else the kind's default.
double speed(const course::Course& course, std::string_view kind);

}  // namespace plan
