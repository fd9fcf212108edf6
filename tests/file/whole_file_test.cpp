// Faults of a file as a whole, exactly as they are shown.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("a file without a key has nothing to be told but that") {
  CHECK(faults_of(R"(
)") ==
        R"(x:1:1: found a file without a single key; expected a course: format = 1, then [course], [cloth], [thread.NAME] and [[part]]
)");
  CHECK(faults_of(R"(# only a comment
)") ==
        R"(x:1:1: found a file without a single key; expected a course: format = 1, then [course], [cloth], [thread.NAME] and [[part]]
  # only a comment
  ^
)");
}

TEST_CASE("a higher format is refused alone") {
  CHECK(faults_of(R"(format = 2
colour = 5
)") ==
        R"(x:1:10: found the format 2; expected a format up to 1: this program reads up to 1; a newer one is needed
  format = 2
           ^
)");
  CHECK(faults_of(R"(format = 9223372036854775807
)") ==
        R"(x:1:10: found the format 9223372036854775807; expected a format up to 1: this program reads up to 1; a newer one is needed
  format = 9223372036854775807
           ^^^^^^^^^^^^^^^^^^^
)");
}

TEST_CASE("a wrong or missing format is told with the rest") {
  CHECK(faults_of(R"(format = 0
)") ==
        R"(x:1:1: found no table [course]; expected [course] with its keys
  format = 0
  ^
x:1:1: found no table [cloth]; expected [cloth] with its keys
  format = 0
  ^
x:1:10: found the format 0; expected format = 1
  format = 0
           ^
)");
  CHECK(faults_of(R"(format = "1"
)") ==
        R"(x:1:1: found no table [course]; expected [course] with its keys
  format = "1"
  ^
x:1:1: found no table [cloth]; expected [cloth] with its keys
  format = "1"
  ^
x:1:10: found a text; expected format = 1
  format = "1"
           ^^^
)");
  CHECK(faults_of(R"([course]
minuts = 5
[cloth]
)") ==
        R"(x:1:1: found no "format"; expected format = 1 as the first line
  [course]
  ^
x:1:1: found no "title" in [course]; expected title = "...", the name of the course
  [course]
  ^^^^^^^^
x:2:1: found the key "minuts"; expected a key of [course]; did you mean minutes?
  minuts = 5
  ^^^^^^
x:3:1: found no "count" in [cloth]; expected count = 22 (threads an inch) or per_cm = 8.7
  [cloth]
  ^^^^^^^
)");
}

TEST_CASE("keys outside of a table and tables of other names") {
  CHECK(faults_of(R"(title = "x"
minuts = 4
fromat = 1
)") ==
        R"(x:1:1: found no "format"; expected format = 1 as the first line
  title = "x"
  ^
x:1:1: found no table [course]; expected [course] with its keys
  title = "x"
  ^
x:1:1: found no table [cloth]; expected [cloth] with its keys
  title = "x"
  ^
x:1:1: found the key "title" outside of a table; expected it below the line [course]
  title = "x"
  ^^^^^
x:2:1: found the key "minuts" outside of a table; expected format = 1 alone before the first table
  minuts = 4
  ^^^^^^
x:3:1: found the key "fromat" outside of a table; expected format = 1 alone before the first table; did you mean format?
  fromat = 1
  ^^^^^^
)");
  CHECK(faults_with(R"([curse]
)") ==
        R"(x:8:2: found the table "curse"; expected [course], [cloth], [thread.NAME], [habits], [[part]], [[lesson]] or [[student]]; did you mean course?
  [curse]
   ^^^^^
)");
  CHECK(faults_with(R"([parts]
x = 1
)") ==
        R"(x:8:2: found the table "parts"; expected [course], [cloth], [thread.NAME], [habits], [[part]], [[lesson]] or [[student]]; did you mean part?
  [parts]
   ^^^^^
)");
}

TEST_CASE("tables that are no tables") {
  CHECK(faults_of(R"(format = 1
course = 5
cloth = [1]
thread = "x"
habits = 1
part = 5
lesson = [1, {}]
)") ==
        R"(x:2:10: found a whole number; expected the table [course]
  course = 5
           ^
x:3:9: found a list; expected the table [cloth]
  cloth = [1]
          ^^^
x:4:10: found a text; expected the table [thread.NAME]
  thread = "x"
           ^^^
x:5:10: found a whole number; expected the table [habits]
  habits = 1
           ^
x:6:8: found a whole number; expected [[part]] in double brackets, each time
  part = 5
         ^
x:7:11: found a whole number; expected the table [[lesson]]
  lesson = [1, {}]
            ^
)");
  CHECK(faults_of(R"(format = 1
[[course]]
title = "x"
[cloth]
count = 22
[part]
name = "x"
[lesson]
)") ==
        R"(x:2:1: found [[course]]; expected [course] once, in single brackets
  [[course]]
  ^^^^^^^^^^
x:6:1: found [part]; expected [[part]] in double brackets, each time
  [part]
  ^^^^^^
x:8:1: found [lesson]; expected [[lesson]] in double brackets, each time
  [lesson]
  ^^^^^^^^
)");
}
