// Slips in the form of the text, told in our own words: numbers, lists, headers, names used twice.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("numbers, dates and times") {
  CHECK(faults_of(R"(minutes = 90min
)") ==
        R"(x:1:11: found "90min"; expected a number alone, e.g. 90 or 8.7; a text stands in quotation marks
  minutes = 90min
            ^^^^^
)");
  CHECK(faults_of(R"(a = 1__2
)") ==
        R"(x:1:5: found "1__2"; expected a number alone, e.g. 90 or 8.7; a text stands in quotation marks
  a = 1__2
      ^^^^
)");
  CHECK(faults_of(R"(a = 0x
)") ==
        R"(x:1:5: found "0x"; expected a number alone, e.g. 90 or 8.7; a text stands in quotation marks
  a = 0x
      ^^
)");
  CHECK(faults_of(R"(a = -
)") ==
        R"(x:1:5: found "-"; expected a number alone, e.g. 90 or 8.7; a text stands in quotation marks
  a = -
      ^
)");
  CHECK(faults_of(R"(a = 012
)") ==
        R"(x:1:5: found "012"; expected a number without zeros before it: 12
  a = 012
      ^^^
)");
  CHECK(faults_of(R"(a = 1e999
)") ==
        R"(x:1:5: found "1e999"; expected a number of a size that has a meaning here
  a = 1e999
      ^^^^^
)");
  CHECK(faults_of(R"(a = 99999999999999999999
)") ==
        R"(x:1:5: found "99999999999999999999"; expected a number of a size that has a meaning here
  a = 99999999999999999999
      ^^^^^^^^^^^^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 2027-01-12 1
)") ==
        R"(x:1:16: found "1"; expected nothing more behind a date
  d = 2027-01-12 1
                 ^
)");
  CHECK(faults_of(R"(d = 2027-13-01
)") ==
        R"(x:1:5: found "2027-13-01"; expected a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12
  d = 2027-13-01
      ^^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 2027-1-12
)") ==
        R"(x:1:5: found "2027-1-12"; expected a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12
  d = 2027-1-12
      ^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 2027-02-30
)") ==
        R"(x:1:5: found "2027-02-30"; expected a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12
  d = 2027-02-30
      ^^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 12.01.2027
)") ==
        R"(x:1:5: found "12.01.2027"; expected a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12
  d = 12.01.2027
      ^^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 12/01/2027
)") ==
        R"(x:1:5: found "12/01/2027"; expected a day of the calendar as year-month-day with two digits for month and day, e.g. 2027-01-12
  d = 12/01/2027
      ^^^^^^^^^^
)");
  CHECK(faults_of(R"(d = 18:30
)") ==
        R"(x:1:5: found "18:30"; expected a time in quotation marks, e.g. "18:30"
  d = 18:30
      ^^^^^
)");
  CHECK(faults_of(R"(d = 2027-01-12 25:00:00
)") ==
        R"(x:1:16: found "25:00:00"; expected a time in quotation marks, e.g. "18:30"
  d = 2027-01-12 25:00:00
                 ^^^^^^^^
)");
}

TEST_CASE("lists and tables in braces") {
  CHECK(faults_of(R"(a = [1 2]
)") ==
        R"(x:1:8: found "2"; expected a comma, or ] to close the list
  a = [1 2]
         ^
)");
  CHECK(faults_of(R"(a = [1,,2]
)") ==
        R"(x:1:8: found ","; expected a value between two commas
  a = [1,,2]
         ^
)");
  CHECK(faults_of(R"(a = [1, 2
b = 3
)") ==
        R"(x:2:1: found "b"; expected a comma, or ] to close the list that begins in line 1
  b = 3
  ^
)");
  CHECK(faults_of(R"(a = [1, 2,
 3,
)") ==
        R"(x:2:4: found the end of the file; expected a comma, or ] to close the list that begins in line 1
   3,
     ^
)");
  CHECK(faults_of(R"(a = [1, }
)") ==
        R"(x:1:9: found "}"; expected a value, or ] to close the list
  a = [1, }
          ^
)");
  CHECK(faults_of(R"(a = { x = 1,
)") ==
        R"(x:1:13: found the end of the line; expected } in the same line: a table in { } stands on one line
  a = { x = 1,
              ^
)");
  CHECK(faults_of(R"(a = { x = 1, }
)") ==
        R"(x:1:14: found "}"; expected a key behind the comma, or no comma
  a = { x = 1, }
               ^
)");
  CHECK(faults_of(R"(a = { x 1 }
)") ==
        R"(x:1:9: found "1"; expected = and a value behind the key
  a = { x 1 }
          ^
)");
}

