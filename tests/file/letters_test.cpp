// Letters, line ends and marks: what is read all the same, and what is refused with its place.
// Reference for what is UTF-8: RFC 3629, and the C library's own converter (iconv) over many byte sequences.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <iconv.h>

#include <random>
#include <string>

#include "describe.h"
#include "file/text_check.h"
#include "read_faults.h"

namespace {

bool iconv_accepts(std::string text) {
  static const iconv_t converter = iconv_open("UTF-32LE", "UTF-8");
  iconv(converter, nullptr, nullptr, nullptr, nullptr);
  std::string out(4 * text.size() + 16, '\0');
  char* from = text.data();
  char* to = out.data();
  std::size_t from_left = text.size(), to_left = out.size();
  return iconv(converter, &from, &from_left, &to, &to_left) != static_cast<std::size_t>(-1);
}

bool accepts(const std::string& text) { return !file::check_text(text); }

std::string with_windows_lines(std::string_view text) {
  std::string out;
  for (const char c : text) out += c == '\n' ? "\r\n" : std::string(1, c);
  return out;
}

}  // namespace

TEST_CASE("what is UTF-8 agrees with the C library") {
  for (int a = 1; a < 256; ++a)
    for (int b = 1; b < 256; ++b) {
      const std::string two{static_cast<char>(a), static_cast<char>(b)};
      REQUIRE(accepts(two) == iconv_accepts(two));
    }
  std::mt19937 random(20270112);
  const auto byte = [&](unsigned least, unsigned most) { return static_cast<char>(least + random() % (most - least + 1)); };
  for (int i = 0; i < 200000; ++i) {
    std::string text{byte(0xC0, 0xFF), byte(0x70, 0xCF), byte(0x70, 0xCF)};
    if (i % 2 == 0) text += byte(0x70, 0xCF);
    if (accepts(text) != iconv_accepts(text)) FAIL("differs at " << i);
  }
}

TEST_CASE("the first bad byte is told with its place") {
  const auto place = [](std::string text) { return file::read(text).faults.at(0).place; };
  CHECK(place("format = 1\n# \xC3\xA9 \xE9 x\n") == base::TextPlace{2, 5});
  CHECK(place("a\xC0\x80") == base::TextPlace{1, 2});        // an overlong NUL
  CHECK(place("\xED\xA0\x80") == base::TextPlace{1, 1});      // a surrogate
  CHECK(place("ab\n\xF4\x90\x80\x80") == base::TextPlace{2, 1});  // beyond U+10FFFF
  CHECK(place("x\xE2\x82") == base::TextPlace{1, 2});         // cut off
  CHECK(faults_of("a = \"\xE9\"\n").substr(0, 69) == "x:1:6: found the byte 0xE9, which is not UTF-8 here; expected a text ");
}

TEST_CASE("a NUL, another encoding") {
  using namespace std::string_view_literals;
  CHECK(file::read("a = 1\nb\0 = 2"sv).faults.at(0).found == "a NUL byte");
  CHECK(file::read("a = 1\nb\0 = 2"sv).faults.at(0).place == base::TextPlace{2, 2});
  CHECK(file::read("\xFF\xFE" "f\0o\0"sv).faults.at(0).found == "a text saved as UTF-16");
}

TEST_CASE("a byte order mark and line ends of other systems change nothing") {
  const std::string more =
      "[[part]]\nname = \"r\u00F8d\"\nkind = \"cable\"\nthread = \"heavy\"\nstart = [0, 0]\npath = \"E 12\"\nnotes = \"\"\"\na\nb\"\"\"\n";
  const std::string plain = std::string(small_course) + more;
  const std::string wanted = describe::course(file::read(plain).course);
  for (const std::string& text : {"\xEF\xBB\xBF" + plain, with_windows_lines(plain), "\xEF\xBB\xBF" + with_windows_lines(plain)}) {
    CHECK(faults_of(text) == "");
    CHECK(describe::course(file::read(text).course) == wanted);
    CHECK(file::tidy(text) == file::tidy(plain));
  }
  CHECK(file::tidy(plain).find('\r') == std::string::npos);
}

TEST_CASE("places are the same with a mark and with other line ends") {
  const std::string text = std::string(small_course) + "[[part]]\nname = \"\u00E6\u00F8\u00E5\"\nkind = \"cabel\"\nthread = \"heavy\"\n";
  const base::Faults wanted = file::read(text).faults;
  REQUIRE(wanted.size() == 1);
  CHECK(wanted[0].place == base::TextPlace{10, 8});
  CHECK(file::read("\xEF\xBB\xBF" + text).faults == wanted);
  CHECK(file::read(with_windows_lines(text)).faults == wanted);
  const std::string slip = "a = \"\u00E6\u00F8\" b\r\n";
  CHECK(
      faults_of(slip) ==
      "x:1:10: found \"b\"; expected the end of the line behind the value, or a comment after #\n  a = \"\u00E6\u00F8\" b\n           ^\n");
}

TEST_CASE("a lone carriage return and odd blanks are told") {
  CHECK(file::read("a = 1\rb = 2\n").faults.at(0).expected == "an ordinary line end");
  CHECK(file::read("a\u00A0= 1\n").faults.at(0).found == "a non-breaking space");
  for (const char* text : {"a = [\u0085]", "a = [\u2028]", "a = [1,\u2029]"})
    CHECK(file::read(text).faults.at(0).expected == "a value, or ] to close the list");
  CHECK(file::read("# \x01\n").faults.at(0).found == "the control character 0x01");
}

TEST_CASE("letters of every kind are kept in texts and refused between them, whatever the TOML library makes of them") {
  const auto letter = [](unsigned c) {
    std::string out;
    if (c < 0x800) (out += static_cast<char>(0xC0 | c >> 6)) += static_cast<char>(0x80 | (c & 63));
    else ((out += static_cast<char>(0xE0 | c >> 12)) += static_cast<char>(0x80 | ((c >> 6) & 63))) += static_cast<char>(0x80 | (c & 63));
    return out;
  };
  for (const unsigned first : {0xA1U, 0x370U, 0x5D0U, 0x3041U, 0x4E00U, 0xFF01U})  // Latin, Greek, Hebrew, kana, Han, wide forms
    for (unsigned c = first; c < first + 90; c += 7) {
      const std::string s = letter(c);
      CAPTURE(s);
      const std::string notes = fmt::format("{}[[lesson]]\nnotes = \"\"\"{}\\\n  {}x\"\"\"\n", small_course, s, s);
      REQUIRE(faults_of(notes) == "");
      CHECK(file::read(notes).course.lessons[0].notes == s + s + "x");
      for (const char* form : {"a {}= 1", "a = 1 {}", "{}", "[{}]", "[a{}]", "a = {}", "a = [1{}]", "a = [1 {}]", "a = {{b{}=1}}", "a = \"\\{}\""})
        CHECK(file::read(fmt::format(fmt::runtime(form), s)).faults.size() == 1);
    }
}
