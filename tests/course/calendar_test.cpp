// Days of lessons. Reference: RFC 5545, 3.8.5.3, the weekly example (1997-09-02, ten times).
#include "course/calendar.h"

#include <doctest/doctest.h>

namespace {

base::Date day(const char* iso) { return *base::parse_date(iso); }

std::vector<std::string> days_of(const course::Course& course, int n) {
  std::vector<std::string> out;
  for (const auto& date : course::lesson_days(course, n)) out.push_back(date ? base::iso(*date) : "none");
  return out;
}

}  // namespace

TEST_CASE("a weekly course has the days of RFC 5545's weekly example") {
  course::Course course;
  course.first_day = day("1997-09-02");
  CHECK(days_of(course, 10) == std::vector<std::string>{"1997-09-02", "1997-09-09", "1997-09-16", "1997-09-23", "1997-09-30", "1997-10-07",
                                                        "1997-10-14", "1997-10-21", "1997-10-28", "1997-11-04"});
}

TEST_CASE("holidays are passed over, and a lesson's own day comes first") {
  course::Course course;
  course.first_day = day("2027-01-12");
  course.holidays = {day("2027-01-19")};
  course.lessons.resize(3);
  course.lessons[1].date = day("2027-01-28");
  CHECK(days_of(course, 3) == std::vector<std::string>{"2027-01-12", "2027-01-28", "2027-02-02"});
}

TEST_CASE("given days, and none left") {
  course::Course course;
  course.days = {day("2027-01-12"), day("2027-01-26")};
  CHECK(days_of(course, 3) == std::vector<std::string>{"2027-01-12", "2027-01-26", "none"});
}

TEST_CASE("fortnights and days, and no first day at all") {
  course::Course course;
  CHECK(days_of(course, 1) == std::vector<std::string>{"none"});
  course.first_day = day("2027-02-26");
  course.every = course::Every::two_weeks;
  CHECK(days_of(course, 2) == std::vector<std::string>{"2027-02-26", "2027-03-12"});
  course.every = course::Every::day;
  CHECK(days_of(course, 3) == std::vector<std::string>{"2027-02-26", "2027-02-27", "2027-02-28"});
}
