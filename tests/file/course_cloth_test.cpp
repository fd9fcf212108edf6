// Faults of [course] and [cloth], exactly as they are shown, all of a file in one go and in order of place.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("every value of the course and of its cloth") {
  CHECK(faults_of(R"(format = 1
[course]
title = 5
teacher = ""
first_day = "2027-01-12"
every = "wek"
minutes = 2000
students = 0
lessons = 201
hand = "lefft"
paper = "a4"
language = "no"
home_minutes = -1
start_time = "25:00"
time_zone = "Oslo time"
holidays = [2027-01-12, "x"]
seen_before = "no"
minuets = 5
[cloth]
count = 4
per_cm = 8
line = "treads"
margin_mm = 1001
colour = "red"
size_threads = [0, 5]
middle = [1.5, 2]
begin = "edge"
cuont = 1
)") ==
        R"(x:3:9: found a whole number; expected a text in quotation marks
  title = 5
          ^
x:5:13: found a text; expected a date as year-month-day without quotation marks, e.g. 2027-01-12; did you mean 2027-01-12?
  first_day = "2027-01-12"
              ^^^^^^^^^^^^
x:6:9: found "wek"; expected "week", "two weeks" or "day"; did you mean week?
  every = "wek"
          ^^^^^
x:7:11: found the number 2000; expected a whole number from 1 to 1440
  minutes = 2000
            ^^^^
x:8:12: found the number 0; expected a whole number from 1 to 10000
  students = 0
             ^
x:9:11: found the number 201; expected a whole number from 1 to 200
  lessons = 201
            ^^^
x:10:8: found "lefft"; expected "right", "left" or "both"; did you mean left?
  hand = "lefft"
         ^^^^^^^
x:11:9: found "a4"; expected "A4" or "Letter"; did you mean A4?
  paper = "a4"
          ^^^^
x:12:12: found "no"; expected "en" or "nb"; did you mean nb?
  language = "no"
             ^^^^
x:13:16: found the number -1; expected a whole number from 0 to 1440
  home_minutes = -1
                 ^^
x:14:14: found "25:00"; expected a time from "00:00" to "23:59" in quotation marks, e.g. "18:30"
  start_time = "25:00"
               ^^^^^^^
x:15:13: found "Oslo time"; expected a time zone such as "Europe/Oslo"
  time_zone = "Oslo time"
              ^^^^^^^^^^^
x:16:25: found a text; expected a date as year-month-day without quotation marks, e.g. 2027-01-12
  holidays = [2027-01-12, "x"]
                          ^^^
x:17:15: found a text; expected a list in [ ]
  seen_before = "no"
                ^^^^
x:18:1: found the key "minuets"; expected a key of [course]; did you mean minutes?
  minuets = 5
  ^^^^^^^
x:20:9: found the number 4; expected a number from 5 to 100
  count = 4
          ^
x:21:1: found both "count" and "per_cm"; expected one of them: threads an inch, or threads a centimetre
  per_cm = 8
  ^^^^^^
x:22:8: found "treads"; expected "thread" or "hole"; did you mean thread?
  line = "treads"
         ^^^^^^^^
x:23:13: found the number 1001; expected a number from 0 to 1000
  margin_mm = 1001
              ^^^^
x:24:10: found "red"; expected a colour as # and six digits 0-9, A-F: red, green, blue, e.g. "#F2EBDD"
  colour = "red"
           ^^^^^
x:25:17: found the number 0; expected a whole number from 1 to 100000
  size_threads = [0, 5]
                  ^
x:26:11: found the number 1.5; expected a whole number from -100000 to 100000
  middle = [1.5, 2]
            ^^^
x:27:9: found "edge"; expected "middle" or "edges"; did you mean edges?
  begin = "edge"
          ^^^^^^
x:28:1: found the key "cuont"; expected a key of [cloth]; did you mean count?
  cuont = 1
  ^^^^^
)");
}

