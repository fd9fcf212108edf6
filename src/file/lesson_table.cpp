// [[lesson]]: what is done when; left out, the lessons are worked out.
#include <fmt/format.h>

#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"
#include "file/work_item.h"

namespace file {
namespace {

constexpr std::size_t work_limit = 1000;

void read_lesson(const Site& site, Reading& reading) {
  const TableReader table(site, reading.faults);
  course::Lesson lesson;
  lesson.place = site.place;
  table.line("title", line_limit, lesson.title);
  for (const Node& item : table.items("work", work_limit))
    if (auto work = read_work_item(item, reading)) lesson.work.push_back(std::move(*work));
  table.take("notes", read_notes, lesson.notes);
  table.take("date", read_date, lesson.date);
  table.whole("minutes", 1, 1440, lesson.minutes);
  table.take("locked", read_flag, lesson.locked);
  table.refuse_others(lesson_keys());
  reading.course.lessons.push_back(std::move(lesson));
}

}  // namespace

void read_lesson_tables(const Entry* entry, Reading& reading) {
  const std::vector<Site> sites = tables_at(entry, "lesson", reading.faults);
  for (std::size_t i = 0; i < sites.size(); ++i) {
    if (i == course::lesson_limit)
      return reading.faults.add(sites[i].place, sites[i].length, fmt::format("{} lessons", sites.size()),
                                fmt::format("at most {}", course::lesson_limit));
    read_lesson(sites[i], reading);
  }
}

}  // namespace file
