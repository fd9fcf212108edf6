// Slips within a value that is no text, list or table: words without quotation marks, and numbers, dates and times in other forms than
// TOML's.
#include <fmt/format.h>

#include <algorithm>

#include "base/nearest.h"
#include "file/slip.h"

namespace file {
namespace {

constexpr std::string_view any_value =
    "a value: a text in quotation marks, a number, a date such as 2027-01-12, true, false, or a list in [ ]";

bool begins_with_curly_mark(std::string_view word) {
  for (const std::string_view mark : {"\u201C", "\u201D", "\u201E", "\u2018", "\u2019", "\u00AB", "\u00BB"})
    if (word.substr(0, mark.size()) == mark) return true;
  return false;
}

bool begins_as_number(std::string_view word) {
  return !word.empty() && std::string_view("+-.0123456789").find(word[0]) != std::string_view::npos;
}

/// 12.01.2027, 12/1/27, 2027-1-12: digits in three groups.
bool looks_like_date(std::string_view word) {
  const bool digits_and_marks = word.find_first_not_of("0123456789./-") == std::string_view::npos;
  return digits_and_marks && std::count_if(word.begin(), word.end(), [](char c) { return c == '.' || c == '/' || c == '-'; }) == 2 &&
         word[0] != '-';
}

bool looks_like_time(std::string_view word) {
  return word.size() >= 4 && word.find_first_not_of("0123456789:") == std::string_view::npos && word.find(':') != std::string_view::npos;
}

/// A text without its marks: the rest of its line, as far as it is one plain text.
std::string unmarked_text(const Slip& slip, std::size_t begin) {
  const bool in_list = slip.statement() && slip.statement()->depth > 0;
  std::string_view rest = slip.text().substr(begin);
  rest = rest.substr(0, rest.find_first_of(in_list ? "\r\n#,[]{}\"\\" : "\r\n#[]{}\"\\"));
  const std::size_t last = rest.find_last_not_of(" \t");
  rest = last == std::string_view::npos ? rest : rest.substr(0, last + 1);
  return rest.size() <= 80 ? std::string(rest) : std::string();
}

std::string expected_number(const Slip& slip, std::string_view word) {
  if (slip.says("leading zeroes"))
    return fmt::format("a number without zeros before it: {}", word.substr(std::min(word.find_first_not_of('0'), word.size() - 1)));
  if (slip.says("not representable") || slip.says("could not be interpreted")) return "a number of a size that has a meaning here";
  return "a number alone, e.g. 90 or 8.7; a text stands in quotation marks";
}

base::Fault number_slip(const Slip& slip, const Word& at, std::string_view word) {
  std::string expected = expected_number(slip, word);
  if (looks_like_time(word)) expected = "a time in quotation marks, e.g. \"18:30\"";
  if (looks_like_date(word)) expected = "a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12";
  return {slip.lines.place_of(at.begin), characters(word), fmt::format("\"{}\"", word), std::move(expected), ""};
}

base::Fault word_slip(const Slip& slip, const Word& at, std::string_view word) {
  base::Fault fault{slip.lines.place_of(at.begin), characters(word), fmt::format("{} without quotation marks", word), "", ""};
  if (begins_with_curly_mark(word)) {
    fault.found = std::string(word);
    fault.expected = "straight quotation marks round a text: \"...\"";
  } else if (!base::nearest_word(word, {"true", "false"}).empty()) {
    fault.found = std::string(word);
    fault.expected = "true or false, in small letters";
  } else {
    const std::string text = unmarked_text(slip, at.begin);
    fault.expected = text.empty() ? std::string(any_value) : fmt::format("a text in quotation marks: \"{}\"", text);
  }
  return fault;
}

}  // namespace

base::Fault value_slip(const Slip& slip) {
  const Word at = word_around(slip.text(), slip.byte);
  const std::string_view word = slip.text().substr(at.begin, at.end - at.begin);
  if (word.empty() || slip.says("control character") || slip.says("space or tab")) return slip.here(std::string(any_value));
  constexpr int shown = 60;
  if (characters(word) > shown) return slip.here(std::string(any_value));
  return begins_as_number(word) ? number_slip(slip, at, word) : word_slip(slip, at, word);
}

}  // namespace file
