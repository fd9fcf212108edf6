#include "base/date.h"

#include <fmt/format.h>

namespace base {
namespace {

std::optional<unsigned> number(std::string_view digits) {
  unsigned value = 0;
  for (const char c : digits) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + static_cast<unsigned>(c - '0');
  }
  return value;
}

}  // namespace

std::optional<Date> parse_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const auto year = number(text.substr(0, 4)), month = number(text.substr(5, 2)), day = number(text.substr(8, 2));
  if (!year || !month || !day) return std::nullopt;
  const Date date{std::chrono::year{static_cast<int>(*year)}, std::chrono::month{*month}, std::chrono::day{*day}};
  return date.ok() ? std::optional(date) : std::nullopt;
}

std::string iso(Date date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

Date add_days(Date date, int days) { return std::chrono::sys_days(date) + std::chrono::days(days); }

int iso_weekday(Date date) { return static_cast<int>(std::chrono::weekday(std::chrono::sys_days(date)).iso_encoding()); }

Week iso_week(Date date) {
  const std::chrono::sys_days thursday = std::chrono::sys_days(date) + std::chrono::days(4 - iso_weekday(date));
  const std::chrono::year year = Date(thursday).year();
  const auto days = (thursday - std::chrono::sys_days(year / std::chrono::January / 1)).count();
  return {static_cast<int>(year), static_cast<int>(days / 7) + 1};
}

}  // namespace base
