// PDF held against programs that share nothing with how it is made: qpdf's own rules, Poppler's facts, fonts, words and pixels.
#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>

#include "publish/grey.h"
#include "publish/handed_out.h"

namespace {

using nlohmann::json;

constexpr const char* course_file = "course-frost-on-the-pane.pdf";

publish::HandoutOrder order_into(const TestFolder& folder, publish::Sheets sheets = publish::Sheets::single) {
  publish::HandoutOrder order;
  order.into = folder.path;
  order.forms = {publish::Form::pdf};
  order.sheets = sheets;
  return order;
}

std::vector<list::List> pages_of(const course::Course& course, const plan::Plan& plan, int lesson, say::Hand hand = say::Hand::right) {
  const auto type = paint::Type::open();
  REQUIRE(type);
  return picture::handout(course, plan, lesson, say::Voice{test::english(), hand, course}, **type, picture::page_size(course::Paper::a4));
}

/// Blanks that do not break count as blanks.
std::string with_single_blanks(std::string text) {
  for (std::size_t at; (at = text.find("\xC2\xA0")) != std::string::npos;) text.replace(at, 2, " ");
  std::istringstream in(text);
  std::string all;
  for (std::string word; in >> word;) all += (all.empty() ? "" : " ") + word;
  return all;
}

json told_by_qpdf(const std::filesystem::path& file) {
  const test::Heard heard = test::ask("qpdf --json " + test::quoted(file));
  REQUIRE(heard.code == 0);
  return json::parse(heard.out);
}

std::vector<std::string> labels_of(const std::filesystem::path& file) {
  std::vector<std::string> labels;
  const json told = told_by_qpdf(file);
  std::string prefix;
  int from = 1, first = 1;
  for (const json& page : told["pages"]) {  // qpdf gives a label where its numbering changes
    if (const json& label = page["label"]; !label.is_null()) {
      prefix = label.contains("/P") ? label["/P"].get<std::string>().substr(2) : "";
      from = label.contains("/St") ? label["/St"].get<int>() : 1;
      first = page["pageposfrom1"].get<int>();
    }
    labels.push_back(prefix + std::to_string(from + page["pageposfrom1"].get<int>() - first));
  }
  return labels;
}

}  // namespace

TEST_CASE("every PDF passes qpdf's check; all fonts are embedded with their letters; the same bytes again") {
  const TestFolder folder, again;
  const course::Course course = test::sample();
  const publish::Written written = test::hand_out(course, order_into(folder));
  CHECK(written.files.size() == 8);  // five lessons, what to buy, preparing and finishing, the course
  test::hand_out(course, order_into(again));
  for (const auto& file : written.files) {
    CAPTURE(file);
    const test::Heard checked = test::ask("qpdf --check " + test::quoted(file));
    CHECK(checked.code == 0);
    CHECK(checked.out.find("WARNING") == std::string::npos);
    std::istringstream fonts(test::ask("pdffonts " + test::quoted(file)).out);
    std::string line;
    std::getline(fonts, line), std::getline(fonts, line);
    int n = 0;
    for (; std::getline(fonts, line); ++n) CHECK_MESSAGE(line.find(" yes yes yes ") != std::string::npos, line);
    CHECK(n >= 2);
    CHECK(bytes_of(file) == bytes_of(again.path / file.filename()));
  }
}

TEST_CASE("facts: title, author, language, paper, no date; titles with markup are plain text") {
  const TestFolder folder;
  const std::string title = R"(<script>alert("x")</script> & Tom, "quoted")";
  course::Course course = test::sample(title);
  publish::HandoutOrder order = order_into(folder);
  const publish::Written written = test::hand_out(course, order);
  const std::string a4 = test::ask("pdfinfo " + test::quoted(written.files.back())).out;
  CHECK(a4.find("Title:           " + title + "\n") != std::string::npos);
  CHECK(a4.find("Author:          " + course.teacher + "\n") != std::string::npos);
  CHECK(a4.find("(A4)") != std::string::npos);
  CHECK(a4.find("JavaScript:      no") != std::string::npos);
  CHECK(a4.find("CreationDate") == std::string::npos);
  const json told = told_by_qpdf(written.files.back());
  bool language = false;
  for (const auto& [name, object] : told["qpdf"][1].items())
    if (object.contains("value") && object["value"].is_object() && object["value"].value("/Type", "") == "/Catalog")
      language = object["value"].value("/Lang", "") == "u:en" && object["value"]["/ViewerPreferences"]["/DisplayDocTitle"] == true;
  CHECK(language);
  order.paper = course::Paper::letter;
  CHECK(test::ask("pdfinfo " + test::quoted(test::hand_out(course, order).files[0])).out.find("612 x 792 pts (letter)") !=
        std::string::npos);
}

TEST_CASE("the words of every page come out again whole and in their order") {
  const TestFolder folder;
  const course::Course course = test::sample();
  const plan::Plan plan = test::planned(course);
  publish::HandoutOrder order = order_into(folder);
  order.hand = course::Hand::both;
  const auto written = publish::handouts(course, plan, test::english(), order, {}, {});
  REQUIRE(written);
  for (const say::Hand hand : {say::Hand::right, say::Hand::left})
    for (int lesson = 1; lesson <= 5; ++lesson) {
      const auto file = written->files[static_cast<std::size_t>(lesson - 1 + (hand == say::Hand::left ? 8 : 0))];
      const std::vector<list::List> pages = pages_of(course, plan, lesson, hand);
      for (std::size_t p = 0; p < pages.size(); ++p) {
        const std::string at = std::to_string(p + 1);
        const std::string said =
            with_single_blanks(test::ask("pdftotext -raw -f " + at + " -l " + at + " " + test::quoted(file) + " -").out);
        std::size_t from = 0;
        for (const list::Item& item : pages[p].items) {
          const auto* text = std::get_if<list::Text>(&item.what);
          if (!text || (item.role != list::Role::text && item.role != list::Role::heading)) continue;
          const std::size_t found = said.find(with_single_blanks(text->text), from);
          CAPTURE(file.filename());
          CAPTURE(said);
          CHECK_MESSAGE(found != std::string::npos, "page " << at << ": " << text->text);
          if (found != std::string::npos) from = found;
        }
      }
    }
}

