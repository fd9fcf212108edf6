// [[student]]: the class, as far as the teacher wants it written down: a name, or nothing but the hand that holds the needle.
#include <fmt/format.h>

#include <algorithm>

#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"

namespace file {
namespace {

void read_student(const Site& site, Reading& reading) {
  const TableReader table(site, reading.faults);
  course::Student student;
  student.place = site.place;
  table.line("name", name_limit, student.name);
  using course::Hand;
  table.word<Hand>("hand", {{"right", Hand::right}, {"left", Hand::left}}, student.hand);
  table.refuse_others(student_keys());
  reading.course.class_list.push_back(std::move(student));
}

/// What was not written follows from the list: how many students, and for which hand the pages are.
void conclude(Reading& reading) {
  course::Course& course = reading.course;
  if (course.class_list.empty()) return;
  if (!reading.students_written) course.students = static_cast<int>(course.class_list.size());
  if (reading.hand_written) return;
  const int left = course::left_handed(course);
  if (left > 0) course.choices.hand = left >= course.students ? course::Hand::left : course::Hand::both;
}

}  // namespace

void read_student_tables(const Entry* entry, Reading& reading) {
  const std::vector<Site> sites = tables_at(entry, "student", reading.faults);
  for (std::size_t i = 0; i < sites.size(); ++i) {
    if (i == course::student_limit)
      return reading.faults.add(sites[i].place, sites[i].length, fmt::format("{} students", sites.size()),
                                fmt::format("at most {}", course::student_limit));
    read_student(sites[i], reading);
  }
  conclude(reading);
}

}  // namespace file
