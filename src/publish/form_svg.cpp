// Each close-up and map of a lesson as a picture of its own in SVG, with its words as a description.
#include <fmt/format.h>

#include "paint/svg/svg.h"
#include "picture/shown.h"
#include "publish/forms.h"

namespace publish {

base::Result<void> add_svg(const Making& making, const HandPages& pages, Types& types, const std::stop_token& stop,
                           std::vector<Job>& jobs) {
  std::vector<std::vector<Job>> of_lessons(pages.lessons.size());
  auto made = on_all_cores(pages.lessons.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    const HandPages::Lesson& lesson = pages.lessons[i];
    const say::Voice voice{making.phrases, pages.hand, making.course};
    picture::ShownLesson shown =
        picture::show_lesson(making.course, making.plan, lesson.number, voice, type, {170, 150, making.order.print});
    for (picture::Shown& picture : shown.pictures) {
      paint::SvgHead head{picture.name, picture.title, picture::plain(picture.telling), paint::SvgHead::As::file};
      of_lessons[i].push_back(
          {pages.folder / fmt::format("{}-{}.svg", lesson.stem, picture.name),
           [list = inked(std::move(picture.list), making.order.ink), head](const paint::Type&) { return base::Result<Bytes>(bytes_of(paint::svg(list, head))); }});
    }
    return {};
  });
  if (!made) return made;
  for (std::vector<Job>& some : of_lessons)
    jobs.insert(jobs.end(), std::make_move_iterator(some.begin()), std::make_move_iterator(some.end()));
  return {};
}

}  // namespace publish
