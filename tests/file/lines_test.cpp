// Places in a text: bytes and characters, there and back.
#include <doctest/doctest.h>

#include "file/lines.h"

TEST_CASE("every byte that begins a character has a place, and back") {
  std::string text;
  for (int i = 0; i < 300; ++i) text += i % 7 == 0 ? "\n" : i % 5 == 0 ? "\u2744" : i % 3 == 0 ? "\u00E6" : "a";
  const file::Lines lines(text);
  int line = 1, column = 1;  // walked along, without the class
  for (std::size_t byte = 0; byte < text.size(); ++byte) {
    if ((static_cast<unsigned char>(text[byte]) & 0xC0) == 0x80) continue;
    const base::TextPlace place{line, column};
    REQUIRE(lines.place_of(byte) == place);
    REQUIRE(lines.byte_of(place) == byte);
    if (text[byte] == '\n') ++line, column = 1;
    else ++column;
  }
}

TEST_CASE("ends and places beyond") {
  const file::Lines lines("ab\r\n\u00E6\n");
  CHECK(lines.end() == base::TextPlace{2, 2});
  CHECK(lines.rest_of_line({1, 1}) == 2);
  CHECK(lines.rest_of_line({2, 1}) == 1);
  CHECK(lines.rest_of_line({3, 1}) == 0);
  CHECK(lines.byte_of({9, 9}) == 7);
  CHECK(lines.byte_of({0, 0}) == 7);
  CHECK(file::Lines("").end() == base::TextPlace{1, 1});
}
