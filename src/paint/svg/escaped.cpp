// Plain text made safe for XML and HTML.
#include "paint/svg/svg.h"

namespace paint {
namespace {

constexpr std::string_view unknown = "\xEF\xBF\xBD";  // U+FFFD

/// Length of the UTF-8 letter at the front, 0 where there is none: too short, too long for what it says, a surrogate, beyond U+10FFFF.
std::size_t letter(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  const std::size_t n = lead < 0x80 ? 1 : lead >= 0xC2 && lead < 0xE0 ? 2 : (lead & 0xF0) == 0xE0 ? 3 : lead >= 0xF0 && lead < 0xF5 ? 4 : 0;
  if (n == 0 || text.size() < n) return 0;
  for (std::size_t i = 1; i < n; ++i)
    if ((byte(i) & 0xC0) != 0x80) return 0;
  if ((lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xED && byte(1) >= 0xA0) || (lead == 0xF0 && byte(1) < 0x90) ||
      (lead == 0xF4 && byte(1) >= 0x90))
    return 0;
  return text.substr(0, n) == "\xEF\xBF\xBE" || text.substr(0, n) == "\xEF\xBF\xBF" ? 0 : n;
}

std::string_view entity(char c) {
  switch (c) {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return "&gt;";
    case '"':
      return "&quot;";
    case '\'':
      return "&#39;";
    default:
      return {};
  }
}

bool is_control(char c) { return (static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\t') || c == 0x7F; }

}  // namespace

std::string escaped(std::string_view text) {
  std::string safe;
  while (!text.empty()) {
    const std::size_t n = letter(text);
    if (const std::string_view named = entity(text[0]); !named.empty())
      safe += named;
    else
      safe += n == 0 || is_control(text[0]) ? unknown : text.substr(0, n);
    text.remove_prefix(n == 0 ? 1 : n);
  }
  return safe;
}

}  // namespace paint
