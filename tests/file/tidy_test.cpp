// The canonical form of values and tables.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "describe.h"
#include "read_faults.h"

namespace {

/// The line of a key in the canonical form of the small course, where it was written so in its last table, [thread.heavy].
std::string thread_line(std::string_view written) {
  const std::string text = fmt::format("{}{}\n", small_course, written);
  REQUIRE(faults_of(text) == "");
  const std::string tidied = file::tidy(text);
  REQUIRE(file::tidy(tidied) == tidied);
  REQUIRE(describe::course(file::read(tidied).course) == describe::course(file::read(text).course));
  const std::size_t at = tidied.find("pearl = 5\n") + 10;
  return tidied.substr(at, tidied.find_last_not_of('\n') + 1 - at);
}

std::string lesson_lines(std::string_view written) {
  const std::string text = fmt::format("{}[[lesson]]\n{}\n", small_course, written);
  REQUIRE(faults_of(text) == "");
  const std::string tidied = file::tidy(text);
  REQUIRE(file::tidy(tidied) == tidied);
  REQUIRE(describe::course(file::read(tidied).course) == describe::course(file::read(text).course));
  return tidied.substr(tidied.find("[[lesson]]\n") + 11);
}

}  // namespace

TEST_CASE("numbers are shortest decimals") {
  CHECK(thread_line("ball_m=25.0") == "ball_m = 25");
  CHECK(thread_line("ball_m = 0.10") == "ball_m = 0.1");
  CHECK(thread_line("ball_m = 1e2") == "ball_m = 100");
  CHECK(thread_line("ball_m = 2.5e-1") == "ball_m = 0.25");
  CHECK(thread_line("ball_m = 0.1234567890123456") == "ball_m = 0.1234567890123456");
  CHECK(thread_line("needle = 0x18") == "needle = 24");
  CHECK(thread_line("needle = +2_4") == "needle = 24");
}

TEST_CASE("a price keeps its digits") {
  CHECK(thread_line("price = 4.50") == "price = 4.50");
  CHECK(thread_line("price = +1_000.00") == "price = 1000.00");
  CHECK(thread_line("price = '4.50'") == "price = \"4.50\"");
  CHECK(file::read(fmt::format("{}price = 4.50\n", small_course)).course.threads[0].price == "4.50");
  CHECK(file::read(fmt::format("{}price = 0.10\n", small_course)).course.threads[0].price == "0.10");
  CHECK(file::read(fmt::format("{}price = 12\n", small_course)).course.threads[0].price == "12");
}

TEST_CASE("texts stand in double quotation marks") {
  CHECK(thread_line("currency = 'a\"b\\'") == R"(currency = "a\"b\\")");
  CHECK(thread_line("currency = \"\\u0041\\u00E6\"") == "currency = \"A\u00E6\"");
  CHECK(thread_line("currency = \"\"\"\nx\"\"\"") == "currency = \"x\"");
}

TEST_CASE("notes of several lines keep them") {
  CHECK(lesson_lines("notes = \"a\\nb\"") == "notes = \"\"\"\na\nb\"\"\"\n");
  CHECK(lesson_lines("notes = '''\n\na \"\"b\"\" c\n\"q\" \\ \n'''") == "notes = \"\"\"\n\na \\\"\\\"b\\\"\\\" c\n\"q\" \\\\ \n\"\"\"\n");
  CHECK(lesson_lines("notes = \"a\\n\\\"\"") == "notes = \"\"\"\na\n\\\"\"\"\"\n");
  CHECK(lesson_lines("notes = \"one\\ttab\"") == "notes = \"one\\ttab\"\n");
}

TEST_CASE("a list has one line up to 110 characters, then a line for each item") {
  const auto work = [](int washes, int cuts) {
    std::vector<std::string> items(static_cast<std::size_t>(washes), "\"wash\"");
    items.insert(items.end(), static_cast<std::size_t>(cuts), "\"cut out\"");
    return fmt::format("work = [{}]", fmt::join(items, ", "));
  };
  CHECK(work(6, 5).size() == 110);
  CHECK(lesson_lines(work(6, 5)) == work(6, 5) + '\n');
  CHECK(work(13, 0).size() == 111);
  CHECK(lesson_lines(work(13, 0)).substr(0, 25) == "work = [\n  \"wash\",\n  \"was");
  CHECK(lesson_lines("work = [\n]") == "work = []\n");
}

TEST_CASE("the width of a list is counted in characters") {
  const std::string name(60, 'x');
  std::string wide;
  for (int i = 0; i < 50; ++i) wide += "\u00E6";
  const std::string line = fmt::format("work = [\"{}\", \"wash\", \"wash\", \"wash\"]", wide);
  CHECK(file::tidy(
            fmt::format("{}[[part]]\nname = \"{}\"\nkind = \"cable\"\nthread = \"heavy\"\nstart = [0, 0]\npath = \"E 4\"\n[[lesson]]\n{}\n",
                        small_course, wide, line))
            .find(line) != std::string::npos);
}

TEST_CASE("tables and keys come in the order of the reference, what was not written is not added") {
  CHECK(file::tidy(R"(format = 1
[[lesson]]
locked = false
work = ["b"]
[[part]]
path = "E 4"
rows = 2
start = [ 0,0 ]
kind = "cable"
name = "b"
thread = "z thread"
notes = "n"
begin_at = [4, 0]
[[part]]
name = "a"
kind = "blocks"
thread = "a"
first = "upright"
start = [0, 20]
path = "E 1"
[habits.stitches_a_minute]
cable = 4
[habits]
waste = 0
[thread."z thread"]
pearl = 5
[thread.a]
tex = 100
[cloth]
begin = "edges"
per_cm = 10
[course]
students = 1
title = "x"
)") == R"(format = 1

[course]
title = "x"
students = 1

[cloth]
per_cm = 10
begin = "edges"

[thread."z thread"]
pearl = 5

[thread.a]
tex = 100

[habits]
waste = 0

[habits.stitches_a_minute]
cable = 4

[[part]]
name = "b"
kind = "cable"
thread = "z thread"
start = [0, 0]
path = "E 4"
rows = 2
begin_at = [4, 0]
notes = "n"

[[part]]
name = "a"
kind = "blocks"
thread = "a"
start = [0, 20]
first = "upright"
path = "E 1"

[[lesson]]
work = ["b"]
locked = false
)");
}

TEST_CASE("a text with faults is left as it is") {
  for (const char* text : {"", "format = 2 # newer", "a = ", "format=1\n[course]\ntitle=\"x\"\nfoo=1\n[cloth]\ncount=22\n", "\xFF"})
    CHECK(file::tidy(text) == text);
}
