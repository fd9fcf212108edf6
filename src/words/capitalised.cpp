// Large first letters in UTF-8 without a locale: ASCII, and Latin-1's small letters, which stand in two bytes behind C3.
#include "words/phrases.h"

namespace words {

std::string capitalised(std::string text) {
  if (text.empty()) return text;
  if (text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  if (text.size() < 2 || static_cast<unsigned char>(text[0]) != 0xC3) return text;
  const auto second = static_cast<unsigned char>(text[1]);
  if (second == 0xBF) return text.replace(0, 2, "\xC5\xB8");  // y with two dots: its large letter is not in Latin-1
  constexpr unsigned char divided_by = 0xB7;                  // the one sign among the letters
  if (second >= 0xA0 && second != divided_by) text[1] = static_cast<char>(second - 0x20);
  return text;
}

}  // namespace words
