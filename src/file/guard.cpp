#include "file/guard.h"

#include <fmt/format.h>

#include "file/slip.h"

namespace file {
namespace {

std::optional<base::Fault> guard_one(const Statement& s, const Lines& lines, const Outline& outline) {
  const auto whole = [&](std::string found, std::string expected) {
    const base::TextPlace place = lines.place_of(s.begin);
    return base::Fault{place, lines.rest_of_line(place), std::move(found), std::move(expected), ""};
  };
  if (s.depth > bracket_limit) return whole(fmt::format("{} brackets within brackets", s.depth), fmt::format("at most {}", bracket_limit));
  if (s.most_dots > key_dot_limit)
    return whole(fmt::format("a key of {} names parted by dots", s.most_dots + 1), fmt::format("at most {} names", key_dot_limit + 1));
  if (s.long_word)
    return base::Fault{lines.place_of(*s.long_word), static_cast<int>(word_limit), "a value that goes on and on without quotation marks",
                       fmt::format("a number, a date or a word of at most {} characters; a text stands in \"...\"", word_limit), ""};
  if (s.after_date) return Slip{"date", "", *s.after_date, lines, outline}.here("nothing more behind a date");
  if (s.no_value) return Slip{"array", "", *s.no_value, lines, outline}.here("a value, or ] to close the list");
  if (s.nameless) return Slip{"key", "", *s.nameless, lines, outline}.here(std::string(plain_name));
  return std::nullopt;
}

}  // namespace

std::optional<base::Fault> guard(const Outline& outline, const Lines& lines) {
  std::size_t headers = 0, dots = 0;
  for (const Statement& s : outline.statements) {
    if (auto fault = guard_one(s, lines, outline)) return fault;
    headers += s.header ? 1 : 0;
    dots += s.dots;
    if (headers > header_limit)
      return base::Fault{lines.place_of(s.begin), 1, fmt::format("more than {} tables", header_limit),
                         "at most 10000 parts and 200 lessons", ""};
    if (dots > dot_limit)
      return base::Fault{lines.place_of(s.begin), 1, fmt::format("more than {} dots in keys", dot_limit),
                         "tables written with headers, e.g. [thread.heavy]", ""};
  }
  return std::nullopt;
}

}  // namespace file
