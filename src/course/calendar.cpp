#include "course/calendar.h"

#include <algorithm>

namespace course {
namespace {

int days_between(Every every) {
  switch (every) {
    case Every::week: return 7;
    case Every::two_weeks: return 14;
    case Every::day: return 1;
  }
  return 7;
}

bool is_holiday(const Course& course, base::Date date) {
  return std::find(course.holidays.begin(), course.holidays.end(), date) != course.holidays.end();
}

/// The n days of the rhythm, holidays passed over.
std::vector<std::optional<base::Date>> by_rhythm(const Course& course, int n) {
  std::vector<std::optional<base::Date>> days(static_cast<std::size_t>(n));
  if (!course.first_day) return days;
  base::Date day = *course.first_day;
  for (auto& slot : days) {
    while (is_holiday(course, day)) day = base::add_days(day, days_between(course.every));
    slot = day;
    day = base::add_days(day, days_between(course.every));
  }
  return days;
}

}  // namespace

std::vector<std::optional<base::Date>> lesson_days(const Course& course, int n) {
  std::vector<std::optional<base::Date>> days = by_rhythm(course, n);
  if (!course.days.empty()) {
    for (std::size_t i = 0; i < days.size(); ++i)
      days[i] = i < course.days.size() ? std::optional(course.days[i]) : std::nullopt;
  }
  for (std::size_t i = 0; i < days.size() && i < course.lessons.size(); ++i)
    if (course.lessons[i].date) days[i] = course.lessons[i].date;
  return days;
}

}  // namespace course
