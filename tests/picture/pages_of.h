// Handouts for tests: the program's own words and fonts, courses read as a teacher writes them.
#pragma once

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

#include "assets/assets.h"
#include "course_text.h"
#include "paint/cairo/paint.h"
#include "picture/handout.h"
#include "plan/plan.h"

namespace test {

/// Kinds that the shared designs lack, each over a part of the cloth of its own; invented.
inline const std::string every_kind = R"toml(format = 1
[course]
title = "Every Kind"
teacher = "Ingrid Vik (invented)"
first_day = 2027-02-02
[cloth]
count = 22
size_threads = [160, 160]
[thread.heavy]
pearl = 5
[thread.fine]
pearl = 8
[[part]]
name = "pyramid"
kind = "satin"
thread = "heavy"
start = [-20, -20]
over = [2, 3, 4, 5, 4, 3, 2]
along = "E"
toward = "N"
[[part]]
name = "star"
kind = "star"
thread = "heavy"
centre = [20, -20]
reach = 8
[[part]]
name = "eyelets"
kind = "eyelet"
thread = "fine"
centres = [[-20, 20], [-12, 20]]
size = 8
[[part]]
name = "four"
kind = "four-sided"
thread = "fine"
start = [10, 10]
path = "E 16, S 12"
[[part]]
name = "line"
kind = "backstitch"
thread = "fine"
start = [-40, 40]
path = "E 20, NE 10"
[[part]]
name = "edge"
kind = "edge"
thread = "heavy"
start = [-60, -60]
path = "E 120, S 120, W 120, N 120"
[[lesson]]
work = ["pyramid", "star"]
[[lesson]]
work = ["eyelets", "four"]
[[lesson]]
work = ["line"]
[[lesson]]
work = ["edge"]
)toml";

inline const words::Phrases& english() {
  static const words::Phrases phrases = [] {
    auto read = words::Phrases::read(assets::table("phrases/en.toml"), "assets/phrases/en.toml");
    REQUIRE_MESSAGE(read.has_value(), read.error().what);
    return *std::move(read);
  }();
  return phrases;
}

inline const list::Measure& type() {
  static const std::unique_ptr<paint::Type> opened = [] {
    auto result = paint::Type::open();
    REQUIRE_MESSAGE(result.has_value(), result.error().what);
    return *std::move(result);
  }();
  return *opened;
}

inline plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

struct Order {
  say::Hand hand = say::Hand::right;
  picture::Print print = picture::Print::normal;
  course::Paper paper = course::Paper::a4;
};

/// Every page of every lesson.
inline std::vector<list::List> pages(const course::Course& course, const plan::Plan& plan, const Order& order = {},
                                     const words::Phrases& phrases = english()) {
  std::vector<list::List> all;
  const say::Voice voice{phrases, order.hand, course};
  for (const plan::LessonPlan& lesson : plan.lessons)
    for (list::List& page : picture::handout(course, plan, lesson.number, voice, type(), picture::page_size(order.paper), order.print))
      all.push_back(std::move(page));
  return all;
}

inline std::vector<list::List> pages(const std::string& course_text, const Order& order = {}) {
  const course::Course course = course_from(course_text);
  return pages(course, planned(course), order);
}

inline std::string head(const std::string& title, const std::string& cloth = "count = 22") {
  return "format = 1\n[course]\ntitle = \"" + title + "\"\nfirst_day = 2027-01-12\nminutes = 90\n[cloth]\n" + cloth +
         "\n[thread.heavy]\npearl = 5\n[thread.fine]\npearl = 8\n";
}

/// All type of a page, one line of it a line.
inline std::string text_of_page(const list::List& page) {
  std::string text;
  for (const list::Item& item : page.items)
    if (const auto* line = std::get_if<list::Text>(&item.what)) text += line->text + "\n";
  return text;
}

