// Blocks stand a little closer where that spares a page, and only there.
#include <doctest/doctest.h>

#include "course_text.h"
#include "pages_of.h"
#include "picture/pages.h"

namespace {

/// How many pages two blocks need: the first leaves so many mm of the first page free, the second is as good as nothing but the room above it.
std::size_t pages_of(double free, double before) {
  const course::Course course = course_from(text_of("lessons/frost.course.toml"));
  const plan::Plan plan = test::planned(course);
  const say::Voice voice{test::english(), say::Hand::right, course};
  const picture::Sheet sheet{course, plan, plan.lessons[0], voice, test::type(), picture::styles_for(picture::Print::normal), picture::page_size(course::Paper::a4)};
  picture::Pages pages(sheet);
  picture::Block first, second;
  first.draw = second.draw = [](list::List&, picture::Point) {};
  first.height = 10;
  first.height -= pages.over_first(first) + free;
  second.height = 0.01;
  second.before = before;
  pages.add({first, second});
  return pages.finish().size();
}

}  // namespace

TEST_CASE("two blocks that miss one page by the room between them come on one; by more than that they do not") {
  CHECK(pages_of(6, 5) == 1);
  CHECK(pages_of(6, 8) == 1);   // 4.8 mm are enough
  CHECK(pages_of(6, 12) == 2);  // 7.2 mm are too much
}
