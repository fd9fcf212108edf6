// The limits: each is told as such, at its place, before anything grows; what lies within is read.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <string>

#include "file/guard.h"
#include "read_faults.h"

namespace {

std::string repeated(std::string_view text, int times) {
  std::string out;
  for (int i = 0; i < times; ++i) out += text;
  return out;
}

base::Fault only_fault(const std::string& text) {
  const base::Faults faults = file::read(text).faults;
  REQUIRE(faults.size() == 1);
  return faults[0];
}

std::string parts(int n, std::string_view path) {
  std::string out(small_course);
  for (int i = 0; i < n; ++i)
    out += fmt::format("[[part]]\nname = \"p{}\"\nkind = \"cable\"\nthread = \"heavy\"\nstart = [0, {}]\npath = \"{}\"\n", i, 4 * i, path);
  return out;
}

}  // namespace

TEST_CASE("4 MB are read, one byte more is not") {
  std::string text(small_course);
  text += "# " + std::string(file::byte_limit - text.size() - 3, 'x') + '\n';
  CHECK(text.size() == file::byte_limit);
  CHECK(faults_of(text) == "");
  text += '\n';
  CHECK(only_fault(text).expected == "at most 4 MB (4194304 bytes)");
}

TEST_CASE("10,000 parts are read, one more is not") {
  const std::string text = parts(course::part_limit, "E 4");
  CHECK(file::read(text).faults.empty());
  const base::Fault fault = only_fault(text + "[[part]]\nname = \"more\"\n[[lesson]]\nwork = [\"more\"]\n");
  CHECK(fault.found == "10001 parts");
  CHECK(fault.expected == "at most 10000");
  CHECK(fault.place.line == 8 + 6 * course::part_limit);
}

TEST_CASE("200 lessons are read, one more is not") {
  std::string text = fmt::format("{}{}", small_course, repeated("[[lesson]]\n", course::lesson_limit));
  CHECK(faults_of(text) == "");
  const base::Fault fault = only_fault(text + "[[lesson]]\nminutes = 0\n");
  CHECK(fault.found == "201 lessons");
  CHECK(fault.expected == "at most 200");
}

TEST_CASE("1000 threads are read, one more is not, and its parts are not told of") {
  std::string text(small_course);
  for (int i = 0; i < 999; ++i) text += fmt::format("[thread.t{}]\npearl = 8\n", i);
  CHECK(faults_of(text) == "");
  text += "[thread.more]\npearl = 8\n[[part]]\nname = \"a\"\nkind = \"cable\"\nthread = \"more\"\nstart = [0, 0]\npath = \"E 4\"\n";
  CHECK(only_fault(text).found == "more than 1000 threads");
}

TEST_CASE("stitches are counted over all parts, and nothing is worked out beyond the limit") {
  const std::string long_rows = "E 99996";  // two rows of 49,998 stitches
  const base::Fault fault = only_fault(parts(41, long_rows));
  CHECK(fault.expected == "at most 2000000 in a course");
  CHECK(fault.place.line == 8 + 6 * 20 + 1);  // 21 * 99,996 are too many
  CHECK(file::read(parts(20, long_rows)).faults.empty());
}

TEST_CASE("coordinates") {
  CHECK(faults_with("[[part]]\nname = \"a\"\nkind = \"cable\"\nthread = \"heavy\"\nstart = [100000, 99990]\npath = \"W 4\"\n") == "");
  const auto with_start = [](std::string_view x) {
    return only_fault(std::string(small_course) +
                      fmt::format("[[part]]\nname = \"a\"\nkind = \"cable\"\nthread = \"heavy\"\nstart = [{}, 0]\npath = \"W 4\"\n", x));
  };
  for (const char* x : {"100001", "-100001", "2147483648", "-2147483649", "4294967296", "9223372036854775807", "-9223372036854775808"})
    CHECK(with_start(x).expected == "a whole number from -100000 to 100000");
  CHECK(with_start("9223372036854775808").expected == "a number of a size that has a meaning here");
}