/// Designs of many sorts: closed and open rows, blocks joined, apart and in steps, every convention.
inline std::vector<std::pair<std::string, std::string>> designs() {
  const std::string ring = part_text("ring 1", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
  std::vector<std::pair<std::string, std::string>> all;
  all.emplace_back("frost", text_of("lessons/frost.course.toml"));
  all.emplace_back("square",
                   head("Square", "count = 25") + part_text("square", "cable", "[0, 0]", "path = \"E 40, S 40, W 40, N 40\"\nrows = 3"));
  all.emplace_back("open row, line = hole", head("Wave", "count = 28\nline = \"hole\"") +
                                                part_text("wave", "cable", "[0, 0]", "path = \"E 20, SE 12, E 20, NE 12, E 16\"") +
                                                part_text("dash", "blocks", "[10, 40]", "first = \"upright\"\npath = \"E 5\""));
  all.emplace_back("from the edges, per cm",
                   head("Frame", "per_cm = 8.7\nbegin = \"edges\"") +
                       part_text("frame", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 5, SE 2, SW 2, W 4, NW 2, NE 1\""));
  all.emplace_back("far landmarks",
                   head("Far") + ring + part_text("border", "cable", "[-60, -80]", "path = \"E 160, S 160, W 160, N 160\""));
  all.emplace_back("apart",
                   head("Apart") + part_text("line", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 4 apart, E 3\"") +
                       part_text("diamond", "cable", "[20, 30]", "path = \"SE 20, SW 20, NW 20, NE 20\"\nrows = 3\nrows_lie = \"right\""));
  all.emplace_back("one block", head("One", "count = 14") + part_text("only", "blocks", "[0, 0]", "path = \"E 1\"") +
                                    part_text("dash", "cable", "[10, 0]", "path = \"E 4\""));
  all.emplace_back("two rings at once",
                   head("Mixed") + ring +
                       part_text("ring 2", "blocks", "[60, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
                       part_text("border", "cable", "[6, -28]", "path = \"E 80, SE 30, S 8, SW 30, W 80, NW 30, N 8, NE 30\"\nrows = 3") +
                       "[[lesson]]\ntitle = \"Everything at once, with a rather long title that must go over more than one line\"\n"
                       "work = [\"ring 1\", \"ring 2\", \"border / pass 1\"]\nnotes = \"Bring a magnifier.\"\n"
                       "[[lesson]]\nwork = [\"border / pass 2\", \"wash\", \"cut out\"]\n");
  all.emplace_back("cutting",
                   head("Cut") + ring + part_text("border", "cable", "[-20, -24]", "path = \"E 52, S 52, W 52, N 52\"") +
                       "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"fine\"\nwithin = [\"ring 1\"]\n"
                       "[[lesson]]\nwork = [\"ring 1\", \"border\"]\n[[lesson]]\nwork = [\"heart / cut\", \"wash\"]\n");
  all.emplace_back("odd names, tiny lessons",
                   "format = 1\n[course]\ntitle = \"Odd “names” & <signs>, Ærø\"\n[cloth]\ncount = 22\n[thread.heavy]\ntex = 100\n" +
                       part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
                       part_text("over it", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 3\"") +
                       part_text("shrinks", "cable", "[30, 0]", "path = \"E 4, S 4, W 4, N 4\"\nrows = 3") +
                       part_text("forgotten", "cable", "[60, 0]", "path = \"E 2\"") +
                       "[[lesson]]\nwork = [\"ring / 1..1\", \"shrinks\"]\nnotes = \"Twice.\\n\\nTwo paragraphs.\"\n"
                       "[[lesson]]\nwork = [\"ring / 2..3\", \"over it\"]\n[[lesson]]\nwork = [\"wash\"]\n"
                       "[[lesson]]\nwork = [\"ring / 4..60\", \"cut out\"]\n");
  return all;
}

/// The shared designs and the kinds that they lack.
inline std::vector<std::pair<std::string, std::string>> all_designs() {
  std::vector<std::pair<std::string, std::string>> all = designs();
  all.emplace_back("every kind", every_kind);
  return all;
}

}  // namespace test
