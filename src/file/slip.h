// A slip in the form of the text, as the makers of its words see it: where it is and what stands there.
#pragma once

#include <string>
#include <string_view>

#include "base/fault.h"
#include "file/lines.h"
#include "file/outline.h"

namespace file {

struct Slip {
  std::string_view scope;   ///< what the library was reading: "value", "array", "table header", ...
  std::string_view reason;  ///< its reason
  std::size_t byte = 0;
  const Lines& lines;
  const Outline& outline;

  std::string_view text() const { return lines.text(); }
  bool at_file_end() const { return byte >= text().size(); }
  bool at_line_end() const { return at_file_end() || text()[byte] == '\n' || text()[byte] == '\r'; }
  bool says(std::string_view words) const { return reason.find(words) != std::string_view::npos; }
  /// What stands at the byte, as a phrase: the end of the line, a word, a character.
  std::string found() const;
  /// The statement that the byte belongs to; null before the first.
  const Statement* statement() const;
  /// A fault at the byte.
  base::Fault here(std::string expected) const;
};

inline constexpr std::string_view plain_name =
    "a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks";

/// The run of letters, digits and the like that the byte belongs to, with its bounds.
struct Word {
  std::size_t begin = 0, end = 0;
};
Word word_around(std::string_view text, std::size_t byte);

/// Slips within a value that is no text, list or table.
base::Fault value_slip(const Slip& slip);

}  // namespace file
