// What is wrong at a place of a text that someone wrote, and how it is shown: file:line:column, found, expected, the line with a caret.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace base {

/// A place in a text; both numbers count from 1, columns in characters (code points). Line 0: no place.
struct TextPlace {
  int line = 0;
  int column = 0;
  friend auto operator<=>(const TextPlace&, const TextPlace&) = default;
};

struct Fault {
  TextPlace place;
  int length = 1;          ///< characters marked by the caret line, at least 1
  std::string found;       ///< "found ..." as a whole phrase, e.g. `the number 33`
  std::string expected;    ///< what would be right, e.g. `an even number of threads: 32 or 34`
  std::string suggestion;  ///< the nearest right word, or empty

  friend bool operator==(const Fault&, const Fault&) = default;
};

using Faults = std::vector<Fault>;

/// "frost.course.toml:12:8: found the number 33; expected ...; did you mean ...?" and below it the line with a caret.
/// Ends in a line break. `source` is the whole text; a place outside it shows no line. Of a long line at most 120 characters round the place
/// are shown, and the caret line never runs beyond them.
std::string render(std::string_view file_name, std::string_view source, const Fault& fault);

}  // namespace base
