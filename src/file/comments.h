// The teacher's comments and what they belong to: whole-line comments to the key or table they stand before, trailing ones to their line,
// those at the end of a table or of the file to that end.
#pragma once

#include <string>
#include <vector>

#include "file/outline.h"

namespace file {

/// Lines of comments; an empty one is a blank line between them.
using CommentLines = std::vector<std::string>;

struct Remarks {
  CommentLines before;  ///< above the line, those from within a list last
  std::string trailing;
};

/// Gives each comment once. Lines are those of the text that was outlined.
class Comments {
 public:
  explicit Comments(const Outline& outline);
  /// The comments of the statement that has this line.
  Remarks take(int line);
  /// Those at the end of the table whose header stands in this line; 0 for what stands before the first header.
  CommentLines take_end(int header_line);
  /// Those at the end of the file, after all that nobody took.
  CommentLines take_rest();
  /// Is there a header with a key of so many segments in this line?
  bool header_at(int line, int segments) const;

 private:
  struct Owner {
    const Statement* statement = nullptr;
    Remarks remarks;
    CommentLines end;  // of its table; headers only
  };
  void settle(CommentLines& waiting, bool joined, const Statement* next, Owner& table);
  std::size_t owner_at(int line) const;  // [0] where no statement has this line

  std::vector<Owner> owners_;  // [0] is the table without a header, then in order of lines
  CommentLines file_end_;
};

}  // namespace file
