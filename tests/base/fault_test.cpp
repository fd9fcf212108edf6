// Faults as they are shown: the exact text, with the caret under its place.
#include "base/fault.h"

#include <doctest/doctest.h>

using base::Fault;

namespace {

std::string shown(std::string_view source, const Fault& fault) { return base::render("a.toml", source, fault); }

/// What stands under and over the caret line, without the first line.
std::string below(std::string_view source, int line, int column, int length = 1) {
  const std::string text = shown(source, {{line, column}, length, "x", "", ""});
  return text.substr(text.find('\n') + 1);
}

std::string times(int n, std::string_view what) {
  std::string text;
  for (int i = 0; i < n; ++i) text += what;
  return text;
}

}  // namespace

TEST_CASE("place, found, expected, nearest word, the line and a caret") {
  CHECK(shown("format = 1\npath = \"E 33\"\n", {{2, 11}, 2, "the number 33", "an even number of threads: 32 or 34", ""}) ==
        "a.toml:2:11: found the number 33; expected an even number of threads: 32 or 34\n"
        "  path = \"E 33\"\n"
        "            ^^\n");
  CHECK(shown("kind = \"cabel\"", {{1, 9}, 5, "the kind cabel", "", "cable"}) ==
        "a.toml:1:9: found the kind cabel; did you mean cable?\n"
        "  kind = \"cabel\"\n"
        "          ^^^^^\n");
}

TEST_CASE("without a place there is no line, and a place outside the text shows none") {
  CHECK(shown("a = 1\n", {{}, 1, "nothing", "a course", ""}) == "a.toml: found nothing; expected a course\n");
  CHECK(shown("a = 1\n", {{7, 1}, 1, "x", "", ""}) == "a.toml:7:1: found x\n");
  CHECK(shown("", {{1, 1}, 1, "an empty file", "", ""}) == "a.toml:1:1: found an empty file\n");
  CHECK(shown("a\n\nb\n", {{2, 1}, 1, "x", "", ""}) == "a.toml:2:1: found x\n");
}

TEST_CASE("line ends of all sorts do not show") {
  CHECK(below("a = 1\r\nb = 2\r\n", 2, 5) == "  b = 2\n      ^\n");
  CHECK(below("a = 1\nb = 2", 2, 5) == "  b = 2\n      ^\n");
}

TEST_CASE("a tab before the place is a tab before the caret") {
  CHECK(below("\ta =\t1", 1, 6) == "  \ta =\t1\n  \t   \t^\n");
}

TEST_CASE("columns and carets count characters, not bytes") {
  CHECK(below("name = \"løkke på rad\", x", 1, 15, 2) == "  name = \"løkke på rad\", x\n                ^^\n");
  CHECK(below("… = 1", 1, 5) == "  … = 1\n      ^\n");
  CHECK(below("𝄞 = é", 1, 5) == "  𝄞 = é\n      ^\n");
}

TEST_CASE("carets end with the line, and one stands behind it where something is missing") {
  CHECK(below("ab = ", 1, 4, 9) == "  ab = \n     ^^\n");
  CHECK(below("ab =", 1, 5, 3) == "  ab =\n      ^\n");
  CHECK(below("ab", 1, 9) == "  ab\n          ^\n");
  CHECK(below("ab", 1, 1, 0) == "  ab\n  ^\n");
}

TEST_CASE("of a long line 120 characters round the place are shown") {
  const std::string line = times(20, "0123456789") + "æ" + times(20, "0123456789");
  CHECK(below(line, 1, 1) == "  " + times(12, "0123456789") + "\n  ^\n");
  CHECK(below(line, 1, 201) == "  " + times(6, "0123456789") + "æ" + times(5, "0123456789") + "012345678\n  " + times(60, " ") + "^\n");
  CHECK(below(line, 1, 401, 9) == "  " + times(12, "0123456789") + "\n  " + times(119, " ") + "^\n");
  CHECK(below(line, 1, 211, 80) == below(line, 1, 211, 60));
}

TEST_CASE("120 characters are shown whole") { CHECK(below(times(12, "0123456789"), 1, 120) == "  " + times(12, "0123456789") + "\n  " + times(119, " ") + "^\n"); }

TEST_CASE("signs that would move a terminal's text are shown as question marks") {
  CHECK(below("a\x1B[31m = \x7F\x01", 1, 2) == "  a?[31m = ??\n   ^\n");
}

TEST_CASE("bytes that are no UTF-8 do no harm") {
  CHECK(below("\x80\x80 = 1", 1, 2) == "  \x80\x80 = 1\n   ^\n");
}

TEST_CASE("places are in reading order") {
  CHECK(base::TextPlace{1, 9} < base::TextPlace{2, 1});
  CHECK(base::TextPlace{2, 1} < base::TextPlace{2, 3});
}