TEST_CASE("bookmarks lead to lessons and close-ups, links from the map to close-ups; labels say lesson and page") {
  const TestFolder folder;
  const course::Course course = test::sample();
  const plan::Plan plan = test::planned(course);
  test::hand_out(course, order_into(folder));
  const json told = told_by_qpdf(folder / course_file);
  CHECK(told["outlines"].size() == 7);  // five lessons, what to buy, preparing and finishing
  std::size_t close_ups = 0;
  for (const json& chapter : told["outlines"]) close_ups += chapter["kids"].size();
  CHECK(close_ups == plan.close_ups.size());
  CHECK(told["outlines"][3]["title"] == "The border cable, first time round");
  CHECK(told["outlines"][3]["kids"][0]["title"] == "A: Start here");
  std::size_t links = 0, jumps = 0, label = 0;
  for (const auto& [name, object] : told["qpdf"][1].items())
    if (object.contains("value") && object["value"].is_object() && object["value"].value("/Subtype", "") == "/Link") ++links;
  const std::vector<std::string> labels = labels_of(folder / course_file);
  for (int lesson = 1; lesson <= 5; ++lesson) {
    const auto pages = pages_of(course, plan, lesson);
    for (std::size_t p = 0; p < pages.size(); ++p) {
      jumps += pages[p].jumps.size();
      REQUIRE(label < labels.size());
      CHECK(labels[label++] == std::to_string(lesson) + "-" + std::to_string(p + 1));
    }
  }
  CHECK(jumps > plan.close_ups.size());
  CHECK(links == jumps);
}

TEST_CASE("two pages on a sheet of A3; a booklet's pages follow one another when it is folded") {
  const TestFolder fold, booklet;
  const course::Course course = test::sample();
  test::hand_out(course, order_into(fold, publish::Sheets::fold));
  const publish::Written written = test::hand_out(course, order_into(booklet, publish::Sheets::booklet));
  CHECK(test::ask("pdfinfo " + test::quoted(fold / course_file)).out.find("(A3)") != std::string::npos);
  for (const auto& file : written.files) CHECK(test::ask("qpdf --check " + test::quoted(file)).code == 0);
  const auto pages_on = [](const std::filesystem::path& file) {  // numbers at the feet of the pages, as they are read on each side
    std::vector<std::string> feet;
    const std::string text = test::ask("pdftotext -raw " + test::quoted(file) + " -").out;
    for (std::size_t at = 0; (at = text.find(" / ", at + 1)) != std::string::npos;) feet.push_back(text.substr(at - 1, 5));
    return feet;
  };
  const std::string lesson = "lesson-04-the-border-cable-first-time-round.pdf";  // four pages
  CHECK(pages_on(fold / lesson) == std::vector<std::string>{"1 / 4", "2 / 4", "3 / 4", "4 / 4"});
  CHECK(pages_on(booklet / lesson) == std::vector<std::string>{"4 / 4", "1 / 4", "2 / 4", "3 / 4"});
  CHECK(pages_on(booklet / "lesson-05-the-border-cable-second-time-round.pdf") == std::vector<std::string>{"1 / 3", "2 / 3", "3 / 3"});
}

TEST_CASE("Poppler's pixels of the PDF are those of the PNG within 2 of 256 shades a square millimetre, and no dark dot is in one alone") {
  const TestFolder folder;
  const course::Course course = test::sample();
  const plan::Plan plan = test::planned(course);
  test::hand_out(course, order_into(folder));
  const auto type = paint::Type::open();
  REQUIRE(type);
  for (const int lesson : {1, 4}) {
    const auto pages = pages_of(course, plan, lesson);
    const std::string stem = lesson == 1 ? "lesson-01-the-ring-of-blocks-first-half" : "lesson-04-the-border-cable-first-time-round";
    REQUIRE(test::ask("pdftoppm -r 150 -gray " + test::quoted(folder / (stem + ".pdf")) + " " + test::quoted(folder / "seen")).code == 0);
    for (std::size_t p = 0; p < pages.size(); ++p) {
      const auto ours = paint::raster(pages[p], **type, 150);
      REQUIRE(ours);
      const test::Grey theirs = test::read_pgm(bytes_of(folder / ("seen-" + std::to_string(p + 1) + ".pgm")));
      REQUIRE(std::abs(theirs.width - ours->width) <= 1);
      const test::Apart apart = test::apart(test::grey_of(*ours), theirs, 6);
      CAPTURE(stem);
      CAPTURE(p);
      CHECK(apart.mean < 2);
      CHECK(apart.alone < 1e-5);
      const auto mirrored = paint::raster(pages_of(course, plan, lesson, say::Hand::left)[p], **type, 150);
      REQUIRE(mirrored);
      const test::Apart other = test::apart(test::grey_of(*mirrored), theirs, 6);
      CHECK(other.alone > 1e-3);  // that it can fail
    }
  }
}
