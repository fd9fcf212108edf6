// One reader for each table of a course file. Each takes what is right into the course and adds a fault for what is not.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "course/course.h"
#include "file/fault_list.h"
#include "file/node.h"

namespace file {

/// What later tables need to know of the parts.
struct PartFacts {
  bool whole = false;         ///< read and worked out without a fault: its passes and stitches are known
  bool cut = false;           ///< cloth that is cut: its stages are "cut", "bars", "fillings"
  std::vector<int> stitches;  ///< of each pass
};

/// A course while it is read.
struct Reading {
  course::Course& course;
  FaultList& faults;
  bool students_written = false, hand_written = false;  ///< in [course]
  bool threads_known = true;  ///< false where a thread may be missing for another fault's sake
  bool names_known = true;    ///< the same of the parts' names
  std::vector<PartFacts> parts = {};                        ///< in step with the course's parts
  std::map<std::string, int, std::less<>> part_index = {};  ///< by name
  std::map<std::string, int, std::less<>> thread_index = {};
};

void read_course_table(const Entry* entry, Reading& reading);
void read_cloth_table(const Entry* entry, Reading& reading);
void read_thread_tables(const Entry* entry, Reading& reading);
void read_habits_table(const Entry* entry, Reading& reading);
/// Needs the threads.
void read_part_tables(const Entry* entry, Reading& reading);
/// Needs the parts.
void read_lesson_tables(const Entry* entry, Reading& reading);
/// Needs [course].
void read_student_tables(const Entry* entry, Reading& reading);

}  // namespace file
