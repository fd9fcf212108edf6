// Where things stand in a text: from line and column (characters, counted from 1) to byte and back.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "base/fault.h"

namespace file {

/// Built once over valid UTF-8 (a byte order mark taken off before), then asked; no question takes time that grows with the text.
class Lines {
 public:
  explicit Lines(std::string_view text);
  /// The byte at which the character of that place begins; the end of the text for places beyond it.
  std::size_t byte_of(base::TextPlace place) const;
  base::TextPlace place_of(std::size_t byte) const;
  /// The place just behind the last character that is not a line end.
  base::TextPlace end() const;
  std::string_view text() const { return text_; }
  /// Characters from the place to the end of its line.
  int rest_of_line(base::TextPlace place) const;

 private:
  std::size_t character_of(std::size_t byte) const;

  std::string_view text_;
  std::vector<std::size_t> line_bytes_;  // of each line's first byte
  std::vector<std::size_t> line_characters_;
  std::vector<std::size_t> marks_;       // byte of every 64th character
  std::size_t characters_ = 0;
};

/// Number of characters (code points) of valid UTF-8.
int characters(std::string_view text);

}  // namespace file
