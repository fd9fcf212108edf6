// Texts of the teacher's own that the type of the pages has no letters for.
#include "publish/publish.h"

namespace publish {
namespace {

class Looker {
 public:
  explicit Looker(const list::Measure& measure) : measure_(measure) {}
  void look(const std::string& text, course::Place place, int lesson, int part) {
    if (text.empty() || measure_.measure(text, {}).complete) return;
    found.push_back({.rule = "letters-missing", .severity = check::Severity::ask, .place = place, .lesson = lesson, .part = part, .at = {},
                     .also_at = {}, .words = {{"text", text}}, .numbers = {}});
  }
  std::vector<check::Snag> found;

 private:
  const list::Measure& measure_;
};

}  // namespace

std::vector<check::Snag> letters_missing(const course::Course& course, const list::Measure& measure) {
  Looker looker(measure);
  looker.look(course.title, {}, 0, -1);
  for (std::size_t p = 0; p < course.parts.size(); ++p) looker.look(course.parts[p].name, course.parts[p].place, 0, static_cast<int>(p));
  for (std::size_t n = 0; n < course.lessons.size(); ++n) {
    const course::Lesson& lesson = course.lessons[n];
    looker.look(lesson.title, lesson.place, static_cast<int>(n) + 1, -1);
    looker.look(lesson.notes, lesson.place, static_cast<int>(n) + 1, -1);
  }
  return std::move(looker.found);
}

}  // namespace publish
