#include "session/new_course.h"

#include <fmt/format.h>

#include "file/course_file.h"
#include "file/edit.h"

namespace session {

std::string text_of(const NewCourse& course) {
  constexpr int finest_for_pearl_5 = 25;
  const bool coarse = course.count <= finest_for_pearl_5;
  std::string text = fmt::format("format = 1\n\n[course]\ntitle = {}\n", file::in_toml(course.title));
  if (course.first_day) text += fmt::format("first_day = {}\n", base::iso(*course.first_day));
  if (course.language != course::Choices{}.language) text += fmt::format("language = {}\n", file::in_toml(course.language));
  text += fmt::format("lessons = {}\n\n[cloth]\ncount = {}\n", course.weeks, course.count);
  if (course.size_threads) text += fmt::format("size_threads = {}\nmiddle = [0, 0]\n", file::in_toml(*course.size_threads));
  text += fmt::format("\n[thread.heavy]\npearl = {}\n\n[thread.fine]\npearl = {}\n", coarse ? 5 : 8, coarse ? 8 : 12);
  return file::tidy(text);
}

}  // namespace session
