// Titles in letters that no font of the pages has; those that they have pass.
#include <doctest/doctest.h>

#include "paint/cairo/paint.h"
#include "publish/publish.h"

TEST_CASE("a letter that no font has is told at its lesson; Norwegian and Hebrew are not") {
  const auto type = paint::Type::open();
  REQUIRE(type);
  course::Course course;
  course.title = "Frost p\xC3\xA5 ruta \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D";
  course.lessons.resize(2);
  course.lessons[1].title = "\xF3\xB0\x80\x80";  // U+F0000, private use
  course.lessons[1].place = {7, 3};
  const auto snags = publish::letters_missing(course, **type);
  REQUIRE(snags.size() == 1);
  CHECK(snags[0].rule == "letters-missing");
  CHECK(snags[0].lesson == 2);
  CHECK(snags[0].place == base::TextPlace{7, 3});
}
