#include "base/fault.h"

#include <fmt/format.h>

#include <algorithm>

namespace base {
namespace {

std::string_view line_of(std::string_view source, int line) {
  std::size_t start = 0;
  for (int at = 1; at < line; ++at) {
    const std::size_t end = source.find('\n', start);
    if (end == std::string_view::npos) return {};
    start = end + 1;
  }
  std::string_view text = source.substr(start, source.find('\n', start) - start);
  if (!text.empty() && text.back() == '\r') text.remove_suffix(1);
  return text;
}

bool begins_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

/// The characters before the column as blanks, tabs kept, so that the caret stands under its place.
std::string blanks_before(std::string_view line, int column) {
  std::string blanks;
  int at = 1;
  for (const char c : line) {
    if (!begins_character(c)) continue;
    if (at++ >= column) break;
    blanks += c == '\t' ? '\t' : ' ';
  }
  while (at++ < column) blanks += ' ';
  return blanks;
}

int characters(std::string_view text) { return static_cast<int>(std::count_if(text.begin(), text.end(), begins_character)); }

/// Signs that would move or colour a terminal's text become a question mark.
std::string harmless(std::string text) {
  for (char& c : text)
    if ((static_cast<unsigned char>(c) < 0x20 && c != '\t') || c == 0x7F) c = '?';
  return text;
}

/// At most `room` characters of the line around the column; `column` is moved with it.
std::string shortened(std::string_view line, int& column, int room) {
  std::vector<std::size_t> starts;
  for (std::size_t i = 0; i < line.size(); ++i)
    if (begins_character(line[i])) starts.push_back(i);
  if (static_cast<int>(starts.size()) <= room) return std::string(line);
  const int first = std::max(0, std::min(column - 1 - room / 2, static_cast<int>(starts.size()) - room));
  const std::size_t end = first + room < static_cast<int>(starts.size()) ? starts[first + room] : line.size();
  column -= first;
  return std::string(line.substr(starts[first], end - starts[first]));
}

}  // namespace

std::string render(std::string_view file_name, std::string_view source, const Fault& fault) {
  std::string text = fault.place.line > 0 ? fmt::format("{}:{}:{}: ", file_name, fault.place.line, fault.place.column)
                                          : fmt::format("{}: ", file_name);
  text += fmt::format("found {}", fault.found);
  if (!fault.expected.empty()) text += fmt::format("; expected {}", fault.expected);
  if (!fault.suggestion.empty()) text += fmt::format("; did you mean {}?", fault.suggestion);
  text += '\n';
  if (fault.place.line < 1) return text;
  const std::string_view line = line_of(source, fault.place.line);
  if (line.empty()) return text;
  constexpr int room = 120;
  int column = fault.place.column;
  const std::string shown = harmless(shortened(line, column, room));
  const int length = std::max(1, std::min(fault.length, characters(shown) - column + 1));
  text += fmt::format("  {}\n  {}{}\n", shown, blanks_before(shown, column), std::string(static_cast<std::size_t>(length), '^'));
  return text;
}

}  // namespace base
