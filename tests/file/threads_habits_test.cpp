// Faults of [thread.NAME] and [habits], exactly as they are shown.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("threads") {
  CHECK(faults_with(R"([thread."a/b"]
pearl = 5
[thread." x"]
tex = 0
[thread.""]
[thread.fine]
pearl = 5
tex = 200
needle = 99
ball_m = 0
ball_g = "x"
price = "4,50"
currency = 5
color = "#F2EBDD"
[thread.gold]
pearl = 8
price = -4
colour = "#F2EBDG"
)") ==
        R"(x:8:9: found a / in a name; expected a name without / (it parts the stages of a lesson's work)
  [thread."a/b"]
          ^^^^^
x:10:9: found a name with a blank before or behind it; expected a name without
  [thread." x"]
          ^^^^
x:11:7: found the number 0; expected a number from 1 to 5000
  tex = 0
        ^
x:12:1: found no "pearl" in [thread.""]; expected pearl = 5 (the size of a pearl cotton) or tex = 200
  [thread.""]
  ^^^^^^^^^^^
x:12:9: found an empty name; expected a name
  [thread.""]
          ^^
x:15:1: found both "pearl" and "tex"; expected one of them
  tex = 200
  ^^^
x:16:10: found the number 99; expected a whole number from 10 to 30
  needle = 99
           ^^
x:17:10: found the number 0; expected a number from 0.1 to 100000
  ball_m = 0
           ^
x:18:10: found a text; expected a number from 0.1 to 100000
  ball_g = "x"
           ^^^
x:19:9: found "4,50"; expected a price such as 4.50, at most 9 digits before and behind the point; did you mean 4.50?
  price = "4,50"
          ^^^^^^
x:20:12: found a whole number; expected a text in quotation marks
  currency = 5
             ^
x:21:1: found the key "color"; expected a key of [thread.fine]; did you mean colour?
  color = "#F2EBDD"
  ^^^^^
x:24:9: found "-4"; expected a price such as 4.50, at most 9 digits before and behind the point
  price = -4
          ^^
x:25:10: found "#F2EBDG"; expected a colour as # and six digits 0-9, A-F: red, green, blue, e.g. "#F2EBDD"
  colour = "#F2EBDG"
           ^^^^^^^^^
)");
}

TEST_CASE("habits") {
  CHECK(faults_with(R"([habits]
working_length_cm = 10
tail_cm = 51
take_up = 2
waste = -0.1
back_limit = 4
edge = "after cutting"
eyelet_needle = "down"
cable_length_cm = 301
cabel_length_cm = 30
cutwork_length_cm = 30
foo = 1
[habits.stitches_a_minute]
blocks = 0
cutwork = 5
cabel = 5
[habits.count_cost]
glance = 61
glanse = 1
)") ==
        R"(x:9:21: found the number 10; expected a number from 20 to 300
  working_length_cm = 10
                      ^^
x:10:11: found the number 51; expected a number from 1 to 50
  tail_cm = 51
            ^^
x:11:11: found the number 2; expected a number from 0 to 1
  take_up = 2
            ^
x:12:9: found the number -0.1; expected a number from 0 to 1
  waste = -0.1
          ^^^^
x:13:14: found the number 4; expected a number from 5 to 100
  back_limit = 4
               ^
x:14:8: found "after cutting"; expected "before cutting" or "after"; did you mean before cutting?
  edge = "after cutting"
         ^^^^^^^^^^^^^^^
x:15:17: found "down"; expected "down in the middle" or "up"
  eyelet_needle = "down"
                  ^^^^^^
x:16:19: found the number 301; expected a number from 20 to 300
  cable_length_cm = 301
                    ^^^
x:17:1: found the key "cabel_length_cm"; expected a key of [habits]; did you mean cable_length_cm?
  cabel_length_cm = 30
  ^^^^^^^^^^^^^^^
x:19:1: found the key "foo"; expected a key of [habits]: working_length_cm, blocks_length_cm, cable_length_cm, satin_length_cm, star_length_cm, eyelet_length_cm, four-sided_length_cm, backstitch_length_cm, edge_length_cm, cutwork_length_cm, tail_cm, first_tail_cm, take_up, waste, back_limit, class_share, prepare_minutes, wash_minutes, pace, edge, eyelet_needle, stitches_a_minute, count_cost
  foo = 1
  ^^^
x:21:10: found the number 0; expected a number from 0.1 to 100
  blocks = 0
           ^
x:23:1: found the key "cabel"; expected a key of [habits.stitches_a_minute]; did you mean cable?
  cabel = 5
  ^^^^^
x:25:10: found the number 61; expected a number from 0 to 60
  glance = 61
           ^^
x:26:1: found the key "glanse"; expected a key of [habits.count_cost]; did you mean glance?
  glanse = 1
  ^^^^^^
)");
}

TEST_CASE("tails that leave too little of a working length") {
  CHECK(faults_with(R"([habits]
tail_cm = 25.5
)") ==
        R"(x:9:11: found two tails of 25.5 cm in a length of 50 cm; expected tails that leave at least 10 cm of working_length_cm
  tail_cm = 25.5
            ^^^^
)");
  CHECK(faults_with(R"([habits]
tail_cm = 20
)") ==
        R"()");
  CHECK(faults_with(R"([habits]
cable_length_cm = 25
)") ==
        R"(x:9:19: found two tails of 8 cm in a length of 25 cm; expected tails that leave at least 10 cm of cable_length_cm
  cable_length_cm = 25
                    ^^
)");
  CHECK(faults_with(R"([habits]
first_tail_cm = 50
)") ==
        R"(x:9:17: found a first tail of 50 cm and a last of 8 cm in a length of 50 cm; expected tails that leave at least 1 cm of working_length_cm
  first_tail_cm = 50
                  ^^
)");
}
