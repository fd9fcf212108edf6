// Calendar days without a clock or a zone (proleptic Gregorian).
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace base {

using Date = std::chrono::year_month_day;

/// "2027-01-12", or nothing when it is not a day of the calendar.
std::optional<Date> parse_date(std::string_view text);
std::string iso(Date date);
Date add_days(Date date, int days);
/// 1 = Monday .. 7 = Sunday (ISO 8601).
int iso_weekday(Date date);
/// The week and the year that it belongs to (ISO 8601: weeks begin on Monday, week 1 has the year's first Thursday).
struct Week {
  int year = 0, week = 1;
  friend bool operator==(const Week&, const Week&) = default;
};
Week iso_week(Date date);

}  // namespace base
