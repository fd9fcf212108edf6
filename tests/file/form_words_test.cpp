// Slips in the form of the text, told in our own words: values that are missing, texts that do not end.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("a value is missing or runs on") {
  CHECK(faults_of(R"(a = 
)") ==
        R"(x:1:5: found the end of the line; expected a value behind the =
  a = 
      ^
)");
  CHECK(faults_of(R"(a =
b = 1
)") ==
        R"(x:1:4: found the end of the line; expected a value behind the =
  a =
     ^
)");
  CHECK(faults_of(R"(a = # c
)") ==
        R"(x:1:5: found "#"; expected a value behind the =
  a = # c
      ^
)");
  CHECK(faults_of(R"(title "x"
)") ==
        R"(x:1:7: found a quotation mark; expected = and a value behind the key
  title "x"
        ^
)");
  CHECK(faults_of(R"(title
)") ==
        R"(x:1:6: found the end of the line; expected = and a value behind the key
  title
       ^
)");
  CHECK(faults_of(R"(minutes = 90 min
)") ==
        R"(x:1:14: found "min"; expected the end of the line behind the value, or a comment after #
  minutes = 90 min
               ^^^
)");
  CHECK(faults_of(R"(a = "x" "y"
)") ==
        R"(x:1:9: found a quotation mark; expected the end of the line behind the value, or a comment after #
  a = "x" "y"
          ^
)");
  CHECK(faults_of(R"(d = 8,7
)") ==
        R"(x:1:6: found ","; expected a decimal point in a number, e.g. 8.7
  d = 8,7
       ^
)");
  CHECK(faults_of(R"(a = [1]]
)") ==
        R"(x:1:8: found "]"; expected the end of the line behind the value, or a comment after #
  a = [1]]
         ^
)");
  CHECK(faults_of(R"(= 1
)") ==
        R"(x:1:1: found "="; expected a key, a table in [ ], or a comment after #
  = 1
  ^
)");
}

TEST_CASE("words without quotation marks") {
  CHECK(faults_of(R"(title = Frost on the Pane # c
)") ==
        R"(x:1:9: found Frost without quotation marks; expected a text in quotation marks: "Frost on the Pane"
  title = Frost on the Pane # c
          ^^^^^
)");
  CHECK(faults_of(R"(path = E 12, S 12
)") ==
        R"(x:1:8: found E without quotation marks; expected a text in quotation marks: "E 12, S 12"
  path = E 12, S 12
         ^
)");
  CHECK(faults_of(R"(path = [E 12, S 12]
)") ==
        R"(x:1:9: found E without quotation marks; expected a text in quotation marks: "E 12"
  path = [E 12, S 12]
          ^
)");
  CHECK(faults_of(R"(ok = True
)") ==
        R"(x:1:6: found True; expected true or false, in small letters
  ok = True
       ^^^^
)");
  CHECK(faults_of(R"(title = “Frost”
)") ==
        R"(x:1:9: found “Frost”; expected straight quotation marks round a text: "..."
  title = “Frost”
          ^^^^^^^
)");
  CHECK(faults_of(R"(a = _1
)") ==
        R"(x:1:5: found _1 without quotation marks; expected a text in quotation marks: "_1"
  a = _1
      ^^
)");
}

TEST_CASE("texts that do not end") {
  CHECK(faults_of(R"(title = "Frost
b = 1
)") ==
        R"(x:1:15: found the end of the line; expected the closing quotation mark of the text
  title = "Frost
                ^
)");
  CHECK(faults_of(R"(title = 'Frost
b = 1
)") ==
        R"(x:1:15: found the end of the line; expected the closing quotation mark of the text
  title = 'Frost
                ^
)");
  CHECK(faults_of(R"(a = """x
 y
)") ==
        R"(x:2:3: found the end of the file; expected the closing quotation mark of the text that begins in line 1
   y
    ^
)");
  CHECK(faults_of(R"(a = "x\d"
)") ==
        R"(x:1:8: found "d" behind a backslash; expected \\ for a backslash itself, \" for a quotation mark, \n for a new line
  a = "x\d"
         ^
)");
  CHECK(faults_of(R"(a = "x\u12"
)") ==
        R"(x:1:11: found a quotation mark behind a backslash; expected \\ for a backslash itself, \" for a quotation mark, \n for a new line
  a = "x\u12"
            ^
)");
  CHECK(faults_of(R"("""a""" = 1
)") ==
        R"(x:1:1: found a quotation mark; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  """a""" = 1
  ^
)");
}
