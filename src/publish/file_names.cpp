// File names from titles: ASCII only, safe in any folder.
#include "publish/publish.h"

namespace publish {
namespace {

constexpr std::size_t longest = 40;

/// Plain letters for the commonest accented ones (Latin-1 and a few beyond), so that a title stays readable.
std::string_view plain(unsigned code) {
  switch (code) {
    case 0xC6: case 0xE6: return "ae";
    case 0xD8: case 0xF8: case 0xF6: case 0xD6: case 0xF3: case 0xD3: case 0xF2: case 0xF4: return "o";
    case 0xC5: case 0xE5: case 0xE4: case 0xC4: case 0xE1: case 0xC1: case 0xE0: case 0xE2: return "a";
    case 0xE9: case 0xC9: case 0xE8: case 0xEA: case 0xEB: return "e";
    case 0xED: case 0xCD: case 0xEC: case 0xEE: case 0xEF: return "i";
    case 0xFA: case 0xDA: case 0xF9: case 0xFB: case 0xFC: case 0xDC: return "u";
    case 0xF1: case 0xD1: return "n";
    case 0xE7: case 0xC7: return "c";
    case 0xDF: return "ss";
    default: return {};
  }
}

/// Code points of two bytes only; all others are left out.
std::string_view letter_at(std::string_view title, std::size_t at) {
  if (at + 1 >= title.size()) return {};
  const auto lead = static_cast<unsigned char>(title[at]), next = static_cast<unsigned char>(title[at + 1]);
  if ((lead & 0xE0) != 0xC0) return {};
  return plain(static_cast<unsigned>((lead & 0x1F) << 6 | (next & 0x3F)));
}

}  // namespace

std::string file_stem(std::string_view title) {
  std::string stem;
  for (std::size_t i = 0; i < title.size(); ++i) {
    const char c = title[i];
    if (c >= 'A' && c <= 'Z') {
      stem += static_cast<char>(c - 'A' + 'a');
    } else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      stem += c;
    } else if (const std::string_view letters = letter_at(title, i); !letters.empty()) {
      stem += letters;
    } else if (c != '\'' && (static_cast<unsigned char>(c) & 0xC0) != 0x80 && !stem.empty() && stem.back() != '-') {
      stem += '-';
    }
  }
  if (stem.size() > longest) stem.resize(longest);
  while (!stem.empty() && stem.back() == '-') stem.pop_back();
  return stem.empty() ? "lesson" : stem;
}

}  // namespace publish
