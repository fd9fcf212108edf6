// What pages say: only words of the table, numbers that add up, numbers that are in the pictures.
#include <algorithm>
#include <regex>
#include <set>

#include "pages_of.h"
#include "picture/sheet.h"
#include "picture/table.h"
#include "pretend/make_pretend.h"

namespace {

/// A course whose own words are all figures, so that every letter on its pages comes from the table.
std::string figures() {
  const auto part = [](const std::string& name, const std::string& kind, const std::string& start, const std::string& rest) {
    return "[[part]]\nname = \"" + name + "\"\nkind = \"" + kind + "\"\nthread = \"" + (kind == "cable" ? "2" : "1") +
           "\"\nstart = " + start + "\n" + rest + "\n";
  };
  return "format = 1\n[course]\ntitle = \"1\"\nfirst_day = 2027-01-12\n[cloth]\ncount = 22\n[thread.1]\npearl = 5\n[thread.2]\ntex = "
         "125\n" +
         part("10", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
         part("11", "cable", "[2, -22]", "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\nrows = 3") +
         part("12", "cable", "[100, 0]", "path = \"E 20, SE 12, E 20\"") +
         part("13", "blocks", "[100, 40]", "first = \"upright\"\npath = \"E 3 apart, E 3\"") +
         "[[lesson]]\nwork = [\"10\", \"11 / pass 1\"]\nnotes = \"77\"\n[[lesson]]\nwork = [\"11 / pass 2\", \"12\", \"13 / "
         "1..9\"]\n[[lesson]]\nwork = [\"13 / 10..27\", \"wash\", \"cut out\"]\n";
}

/// The numbers in a picture that begins at this item, up to its end.
std::set<int> numbers_in(const list::List& page) {
  std::set<int> numbers;
  for (const list::Item& item : page.items)
    if (item.role == list::Role::number)
      for (std::smatch m; const auto* line = std::get_if<list::Text>(&item.what);) {
        std::string rest = line->text;
        while (std::regex_search(rest, m, std::regex("[0-9]+"))) numbers.insert(std::stoi(m.str())), rest = m.suffix();
        break;
      }
  return numbers;
}

}  // namespace

TEST_CASE("every word on a page comes from the table: none is left in a pretend language") {
  const words::Phrases pretend = pretend::make_pretend(test::english());
  const course::Course course = course_from(figures());
  const plan::Plan plan = test::planned(course);
  for (const auto hand : {say::Hand::right, say::Hand::left})
    for (const list::List& page : test::pages(course, plan, {hand}, pretend))
      for (const list::Item& item : page.items) {
        const auto* line = std::get_if<list::Text>(&item.what);
        const bool letter = line && (item.role == list::Role::letter || item.role == list::Role::map_mark);  // A, B: names of pictures
        if (!line || letter) continue;
        CAPTURE(line->text);
        for (const std::string& word : pretend::plain_words(line->text)) CHECK(word.size() == 1);  // a picture's letter within a sentence
      }
}

TEST_CASE("counts to be sure add up on the page: each line so many times makes the last (geometry)") {
  int closed = 0;
  for (const auto& [name, text] : test::designs()) {
    const course::Course course = course_from(text);
    const plan::Plan plan = test::planned(course);
    const say::Voice voice{test::english(), say::Hand::right, course};
    for (const plan::LessonPlan& lesson : plan.lessons) {
      const picture::Sheet sheet{course, plan, lesson, voice, test::type(), picture::styles_for(picture::Print::normal), {}};
      for (const picture::Table& table : picture::count_tables(sheet)) {
        if (table.rows.size() < 2 || !table.rows.back().total || table.heads.size() < 2) continue;
        CAPTURE(name);
        for (std::size_t row = 0; row < table.heads.size(); ++row) {
          int sum = 0;
          for (const picture::Table::Row& line : table.rows)
            if (!line.total) sum += line.times * line.numbers[row];
          CHECK(sum == table.rows.back().numbers[row]);
        }
        ++closed;
      }
    }
  }
  CHECK(closed > 5);
}

TEST_CASE("an octagon's page: 92 and 88 stitches, one back stitch at the end of each slant (geometry, from the laws of the design)") {
  const std::string octagon = "E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34";
  const course::Course course =
      course_from(test::head("Octagon") + part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8, SE 7, SW 7, NW 6\"") +
                  part_text("border", "cable", "[24, -38]", "path = \"" + octagon + "\"") +
                  "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\ntitle = \"The border\"\nwork = [\"border\"]\n");
  const plan::Plan plan = test::planned(course);
  const say::Voice voice{test::english(), say::Hand::right, course};
  std::string text;
  std::set<int> numbers;
  for (const list::List& page : picture::handout(course, plan, 2, voice, test::type(), {})) {
    text += test::text_of_page(page);
    numbers.merge(numbers_in(page));
  }
  for (const char* said :
       {"Lesson 2 of 2", "The border", "Start here", "To be sure", "Then, clockwise", "At the end of each slant", "Four times: at each",
        "outer", "inner", "92", "88", "Both rows together: 180 stitches.", "Closing the round", "Right-handed."}) {
    CAPTURE(said);
    CHECK(text.find(said) != std::string::npos);
  }
  std::string running = text;
  std::replace(running.begin(), running.end(), '\n', ' ');
  std::smatch back;
  REQUIRE(std::regex_search(
      running, back, std::regex("there is a back stitch: up at ([0-9]+), one stitch ahead, and down at ([0-9]+), in the corner hole")));
  CHECK(std::stoi(back[1]) % 2 == 1);
  CHECK(std::stoi(back[2]) == std::stoi(back[1]) + 1);
  CHECK(numbers.contains(std::stoi(back[1])));
}

TEST_CASE("the left hand reads the mirror image: right for left, anticlockwise for clockwise") {
  const std::string text = test::designs()[0].second;
  std::string right, left;
  for (const list::List& page : test::pages(text)) right += test::text_of_page(page);
  for (const list::List& page : test::pages(text, {say::Hand::left})) left += test::text_of_page(page);
  CHECK(right.find("Then, clockwise") != std::string::npos);
  CHECK(right.find("Then, anticlockwise") == std::string::npos);
  CHECK(left.find("Then, anticlockwise") != std::string::npos);
  CHECK(left.find("Then, clockwise") == std::string::npos);
}
