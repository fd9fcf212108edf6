// [course]: title, days, hours, class.
#include <fmt/format.h>

#include <algorithm>

#include "assets/assets.h"
#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"

namespace file {
namespace {

constexpr std::size_t holiday_limit = 1000, seen_limit = 100;

void read_title(const TableReader& table, course::Course& course) {
  table.require("title", "title = \"...\", the name of the course");
  table.line("title", line_limit, course.title);
  const Node* node = table.find("title");
  const Text* text = node ? node->as<Text>() : nullptr;
  if (text && text->value.find_first_not_of(" \t") == std::string::npos)
    table.faults().add(*node, "an empty title", "the name of the course");
}

/// Days rise, each later than the one before. What is no day is told elsewhere.
void check_rising(const Node& node, FaultList& faults) {
  const List* list = node.as<List>();
  const base::Date* before = nullptr;
  for (const Node& item : list ? list->items : std::vector<Node>{}) {
    const auto* day = item.as<base::Date>();
    if (!day || day->year() < first_year) continue;
    if (before && *day <= *before) faults.add(item, base::iso(*day), fmt::format("a day after {}", base::iso(*before)));
    before = day;
  }
}

void read_days(const TableReader& table, course::Course& course) {
  table.take("first_day", read_date, course.first_day);
  table.word<course::Every>("every", {{"week", course::Every::week}, {"two weeks", course::Every::two_weeks}, {"day", course::Every::day}},
                            course.every);
  table.list("days", course::lesson_limit, read_date, course.days);
  const Entry* days = table.site().table->find("days");
  if (!days) return;
  check_rising(days->node, table.faults());
  if (table.find("every")) table.faults().add_key(*days, "both \"every\" and \"days\"", "one of them: a rhythm, or the days themselves");
  if (course.first_day && !course.days.empty() && course.days[0] != *course.first_day)
    table.faults().add(days->node.as<List>()->items[0], fmt::format("{} as first of the days", base::iso(course.days[0])),
                       fmt::format("the first_day, {}", base::iso(*course.first_day)));
}

std::optional<std::string> read_zone(const Node& node, FaultList& faults) {
  constexpr std::string_view allowed = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_+-/";
  const auto zone = read_line(node, name_limit, faults);
  if (!zone || (!zone->empty() && zone->find_first_not_of(allowed) == std::string::npos)) return zone;
  faults.add(node, shown(*zone), "a time zone such as \"Europe/Oslo\"");
  return std::nullopt;
}

std::optional<std::string> read_technique(const Node& node, FaultList& faults) { return read_line(node, line_limit, faults); }

/// One of those that there is a table of phrases in.
std::optional<std::string> read_language(const Node& node, FaultList& faults) {
  std::vector<std::string> known;
  for (const std::string_view language : assets::languages()) known.emplace_back(language);
  const auto index = read_word(node, known, faults);
  return index ? std::optional(known[*index]) : std::nullopt;
}

}  // namespace

void read_course_table(const Entry* entry, Reading& reading) {
  const auto site = table_at(entry, "[course]", reading.faults);
  if (!site) return;
  const TableReader table(*site, reading.faults);
  course::Course& course = reading.course;
  read_title(table, course);
  table.line("teacher", line_limit, course.teacher);
  read_days(table, course);
  table.take("start_time", read_time, course.start_time);
  table.take("time_zone", read_zone, course.time_zone);
  table.list("holidays", holiday_limit, read_date, course.holidays);
  table.whole("minutes", 1, 1440, course.minutes);
  table.whole("lessons", 1, course::lesson_limit, course.lessons_wanted);
  table.whole("students", 1, 10000, course.students);
  table.whole("spares", 0, 10000, course.spares);
  using course::Hand;
  table.word<Hand>("hand", {{"right", Hand::right}, {"left", Hand::left}, {"both", Hand::both}}, course.choices.hand);
  table.word<course::Paper>("paper", {{"A4", course::Paper::a4}, {"Letter", course::Paper::letter}}, course.choices.paper);
  table.take("language", read_language, course.choices.language);
  table.whole("home_minutes", 0, 1440, course.home_minutes);
  table.list("seen_before", seen_limit, read_technique, course.seen_before);
  reading.students_written = table.find("students") != nullptr;
  reading.hand_written = table.find("hand") != nullptr;
  table.refuse_others(course_keys());
}

}  // namespace file