TEST_CASE("numbers at the edge of 64 bits fit nowhere and overflow nowhere") {
  for (const char* key : {"minutes", "students", "lessons", "home_minutes"})
    for (const char* value : {"9223372036854775807", "-9223372036854775808", "0x7FFFFFFFFFFFFFFF", "1e308", "-1e308", "4294967386"})
      CHECK(only_fault(fmt::format("format = 1\n[course]\ntitle = \"x\"\n{} = {}\n[cloth]\ncount = 22\n", key, value)).place ==
            base::TextPlace{4, static_cast<int>(std::string(key).size()) + 4});
}

TEST_CASE("brackets within brackets") {
  const int limit = file::bracket_limit;
  CHECK(only_fault(fmt::format("a = {}{}\nformat = 2", repeated("[", limit), repeated("]", limit))).found == "the format 2");
  CHECK(only_fault(fmt::format("a = {}{}", repeated("[", limit + 1), repeated("]", limit + 1))).expected == "at most 64");
  CHECK(only_fault(fmt::format("a = {}", repeated("[", 1000000))).found == "1000000 brackets within brackets");
  CHECK(only_fault(fmt::format("a = {}", repeated("{a=", 300000))).expected == "at most 64");
  CHECK(only_fault(fmt::format("a = {}", repeated("{a=[", 300000))).expected == "at most 64");
  CHECK(only_fault(fmt::format("# {0}\na = \"{0}\"\nb = '''\n{1}'''\nformat = 2", repeated("[", 1000), repeated("{\n", 1000)))
            .found == "the format 2");
}

TEST_CASE("names parted by dots") {
  CHECK(only_fault(fmt::format("a{} = 1\nformat = 2", repeated(".a", file::key_dot_limit))).found == "the format 2");
  CHECK(only_fault(fmt::format("a{} = 1", repeated(".a", file::key_dot_limit + 1))).found == "a key of 10 names parted by dots");
  CHECK(only_fault(fmt::format("[a{}]", repeated(" . \"a\"", 500000))).expected == "at most 9 names");
  CHECK(only_fault(fmt::format("x = {{a{} = 1}}", repeated(".a", 1000000))).expected == "at most 9 names");
  std::string many;
  for (int i = 0; i < 150000; ++i) many += fmt::format("k{}.a=1\n", i);
  CHECK(only_fault(many).found == "more than 20000 dots in keys");
}

TEST_CASE("tables without number") {
  std::string many;
  for (int i = 0; i < 200000; ++i) many += fmt::format("[[t{}]]\n", i);
  CHECK(only_fault(many).found == "more than 30000 tables");
}

TEST_CASE("a number without end") {
  CHECK(only_fault(fmt::format("a = {}", repeated("1", 3000000))).found == "a value that goes on and on without quotation marks");
  CHECK(only_fault(fmt::format("a = 2{}020-10-10 1", repeated("_", 116))).place == base::TextPlace{1, 5});
}

TEST_CASE("a file full of faults is told in part, and soon") {
  std::string text(small_course);
  for (int i = 0; i < 200000; ++i) text += fmt::format("k{} = 1\n", i);
  const base::Faults faults = file::read(text).faults;
  REQUIRE(faults.size() == 201);
  CHECK(faults[199].place.line == 207);
  CHECK(faults[200].found == "199800 further faults from here on");
}

TEST_CASE("names that are nowhere do not make a large course slow") {
  std::string text = parts(course::part_limit, "E 4");
  for (int lesson = 0; lesson < course::lesson_limit; ++lesson) {
    text += "[[lesson]]\nwork = [";
    for (int i = 0; i < 1000; ++i) text += fmt::format("\"q{}\",", i);
    text += "]\n";
  }
  CHECK(file::read(text).faults.size() == 201);
}

TEST_CASE("lists") {
  std::string days;
  for (int i = 0; i < 1001; ++i) days += "2027-01-12,";
  CHECK(faults_of(fmt::format("format = 1\n[course]\ntitle = \"x\"\nholidays = [{}]\n[cloth]\ncount = 22\n", days))
            .find("found a list of 1001; expected at most 1000 in it") != std::string::npos);
}

TEST_CASE("texts") {
  const auto title = [](int n) {
    return fmt::format("format = 1\n[course]\ntitle = \"{}\"\n[cloth]\ncount = 22\n", repeated("\u00E6", n));
  };
  CHECK(faults_of(title(200)) == "");
  CHECK(only_fault(title(201)).found == "a text of 201 characters");
}
