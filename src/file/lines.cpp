#include "file/lines.h"

#include <algorithm>

namespace file {
namespace {

constexpr std::size_t stride = 64;

bool begins_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

}  // namespace

int characters(std::string_view text) { return static_cast<int>(std::count_if(text.begin(), text.end(), begins_character)); }

Lines::Lines(std::string_view text) : text_(text), line_bytes_{0}, line_characters_{0} {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!begins_character(text[i])) continue;
    if (characters_ % stride == 0) marks_.push_back(i);
    ++characters_;
    if (text[i] != '\n') continue;
    line_bytes_.push_back(i + 1);
    line_characters_.push_back(characters_);
  }
}

std::size_t Lines::byte_of(base::TextPlace place) const {
  if (place.line < 1 || place.column < 1 || place.line > static_cast<int>(line_bytes_.size())) return text_.size();
  const std::size_t character = line_characters_[place.line - 1] + (place.column - 1);
  if (character >= characters_) return text_.size();
  std::size_t byte = marks_[character / stride];
  for (std::size_t left = character % stride; left > 0; --left)
    do ++byte;
    while (byte < text_.size() && !begins_character(text_[byte]));
  return byte;
}

std::size_t Lines::character_of(std::size_t byte) const {
  const auto after = std::upper_bound(marks_.begin(), marks_.end(), byte);
  if (after == marks_.begin()) return 0;
  const std::size_t mark = static_cast<std::size_t>(after - marks_.begin()) - 1;
  return mark * stride + static_cast<std::size_t>(characters(text_.substr(marks_[mark], byte - marks_[mark])));
}

base::TextPlace Lines::place_of(std::size_t byte) const {
  byte = std::min(byte, text_.size());
  const auto line = static_cast<std::size_t>(std::upper_bound(line_bytes_.begin(), line_bytes_.end(), byte) - line_bytes_.begin());
  return {static_cast<int>(line), static_cast<int>(character_of(byte) - line_characters_[line - 1]) + 1};
}

base::TextPlace Lines::end() const {
  std::size_t byte = text_.size();
  while (byte > 0 && (text_[byte - 1] == '\n' || text_[byte - 1] == '\r')) --byte;
  return place_of(byte);
}

int Lines::rest_of_line(base::TextPlace place) const {
  const std::size_t from = byte_of(place);
  std::size_t to = place.line < static_cast<int>(line_bytes_.size()) ? line_bytes_[place.line] - 1 : text_.size();
  if (to > from && text_[to - 1] == '\r') --to;
  return to > from ? static_cast<int>(character_of(to) - character_of(from)) : 0;
}

}  // namespace file
