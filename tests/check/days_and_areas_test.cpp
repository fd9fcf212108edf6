// Rules about days, areas and fillings: a course that breaks each, at its severity, beside one that does not.
#include <doctest/doctest.h>

#include <algorithm>

#include "check/check.h"
#include "course_text.h"

namespace {

std::vector<check::Snag> snags_of(const course::Course& course) {
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return check::look(course, *plan);
}

bool told(const course::Course& course, const std::string& rule, check::Severity severity) {
  const auto snags = snags_of(course);
  const auto found = std::find_if(snags.begin(), snags.end(), [&](const auto& s) { return s.rule == rule; });
  if (found == snags.end()) return false;
  CHECK(found->severity == severity);
  return true;
}

course::Course taught(const std::string& course_keys, const std::string& more) {
  return course_from("format = 1\n[course]\ntitle = \"Test\"\n" + course_keys + "[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" + more);
}

std::string lesson(const std::string& work, const std::string& more = "") { return "[[lesson]]\nwork = [" + work + "]\n" + more; }
std::string blocks(const std::string& name, const std::string& start, const std::string& path) {
  return part_text(name, "blocks", start, "first = \"across\"\npath = \"" + path + "\"");
}
std::string area(const std::string& more, const std::string& within = "\"ring\"", const std::string& name = "heart") {
  return "[[part]]\nname = \"" + name + "\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [" + within + "]\n" + more;
}

const std::string ring = blocks("ring", "[0, 0]", "NE 4, SE 3, SW 3, NW 2");
const std::string halves = lesson("\"ring / 1..30\"") + lesson("\"ring / 31..60\"");
constexpr auto stop = check::Severity::stop;
constexpr auto ask = check::Severity::ask;

}  // namespace

TEST_CASE("lesson-without-day: fewer days than lessons") {
  CHECK(told(taught("days = [2027-01-12]\n", ring + halves), "lesson-without-day", ask));
  CHECK(!told(taught("days = [2027-01-12, 2027-01-20]\n", ring + halves), "lesson-without-day", ask));
}

TEST_CASE("lesson-on-holiday: a written day that is one; the rhythm passes over them by itself") {
  const std::string keys = "first_day = 2027-01-12\nholidays = [2027-01-19]\n";
  CHECK(told(taught(keys, ring + lesson("\"ring / 1..30\"") + lesson("\"ring / 31..60\"", "date = 2027-01-19\n")), "lesson-on-holiday", ask));
  CHECK(!told(taught(keys, ring + halves), "lesson-on-holiday", ask));
}

TEST_CASE("lesson-day-order: a lesson before the one before it") {
  const std::string keys = "first_day = 2027-01-12\n";
  CHECK(told(taught(keys, ring + lesson("\"ring / 1..30\"") + lesson("\"ring / 31..60\"", "date = 2027-01-05\n")), "lesson-day-order", ask));
  CHECK(!told(taught(keys, ring + lesson("\"ring / 1..30\"") + lesson("\"ring / 31..60\"", "date = 2027-02-05\n")), "lesson-day-order", ask));
}

TEST_CASE("cut-nothing-enclosed: blocks in a line hold no area") {
  CHECK(told(course_of(blocks("ring", "[0, 0]", "NE 4") + area("")), "cut-nothing-enclosed", stop));
  CHECK(!told(course_of(ring + area("")), "cut-nothing-enclosed", stop));
}

TEST_CASE("cut-zone-outside: a zone beside the ring") {
  CHECK(told(course_of(ring + area("zone = [60, 2]\n")), "cut-zone-outside", stop));
  CHECK(!told(course_of(ring + area("zone = [14, 2]\n")), "cut-zone-outside", stop));
}

TEST_CASE("cut-twice: two parts take the same threads") {
  CHECK(told(course_of(ring + area("") + area("", "\"ring\"", "second")), "cut-twice", stop));
  const std::string two = ring + blocks("leaf", "[40, 0]", "NE 4, SE 3, SW 3, NW 2");
  CHECK(!told(course_of(two + area("") + area("", "\"leaf\"", "second")), "cut-twice", stop));
}

TEST_CASE("filling-nowhere, filling-does-not-fit: where the filling finds no opening") {
  CHECK(told(course_of(ring + area("fillings = [{ kind = \"dove's eye\", where = [[60, 60]] }]\n")), "filling-nowhere", ask));
  CHECK(!told(course_of(ring + area("fillings = [{ kind = \"dove's eye\", where = \"all\" }]\n")), "filling-nowhere", ask));
}

TEST_CASE("filling-does-not-fit: an opening of twelve threads is too wide for a dove's eye, one of four is not") {
  const std::string wide = part_text("ring", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 3, SE 1, S 2, SW 1, W 2, NW 1, N 2\"");
  const std::string eyes = "fillings = [{ kind = \"dove's eye\", where = [[6, 8]] }]\n";
  CHECK(told(course_of(wide + area(eyes)), "filling-does-not-fit", ask));
  CHECK(!told(course_of(ring + area("fillings = [{ kind = \"dove's eye\", where = \"all\" }]\n")), "filling-does-not-fit", ask));
}

TEST_CASE("too-many-lessons: an evening of one minute would take more than two hundred of them") {
  const std::string large = blocks("ring", "[0, 0]", "NE 160, SE 159, SW 159, NW 158");
  CHECK(told(taught("minutes = 1\n", large), "too-many-lessons", ask));
  CHECK(!told(taught("minutes = 90\n", large), "too-many-lessons", ask));
}

TEST_CASE("split-lesson-short: no number of lessons of one minute holds a flight that is not parted; told so, not \"0 lessons more\"") {
  const std::string large = blocks("ring", "[0, 0]", "NE 80, SE 79, SW 79, NW 78");
  CHECK(told(taught("minutes = 1\n", large), "split-lesson-short", ask));
  CHECK(!told(taught("minutes = 1\n", large), "split-impossible", ask));
  CHECK(told(taught("minutes = 30\nlessons = 2\n", large), "split-impossible", ask));
  CHECK(!told(taught("minutes = 30\nlessons = 2\n", large), "split-lesson-short", ask));
}

TEST_CASE("bars-out-of-turn: a later stretch of bars before an earlier one") {
  const std::string head = ring + area("") + lesson("\"ring\", \"heart / cut\"");
  CHECK(told(course_of(head + lesson("\"heart / bars / 3..4\"") + lesson("\"heart / bars / 1..2\"")), "bars-out-of-turn", stop));
  CHECK(!told(course_of(head + lesson("\"heart / bars / 1..2\"") + lesson("\"heart / bars / 3..4\"")), "bars-out-of-turn", stop));
}
