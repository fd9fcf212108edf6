// A part that is repeated, on the pages: what is the same at several places is said once and names them; no place is left out; the rhythm
// stands before the further places; what a start's picture shows to the end has no second picture.
#include <algorithm>
#include <set>

#include "pages_of.h"
#include "picture/table.h"

namespace {

const char* const stars_and_points = R"([[part]]
name = "ring"
kind = "blocks"
thread = "heavy"
start = [-22, -2]
first = "across"
path = "NE 6, SE 5, SW 5, NW 4"
[[part]]
name = "stars"
kind = "star"
thread = "heavy"
centre = [26, 26]
reach = 8
turn = 4
about = [0, 0]
[[part]]
name = "bars"
kind = "satin"
thread = "heavy"
start = [-3, -40]
along = "E"
toward = "N"
over = [2, 3, 4, 5, 4, 3, 2]
turn = 4
about = [0, 0]
[[lesson]]
work = ["ring"]
[[lesson]]
work = ["stars", "bars"]
)";

struct Case {
  course::Course course;
  plan::Plan plan;
  explicit Case(const std::string& parts) : course(course_of(parts)), plan(test::planned(course)) {}

  std::vector<picture::Table> tables(int lesson) const {
    return picture::lesson_counts(course, plan, lesson, say::Voice{test::english(), say::Hand::right, course});
  }
  std::string words(int lesson) const {
    const say::Voice voice{test::english(), say::Hand::right, course};
    std::string all;
    for (const list::List& page :
         picture::handout(course, plan, lesson, voice, test::type(), picture::page_size(course::Paper::a4), picture::Print::normal))
      all += test::text_of_page(page);
    return all;
  }
};

std::size_t times(const std::string& text, const std::string& what) {
  std::size_t n = 0;
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++n;
  return n;
}

}  // namespace

TEST_CASE("counts that are the same at every place are one table that names the places, and adds up to all of them") {
  const Case c(stars_and_points);
  const std::vector<picture::Table> tables = c.tables(2);
  REQUIRE(tables.size() == 2);
  CHECK(tables[0].title == "Count to be sure: stars, each of places 1 to 4");
  CHECK(tables[0].note == "56 stitches at each place, 224 together.");  // eight petals of seven
  CHECK(tables[1].title == "Count to be sure: bars, each of places 1 to 4");
  CHECK(tables[1].note == "7 stitches at each place, 28 together.");
  int stitches = 0;
  for (const char* part : {"stars", "bars"})
    for (const course::Part& p : c.course.parts) stitches += p.name == part ? static_cast<int>(p.work.stitches.size()) : 0;
  CHECK(stitches == 224 + 28);
}

TEST_CASE("places that differ keep tables of their own, with their numbers") {
  std::string parts = stars_and_points;
  parts.replace(parts.find("work = [\"stars\", \"bars\"]"), 26,
                "work = [\"stars / 1..80\"]\n[[lesson]]\nwork = [\"stars / 81..224\", \"bars\"]");
  const Case c(parts);
  std::set<std::string> titles;
  int in_all = 0;
  for (const int lesson : {2, 3})
    for (const picture::Table& table : c.tables(lesson)) {
      CHECK(titles.insert(std::to_string(lesson) + table.title).second);
      if (table.title.find("stars") != std::string::npos)
        in_all += std::stoi(table.note) * (table.title.find(" and ") != std::string::npos ? 2 : 1);
    }
  CHECK(titles.contains("2Count to be sure: stars, place 1"));
  CHECK(titles.contains("3Count to be sure: stars, each of places 3 and 4"));
  CHECK(in_all == 224);
}

TEST_CASE("one sentence for a new thread at all places; the rhythm comes before the further places, each with its mark and its own count") {
  const Case c(stars_and_points);
  std::string words = c.words(2);
  std::replace(words.begin(), words.end(), '\n', ' ');
  CHECK(times(words, "take a new thread after") == 1);
  CHECK(words.find("Stars, each of places 1 to 4: take a new thread after") != std::string::npos);
  const std::size_t rhythm = words.find("Then, petal by petal"), again = words.find("Again at place 2, A2 on the small picture");
  REQUIRE(rhythm != std::string::npos);
  REQUIRE(again != std::string::npos);
  CHECK(rhythm < again);
  for (const char* mark : {"A2 ", "A3 ", "A4 "}) CHECK(times(words, mark) == 2);  // in the words and on the small picture
  for (const guide::CountIn& count_in : c.plan.count_ins) {
    if (count_in.lesson != 2) continue;
    const std::string said = say::count_in(say::Voice{test::english(), say::Hand::right, c.course}, count_in);
    CAPTURE(said);
    CHECK(times(words, said.substr(0, said.find(" count "))) >= 1);
  }
}

TEST_CASE("what the start's picture shows to the end, at every place, has no picture of its end") {
  const Case c(stars_and_points);
  int starts = 0, ends = 0;
  for (const guide::CloseUp& close_up : c.plan.close_ups) {
    if (c.course.parts[static_cast<std::size_t>(c.plan.trails[static_cast<std::size_t>(close_up.trail)].part)].name != "bars") continue;
    if (close_up.shows == guide::Shows::start) ++starts, CHECK(close_up.stands_for.size() == 4);
    ends += close_up.shows == guide::Shows::end ? 1 : 0;
  }
  CHECK(starts == 1);
  CHECK(ends == 0);
  CHECK(c.words(2).find("The last stitch goes down at 14. Finish") != std::string::npos);
}
