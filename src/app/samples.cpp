// The sample courses to begin with, each by the title in its text.
#include "app/panels.h"
#include "file/course_file.h"

namespace app {

std::vector<Sample> samples(const std::vector<std::string_view>& courses) {
  std::vector<Sample> all;
  for (const std::string_view text : courses) all.push_back({file::read(text).course.title, std::string(text)});
  return all;
}

}  // namespace app
