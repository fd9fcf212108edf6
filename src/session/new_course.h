// The text of a course that has just been begun, from a few answers.
#pragma once

#include <optional>
#include <string>

#include "base/date.h"
#include "cloth/hole.h"

namespace session {

struct NewCourse {
  std::string title;
  std::optional<base::Date> first_day;
  int weeks = 6;                            ///< lessons, one a week
  int count = 22;                           ///< threads an inch
  std::string language = "en";              ///< of what is written for the class
  std::optional<cloth::Hole> size_threads;  ///< cloth, width and height, its middle at the hole 0, 0; none: as the design will need
};

/// Canonical, without parts; two threads of pearl cotton that suit the count (5 and 8 up to 25 threads an inch, else 8 and 12; common practice, no source).
std::string text_of(const NewCourse& course);

}  // namespace session
