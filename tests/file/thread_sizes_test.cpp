// The table of pearl cottons: the program's own, and tables that are wrong.
#include "file/thread_sizes.h"

#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("the program's table: metres and grams from makers' labels by memory, needles by common practice without source") {
  const auto metres = [](int pearl) { return file::sold_as(file::thread_sizes(), pearl).metres; };
  CHECK(metres(3) == 15);
  CHECK(metres(5) == 25);
  CHECK(metres(8) == 80);
  CHECK(metres(12) == 120);
  CHECK(file::sold_as(file::thread_sizes(), 5).needle == 24);
  CHECK(file::sold_as(file::thread_sizes(), 8).needle == 26);
}

TEST_CASE("a size that is not in the table has a needle and no metres") {
  const auto sold = file::sold_as(file::thread_sizes(), 16);
  CHECK(sold.needle == 26);
  CHECK(sold.metres == 0);
}

TEST_CASE("a table's faults are told with their line") {
  const auto trouble = [](const char* text) { return file::read_thread_sizes(text).error().what; };
  CHECK(trouble("[[pearl]]\nsize = 99\n") == "line 2: found the number 99; expected a whole number from 1 to 40");
  CHECK(trouble("[[pearl]]\nsize = 5\nmeters = 3\n").find("line 3: found the key \"meters\"") == 0);
  CHECK(trouble("") == "no [[pearl]]");
  CHECK(file::read_thread_sizes("[[pearl]]\nsize = 5\n").has_value());
}

TEST_CASE("a course's own ball, form and needle go before the table's") {
  const std::string head = "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.a]\npearl = 8\n";
  const auto thread = [&](const std::string& keys) { return file::read(head + keys).course.threads.at(0); };
  CHECK(course::ball_metres(thread("")) == 80);
  CHECK(course::form(thread("")) == course::Form::ball);
  CHECK(course::form(thread("sold_as = \"skein\"")) == course::Form::skein);
  CHECK(course::needle_size(thread("needle = 24")) == 24);
}
