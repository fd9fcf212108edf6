// Calendar days: ISO 8601 for the form, the week and its days; dates of RFC 5545, 3.8.5.3, for weekly rhythms; days counted one by one.
#include "base/date.h"

#include <doctest/doctest.h>

#include <initializer_list>

using base::Date;

namespace {

Date day(std::string_view text) {
  const auto date = base::parse_date(text);
  REQUIRE_MESSAGE(date.has_value(), text);
  return *date;
}

/// The rule that everyone learns: each fourth year, but of the centuries only each fourth.
bool leap(int year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

int days_in(int year, int month) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return days[month - 1] + (month == 2 && leap(year));
}

}  // namespace

TEST_CASE("the form is year, month and day in figures, and the day must be one") {
  for (const std::string_view text : {"2027-01-12", "2000-02-29", "2028-02-29", "0001-01-01", "9999-12-31"}) CHECK(base::iso(day(text)) == text);
  for (const std::string_view text : {"2027-02-29", "1900-02-29", "2027-04-31", "2027-13-01", "2027-00-10", "2027-01-00", "2027-1-12", "27-01-12", "2027/01/12",
                                      "2027-01-12 ", "2027-01-1x", "+027-01-12", "-027-01-12", "", "2027-01-12T18:30", "２０２７-01-12"})
    CHECK_FALSE_MESSAGE(base::parse_date(text), text);
}

TEST_CASE("days counted one by one from a known Monday, over four hundred years") {
  // 2000-01-03 was a Monday (ISO 8601 has week 1 of 2000 begin on it).
  Date date = day("2000-01-03");
  int year = 2000, month = 1, of_month = 3, wrong = 0;
  for (int i = 0; i < 146097; ++i) {
    const bool same = static_cast<int>(date.year()) == year && static_cast<unsigned>(date.month()) == static_cast<unsigned>(month) &&
                      static_cast<unsigned>(date.day()) == static_cast<unsigned>(of_month);
    wrong += !same || base::iso_weekday(date) != i % 7 + 1;
    date = base::add_days(date, 1);
    if (++of_month > days_in(year, month)) {
      of_month = 1;
      if (++month > 12) {
        month = 1;
        ++year;
      }
    }
  }
  CHECK(wrong == 0);
  CHECK(base::iso(date) == "2400-01-03");
  CHECK(base::iso(base::add_days(date, -146097)) == "2000-01-03");
}

TEST_CASE("weekdays that ISO 8601 weeks rest on") {
  CHECK(base::iso_weekday(day("2005-01-01")) == 6);  // 2004-W53-6
  // 2026 has a week 53: a common year has one when it begins on a Thursday.
  CHECK(base::iso_weekday(day("2026-01-01")) == 4);
  CHECK(base::iso_weekday(day("2026-12-31")) == 4);
}

TEST_CASE("ten weeks from Tuesday 2 September 1997, the example of RFC 5545") {
  const char* days[] = {"1997-09-02", "1997-09-09", "1997-09-16", "1997-09-23", "1997-09-30", "1997-10-07", "1997-10-14", "1997-10-21", "1997-10-28", "1997-11-04"};
  for (int week = 0; week < 10; ++week) {
    const Date date = base::add_days(day("1997-09-02"), 7 * week);
    CHECK(base::iso(date) == days[week]);
    CHECK(base::iso_weekday(date) == 2);
  }
}

TEST_CASE("over the ends of months, years and leap days") {
  CHECK(base::iso(base::add_days(day("2026-12-29"), 7)) == "2027-01-05");
  CHECK(base::iso(base::add_days(day("2028-02-28"), 1)) == "2028-02-29");
  CHECK(base::iso(base::add_days(day("2027-02-28"), 1)) == "2027-03-01");
  CHECK(base::iso(base::add_days(day("2027-03-01"), -1)) == "2027-02-28");
}

TEST_CASE("weeks of ISO 8601: 1 January 2005 lies in week 53 of 2004; 2026 has a week 53; every week has seven days") {
  const auto week = [](const char* day) { return base::iso_week(*base::parse_date(day)); };
  CHECK(week("2005-01-01") == base::Week{2004, 53});
  CHECK(base::iso_weekday(*base::parse_date("2005-01-01")) == 6);
  CHECK(week("2026-12-31") == base::Week{2026, 53});
  CHECK(week("2027-01-03") == base::Week{2026, 53});
  CHECK(week("2027-01-04") == base::Week{2027, 1});
  CHECK(week("2024-12-30") == base::Week{2025, 1});
  base::Week before = week("1999-12-27");
  base::Date day = *base::parse_date("2000-01-03");
  for (int i = 0; i < 3000; ++i, day = base::add_days(day, 7)) {
    const base::Week now = base::iso_week(day);
    CHECK(now == base::iso_week(base::add_days(day, 6)));
    CHECK(((now.year == before.year && now.week == before.week + 1) || (now.year == before.year + 1 && now.week == 1 && before.week >= 52)));
    before = now;
  }
}
