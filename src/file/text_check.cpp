#include "file/text_check.h"

#include <fmt/format.h>

#include "file/course_file.h"

namespace file {
namespace {

using Byte = unsigned char;

bool follows(std::string_view text, std::size_t at) { return at < text.size() && (static_cast<Byte>(text[at]) & 0xC0) == 0x80; }

/// Bytes of the well-formed character that begins here, 0 where there is none (the table of RFC 3629, section 4).
std::size_t character_bytes(std::string_view text, std::size_t at) {
  const Byte a = static_cast<Byte>(text[at]);
  if (a < 0x80) return 1;
  if (a < 0xC2 || a > 0xF4 || !follows(text, at + 1)) return 0;
  if (a < 0xE0) return 2;
  const Byte b = static_cast<Byte>(text[at + 1]);
  if ((a == 0xE0 && b < 0xA0) || (a == 0xED && b > 0x9F) || (a == 0xF0 && b < 0x90) || (a == 0xF4 && b > 0x8F)) return 0;
  if (!follows(text, at + 2)) return 0;
  if (a < 0xF0) return 3;
  return follows(text, at + 3) ? 4 : 0;
}

bool looks_like_utf16(std::string_view text) {
  return text.substr(0, 2) == std::string_view("\xFF\xFE", 2) || text.substr(0, 2) == std::string_view("\xFE\xFF", 2);
}

base::Fault bad_byte(std::string_view text, std::size_t at, base::TextPlace place) {
  if (text[at] == '\0') return {place, 1, "a NUL byte", "a text file; this looks like another kind of file", ""};
  if (at == 0 && looks_like_utf16(text)) return {place, 1, "a text saved as UTF-16", "a text saved as UTF-8", ""};
  return {place, 1, fmt::format("the byte 0x{:02X}, which is not UTF-8 here", static_cast<Byte>(text[at])), "a text saved as UTF-8", ""};
}

}  // namespace

std::string_view without_mark(std::string_view text) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  return text.substr(0, mark.size()) == mark ? text.substr(mark.size()) : text;
}

std::optional<base::Fault> check_text(std::string_view text) {
  if (text.size() > byte_limit)
    return base::Fault{{}, 1, fmt::format("a file of {} bytes", text.size()), "at most 4 MB (4194304 bytes)", ""};
  text = without_mark(text);
  base::TextPlace place{1, 1};
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t bytes = character_bytes(text, at);
    if (bytes == 0 || text[at] == '\0') return bad_byte(text, at, place);
    place = text[at] == '\n' ? base::TextPlace{place.line + 1, 1} : base::TextPlace{place.line, place.column + 1};
    at += bytes;
  }
  return std::nullopt;
}

}  // namespace file
