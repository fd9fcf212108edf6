#include "file/slip.h"

#include <fmt/format.h>

#include <algorithm>

namespace file {
namespace {

constexpr std::string_view between_words = " \t\r\n,[]{}#=\"'";

std::size_t character_end(std::string_view text, std::size_t byte) {
  ++byte;
  while (byte < text.size() && (static_cast<unsigned char>(text[byte]) & 0xC0) == 0x80) ++byte;
  return byte;
}

bool ascii_word(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '-'; }

}  // namespace

Word word_around(std::string_view text, std::size_t byte) {
  constexpr std::size_t reach = 200;  // a longer word is shown shortened
  byte = std::min(byte, text.size());
  std::size_t begin = byte;
  while (begin > 0 && byte - begin < reach && between_words.find(text[begin - 1]) == std::string_view::npos) --begin;
  while (begin < byte && (static_cast<unsigned char>(text[begin]) & 0xC0) == 0x80) ++begin;
  std::size_t end = byte;
  while (end < text.size() && end - byte < reach && between_words.find(text[end]) == std::string_view::npos) end = character_end(text, end);
  return {begin, end};
}

std::string Slip::found() const {
  if (at_file_end()) return "the end of the file";
  if (at_line_end()) return "the end of the line";
  const char c = text()[byte];
  const std::string_view character = text().substr(byte, character_end(text(), byte) - byte);
  if (ascii_word(c)) return fmt::format("\"{}\"", text().substr(byte, word_around(text(), byte).end - byte));
  if (character == "\u00A0" || character == "\u202F") return "a non-breaking space";
  if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
    return fmt::format("the control character 0x{:02X}", static_cast<unsigned char>(c));
  return c == '"' ? "a quotation mark" : fmt::format("\"{}\"", character);
}

const Statement* Slip::statement() const {
  const auto& all = outline.statements;
  const auto after = std::upper_bound(all.begin(), all.end(), byte, [](std::size_t at, const Statement& s) { return at < s.begin; });
  return after == all.begin() ? nullptr : &*std::prev(after);
}

base::Fault Slip::here(std::string expected) const {
  int length = 1;
  if (!at_line_end() && ascii_word(text()[byte])) length = static_cast<int>(word_around(text(), byte).end - byte);
  return {at_file_end() ? lines.end() : lines.place_of(byte), length, found(), std::move(expected), ""};
}

}  // namespace file
