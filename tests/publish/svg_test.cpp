// Pictures in SVG held against xmllint and librsvg, which share nothing with how they are made.
#include "paint/svg/svg.h"

#include <doctest/doctest.h>

#include <cmath>

#include "picture/shown.h"
#include "publish/grey.h"
#include "publish/handed_out.h"

namespace {

constexpr const char* wild = R"(<script>alert("x")</script> & Tom, "quoted")";

picture::ShownLesson shown(const course::Course& course, const plan::Plan& plan, int lesson, say::Hand hand) {
  const auto type = paint::Type::open();
  REQUIRE(type);
  return picture::show_lesson(course, plan, lesson, say::Voice{test::english(), hand, course}, **type, {});
}

publish::HandoutOrder order_into(const TestFolder& folder) {
  publish::HandoutOrder order;
  order.into = folder.path;
  order.forms = {publish::Form::svg};
  return order;
}

}  // namespace

TEST_CASE("escaped: markup, controls and broken UTF-8 are harmless; all else stays") {
  CHECK(paint::escaped("a < b & \"c\" > 'd'") == "a &lt; b &amp; &quot;c&quot; &gt; &#39;d&#39;");
  CHECK(paint::escaped("bl\xC3\xA5 \xF0\x9F\x8E\x84\n") == "bl\xC3\xA5 \xF0\x9F\x8E\x84\n");
  CHECK(paint::escaped("a\x01"
                       "b\x7F") ==
        "a\xEF\xBF\xBD"
        "b\xEF\xBF\xBD");
  CHECK(paint::escaped("\xC0\xAF") == "\xEF\xBF\xBD\xEF\xBF\xBD");          // overlong
  CHECK(paint::escaped("\xED\xA0\x80").find("\xED") == std::string::npos);  // a surrogate
  CHECK(paint::escaped("x\xE2\x82") == "x\xEF\xBF\xBD\xEF\xBF\xBD");
}

TEST_CASE("every picture is well-formed, has a title and a description, and titles with markup are text") {
  const TestFolder folder;
  course::Course course = test::sample();
  course.lessons[3].title = wild;
  const publish::Written written = test::hand_out(course, order_into(folder));
  CHECK(written.files.size() == test::planned(course).close_ups.size() + 5);  // and a map a lesson
  for (const auto& file : written.files) {
    CAPTURE(file);
    CHECK(test::ask("xmllint --noout " + test::quoted(file)).code == 0);
    const auto count = [&](const std::string& path) {
      return test::ask("xmllint --xpath 'string(" + path + ")' " + test::quoted(file)).out;
    };
    CHECK(count("count(//*[local-name()=\"script\"])") == "0\n");
    CHECK(count("/*/*[local-name()=\"title\"]").size() > 4);
    CHECK(count("/*/@aria-labelledby").find("-title") != std::string::npos);
    if (file.string().find("-map.svg") == std::string::npos) CHECK(count("/*/*[local-name()=\"desc\"]").size() > 20);
  }
}

TEST_CASE("a title is read as it was written") {
  const paint::SvgHead head{"p", wild, wild, paint::SvgHead::As::file};
  const TestFolder folder;
  std::ofstream(folder / "x.svg") << paint::svg({}, head);
  for (const char* part : {"title", "desc"})
    CHECK(test::ask("xmllint --xpath 'string(/*/*[local-name()=\"" + std::string(part) + "\"])' " + test::quoted(folder / "x.svg")).out ==
          wild + std::string("\n"));
}

TEST_CASE("librsvg's pixels are those of our own raster within 2.5 of 256 shades a square millimetre, and no dark dot is in one alone") {
  const TestFolder folder;
  const course::Course course = test::sample();
  const plan::Plan plan = test::planned(course);
  const auto type = paint::Type::open();
  REQUIRE(type);
  for (const say::Hand hand : {say::Hand::right, say::Hand::left})
    for (const int lesson : {1, 4})
      for (const picture::Shown& picture : shown(course, plan, lesson, hand).pictures) {
        std::ofstream(folder / "x.svg") << paint::svg(picture.list, {picture.name, picture.title, "", paint::SvgHead::As::file});
        REQUIRE(test::ask("rsvg-convert -d 150 -p 150 " + test::quoted(folder / "x.svg") +
                          " | convert - -colorspace Gray -depth 8 pgm:" + test::quoted(folder / "x.pgm"))
                    .code == 0);
        const auto ours = paint::raster(picture.list, **type, 150);
        REQUIRE(ours);
        const test::Grey theirs = test::read_pgm(bytes_of(folder / "x.pgm"));
        CAPTURE(lesson);
        CAPTURE(picture.title);
        REQUIRE(std::abs(theirs.width - ours->width) <= 1);
        const test::Apart apart = test::apart(test::grey_of(*ours), theirs, 6);
        CHECK(apart.mean < 2.5);
        CHECK(apart.alone < 1e-5);
      }
}