TEST_CASE("headers") {
  CHECK(faults_of(R"([course
a = 1
)") ==
        R"(x:1:8: found the end of the line; expected ] behind the table's name
  [course
         ^
)");
  CHECK(faults_of(R"([course] x
)") ==
        R"(x:1:10: found "x"; expected the end of the line behind the table's name, or a comment after #
  [course] x
           ^
)");
  CHECK(faults_of(R"([]
)") ==
        R"(x:1:2: found "]"; expected the name of a table between the brackets
  []
   ^
)");
  CHECK(faults_of(R"([ [x]]
)") ==
        R"(x:1:3: found "["; expected two brackets without a blank between them: [[part]]
  [ [x]]
    ^
)");
  CHECK(faults_of(R"([é]
)") ==
        R"(x:1:2: found "é"; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  [é]
   ^
)");
  CHECK(faults_of(R"([.a]
)") ==
        R"(x:1:2: found "."; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  [.a]
   ^
)");
  CHECK(faults_of(R"([[[a]]]
)") ==
        R"(x:1:3: found "["; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  [[[a]]]
    ^
)");
  CHECK(faults_of(R"([
a]
)") ==
        R"(x:1:2: found the end of the line; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  [
   ^
)");
  CHECK(faults_of(R"(größe = 1
)") ==
        R"(x:1:3: found "ö"; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  größe = 1
    ^
)");
  CHECK(faults_of(R"(a. = 1
)") ==
        R"(x:1:4: found "="; expected a name of letters a to z, digits, - and _; a name with other letters stands in quotation marks
  a. = 1
     ^
)");
}

TEST_CASE("the same name again") {
  CHECK(faults_of(R"(a = 1
  a = 2
)") ==
        R"(x:2:3: found the key "a" a second time; expected each key once in its table
    a = 2
    ^
)");
  CHECK(faults_of(R"(a = { x = 1, x = 2 }
)") ==
        R"(x:1:18: found the key "x" a second time; expected each key once in its table
  a = { x = 1, x = 2 }
                   ^
)");
  CHECK(faults_of(R"([a]
[a]
)") ==
        R"(x:2:1: found the table [a] a second time; expected each table once
  [a]
  ^^^
)");
  CHECK(faults_of(R"([[part]]
[part]
)") ==
        R"(x:2:1: found [part]; expected [[part]] in double brackets, each time
  [part]
  ^^^^^^
)");
  CHECK(faults_of(R"([part]
[part]
)") ==
        R"(x:2:1: found [part] a second time; expected [[part]] in double brackets, each time
  [part]
  ^^^^^^
)");
  CHECK(faults_of(R"([part]
[[part]]
)") ==
        R"(x:2:1: found [[part]] after [part]; expected double brackets, each time
  [[part]]
  ^^^^^^^^
)");
  CHECK(faults_of(R"([course]
[[course]]
)") ==
        R"(x:2:1: found [[course]] after [course]; expected [course] once, in single brackets
  [[course]]
  ^^^^^^^^^^
)");
  CHECK(faults_of(R"(a = {x=1}
[a.b]
b = 1
)") ==
        R"(x:2:1: found the table [a.b]; expected nothing more for a table that is written in { }
  [a.b]
  ^^^^^
)");
  CHECK(faults_of(R"(a = 1
[a.b]
[c]
)") ==
        R"(x:2:1: found the table [a.b] where there is a value already; expected each name for one thing
  [a.b]
  ^^^^^
)");
  CHECK(faults_of(R"(a = [1]
[[a]]
)") ==
        R"(x:2:1: found the table [a] where there is a value already; expected each name for one thing
  [[a]]
  ^^^^^
)");
  CHECK(faults_of(R"(a = [1]
[a.b]
)") ==
        R"(x:2:1: found [a.b]; expected [[a.b]] in double brackets, each time
  [a.b]
  ^^^^^
)");
  CHECK(faults_of(R"(a.b = 1
a.b.c = 2
)") ==
        R"(x:2:3: found a key that has a value already, used as a table; expected each name for one thing
  a.b.c = 2
    ^
)");
}
