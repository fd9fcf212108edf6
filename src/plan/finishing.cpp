#include "plan/finishing.h"

#include <algorithm>

#include "plan/schedule.h"

namespace plan {
namespace {

int edge_stitches(const course::Course& course) {
  int stitches = 0;
  for (const course::Part& part : course.parts) {
    const stitch::Kind* kind = stitch::find_kind(part.kind);
    if (kind && kind->by_edge_habit) stitches += static_cast<int>(part.work.stitches.size());
  }
  return stitches;
}

}  // namespace

std::string_view work_name(Finish finish) { return finish == Finish::wash ? "wash" : "cut out"; }

double minutes_of(const course::Course& course, Finish finish) {
  return finish == Finish::wash ? course.choices.habits.wash_minutes : edge_stitches(course) / speed(course, "cut-out");
}

std::vector<Finishing> finishing_written(const course::Course& course, bool locked_only) {
  std::vector<Finishing> all;
  for (std::size_t i = 0; i < course.lessons.size(); ++i) {
    const course::Lesson& lesson = course.lessons[i];
    if (locked_only && !lesson.locked) continue;
    for (std::size_t w = 0; w < lesson.work.size(); ++w)
      for (const Finish finish : {Finish::wash, Finish::cut_out})
        if (lesson.work[w].part < 0 && lesson.work[w].text == work_name(finish)) all.push_back({finish, static_cast<int>(i) + 1, static_cast<int>(w)});
  }
  return all;
}

bool finishing_wanted(const course::Course& course, Finish finish) {
  const auto written = finishing_written(course, false);
  return edge_stitches(course) > 0 || std::any_of(written.begin(), written.end(), [&](const Finishing& f) { return f.finish == finish; });
}

}  // namespace plan