TEST_CASE("days of the course") {
  CHECK(faults_of(R"(format = 1
[course]
title = "  "
first_day = 2027-01-05
days = [2027-01-12, 2027-01-12, 1800-01-01]
every = "day"
start_time = 18:30:00
[cloth]
)") ==
        R"(x:3:9: found an empty title; expected the name of the course
  title = "  "
          ^^^^
x:5:1: found both "every" and "days"; expected one of them: a rhythm, or the days themselves
  days = [2027-01-12, 2027-01-12, 1800-01-01]
  ^^^^
x:5:9: found 2027-01-12 as first of the days; expected the first_day, 2027-01-05
  days = [2027-01-12, 2027-01-12, 1800-01-01]
          ^^^^^^^^^^
x:5:21: found 2027-01-12; expected a day after 2027-01-12
  days = [2027-01-12, 2027-01-12, 1800-01-01]
                      ^^^^^^^^^^
x:5:33: found the year 1800; expected a year from 1900 to 2999
  days = [2027-01-12, 2027-01-12, 1800-01-01]
                                  ^^^^^^^^^^
x:8:1: found no "count" in [cloth]; expected count = 22 (threads an inch) or per_cm = 8.7
  [cloth]
  ^^^^^^^
)");
}

TEST_CASE("values of other types and without end") {
  CHECK(faults_of(R"(format = 1
[course]
title = "a\nb"
days = 5
first_day = 2027-01-12T10:00:00
start_time = 18:30:01
minutes = 90.5
lessons = true
[cloth]
per_cm = nan
margin_mm = inf
size_threads = [1, 2, 3]
middle = [99999999999, -100001]
)") ==
        R"(x:3:9: found a line break; expected letters and signs in one line
  title = "a\nb"
          ^^^^^^
x:4:8: found a whole number; expected a list in [ ]
  days = 5
         ^
x:5:13: found a date with a time; expected a date as year-month-day without quotation marks, e.g. 2027-01-12
  first_day = 2027-01-12T10:00:00
              ^^^^^^^^^^^^^^^^^^^
x:6:14: found a time with seconds; expected a time from "00:00" to "23:59" in quotation marks, e.g. "18:30"
  start_time = 18:30:01
               ^^^^^^^^
x:7:11: found the number 90.5; expected a whole number from 1 to 1440
  minutes = 90.5
            ^^^^
x:8:11: found true or false; expected a whole number from 1 to 200
  lessons = true
            ^^^^
x:10:10: found the number nan; expected a number from 2 to 39
  per_cm = nan
           ^^^
x:11:13: found the number inf; expected a number from 0 to 1000
  margin_mm = inf
              ^^^
x:12:16: found a list of 3; expected a size [width, height] in whole numbers
  size_threads = [1, 2, 3]
                 ^^^^^^^^^
x:13:11: found the number 99999999999; expected a whole number from -100000 to 100000
  middle = [99999999999, -100001]
            ^^^^^^^^^^^
x:13:24: found the number -100001; expected a whole number from -100000 to 100000
  middle = [99999999999, -100001]
                         ^^^^^^^
)");
}

TEST_CASE("one count, or two where warp and weft differ") {
  const auto counted = [](const std::string& line) { const auto read = file::read("format = 1\n[course]\ntitle = \"T\"\n[cloth]\n" + line + "\n[thread.a]\npearl = 5\n");
    REQUIRE(read.faults.empty());
    return read.course.cloth.count;
  };
  CHECK(counted("count = [22, 24.5]").per_inch == 22);
  CHECK(counted("count = [22, 24.5]").down() == 24.5);
  CHECK(!counted("count = [22, 22]").down_per_inch);
  CHECK(!counted("count = 22").down_per_inch);
  CHECK(counted("per_cm = [8.5, 10]").per_inch == doctest::Approx(21.59));
  CHECK(counted("per_cm = [8.5, 10]").down() == doctest::Approx(25.4));
}

TEST_CASE("counts that are none") {
  const auto told = [](const std::string& line) { return faults_of("format = 1\n[course]\ntitle = \"T\"\n[cloth]\n" + line + "\n[thread.a]\npearl = 5\n"); };
  CHECK(told("count = [22]") == "x:5:9: found a list of 1; expected one count, or two: [across, down]\n  count = [22]\n          ^^^^\n");
  CHECK(told("count = [22, 3]").find("x:5:14: found the number 3; expected a number from 5 to 100") == 0);
  CHECK(told("per_cm = [8, \"x\"]").find("x:5:14: found a text; expected a number from 2 to 39") == 0);
  CHECK(told("count = []").find("x:5:9: found a list of 0; expected one count, or two: [across, down]") == 0);
}
