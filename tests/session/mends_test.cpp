// Mends: the course is put wrong in one place, the snag's own mend is applied, and the snag is gone. New courses read as they were answered.
#include "session/mends.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "course_text.h"
#include "session/new_course.h"
#include "session/session.h"

namespace {

const std::string head = "format = 1\n[course]\ntitle = \"Test\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n";
const std::string ring = part_text("ring", "blocks", "[0, 0]", "path = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string line = part_text("line", "cable", "[40, -60]", "path = \"E 20, S 30, W 20, N 30\"\nrows = 3");

std::string lesson(const std::string& work) { return "[[lesson]]\ntitle = \"x\"\nwork = [" + work + "]\n"; }

session::Seen seen(const std::string& text) {
  auto looked = session::look_at(std::make_shared<const std::string>(file::tidy(text)), 1, {});
  REQUIRE(looked);
  REQUIRE(looked->faults.empty());
  return looked;
}

bool has(const session::Seen& look, const std::string& rule) {
  return std::any_of(look->snags.begin(), look->snags.end(), [&](const check::Snag& snag) { return snag.rule == rule; });
}

/// Applies the mends of this rule until it is gone, at most a few times.
void mended(const std::string& text, const std::string& rule) {
  INFO(rule);
  auto look = seen(text);
  REQUIRE(has(look, rule));
  for (int i = 0; i < 4 && has(look, rule); ++i) {
    const auto snag = std::find_if(look->snags.begin(), look->snags.end(), [&](const check::Snag& s) { return s.rule == rule; });
    const auto edit = session::mend(look->course, *snag);
    REQUIRE(edit);
    const auto next = edit->change(*look->text);
    REQUIRE(next);
    look = seen(*next);
  }
  CHECK(!has(look, rule));
}

}  // namespace

TEST_CASE("each mend takes its snag away") {
  mended(head + ring + line + lesson("\"ring\""), "part-in-no-lesson");
  mended(head + ring + lesson("\"ring / 1..30\""), "work-forgotten");
  mended(head + ring + lesson("\"ring\"") + lesson("\"ring / 3..7\""), "work-doubled");
  mended(head + line + lesson("\"line / pass 2\"") + lesson("\"line / pass 1\""), "pass-order");
  mended(head + ring + lesson("\"ring / 31..60\"") + lesson("\"ring / 1..30\""), "stretch-order");
  mended(head + ring + lesson("\"ring\"") + lesson(""), "lesson-empty");
  mended("format = 1\n[course]\ntitle = \"Test\"\n[cloth]\ncount = 22\nsize_threads = [10, 10]\n[thread.heavy]\npearl = 5\n" + ring, "cloth-size");
  mended(head + part_text("ring", "blocks", "[0, 0]", "path = \"NE 4, SE 3, SW 3, NW 2\"\nbegin_at = [1, 99]"), "begin-at-missed");
  mended(head + ring + part_text("hem", "edge", "[-60, -60]", "path = \"E 120, S 120, W 120, N 120\"\nout = \"right\""), "edge-cuts-off-inside");
}

TEST_CASE("what has no mend offers none") {
  const auto look = seen(head + part_text("a", "blocks", "[0, 0]", "path = \"E 3\"") + part_text("b", "blocks", "[0, 0]", "path = \"E 3\""));
  REQUIRE(has(look, "lies-over"));
  for (const check::Snag& snag : look->snags)
    if (snag.rule == "lies-over") CHECK(!session::mend(look->course, snag));
}

TEST_CASE("a new course reads as it was answered, whatever its title") {
  session::NewCourse wanted;
  wanted.title = "My \"first\" \\ course";
  wanted.first_day = base::parse_date("2027-02-28");
  wanted.weeks = 4;
  wanted.count = 28;
  wanted.language = "nb";
  wanted.size_threads = cloth::Hole{200, 160};
  const std::string text = session::text_of(wanted);
  CHECK(file::tidy(text) == text);
  const auto read = file::read(text);
  REQUIRE(read.faults.empty());
  CHECK(read.course.title == wanted.title);
  CHECK(read.course.first_day == wanted.first_day);
  CHECK(read.course.lessons_wanted == 4);
  CHECK(read.course.cloth.size_threads == wanted.size_threads);
  CHECK(read.course.cloth.middle == cloth::Hole{0, 0});
  CHECK(read.course.choices.language == "nb");
  CHECK(read.course.threads.size() == 2);
  CHECK(read.course.parts.empty());
}
