// The lines of a text in TOML's form: which are keys, which table headers, which comments. Values are skipped, not read; the text need not
// be right, then what is found is a best guess and nothing worse. Used to guard the reading of values and to keep the comments.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace file {

/// A table header or a key with its value, over all its lines.
struct Statement {
  bool header = false;
  std::size_t begin = 0;      ///< its first byte
  int first_line = 0, last_line = 0;
  int segments = 1;           ///< of its key: `a.b` has two
  std::string_view trailing;  ///< the comment behind it on its last line, from the #, blanks behind it taken off
  std::vector<std::string_view> inner;  ///< comments within its list
  int depth = 0;                        ///< brackets within brackets, the most there are
  std::size_t dots = 0;                 ///< dots in all its keys, also those in braces
  int most_dots = 0;                    ///< in one key
  std::optional<std::size_t> long_word; ///< the first number or bare word longer than word_limit
  std::optional<std::size_t> nameless;  ///< a header that does not begin with a name: what stands there
  std::optional<std::size_t> after_date;  ///< a lone digit behind a date, as if a time began there
  std::optional<std::size_t> no_value;  ///< in a list: a } or a line break other than TOML's
};

/// One or more blank lines, a whole-line comment, or a statement.
struct Piece {
  enum Kind { blank, comment, statement } kind = blank;
  std::string_view text;      ///< of a comment, from the #, blanks behind it taken off
  std::size_t statement_at = 0;
};

struct Outline {
  std::vector<Statement> statements;
  std::vector<Piece> pieces;  ///< in order
};

inline constexpr std::size_t word_limit = 100;  ///< characters of a bare word as value; the longest right one is a date with time

/// Time linear in the text.
Outline outline(std::string_view text);

}  // namespace file
