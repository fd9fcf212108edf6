// Faults of the keys of satin, stars, eyelets, four-sided stitch and backstitch, exactly as they are shown: at the value, or at the one of a
// list that is meant.
#include <doctest/doctest.h>

#include "read_faults.h"

namespace {

std::string faults_of_part(std::string_view keys) {
  return faults_with("[[part]]\nname = \"a\"\nthread = \"heavy\"\n" + std::string(keys));
}

}  // namespace

TEST_CASE("keys of satin") {
  CHECK(faults_of_part(R"(kind = "satin"
)") ==
        R"(x:8:1: found no "start" in [[part]]; expected start = [x, y]
  [[part]]
  ^^^^^^^^
x:8:1: found no "along" in [[part]]; expected along = "N", "E", "S" or "W"
  [[part]]
  ^^^^^^^^
x:8:1: found no "toward" in [[part]]; expected toward = "N", "E", "S" or "W"
  [[part]]
  ^^^^^^^^
x:8:1: found no "over" in [[part]]; expected over = [...], a list of whole numbers
  [[part]]
  ^^^^^^^^
)");
  CHECK(faults_of_part(R"(kind = "satin"
start = [0, 0]
along = "NE"
toward = "N"
over = []
step = [1, 2.5]
)") ==
        R"(x:13:9: found "NE"; expected "N", "E", "S" or "W"
  along = "NE"
          ^^^^
x:15:8: found an empty list; expected a list of whole numbers, e.g. [2, 3, 4, 3, 2]
  over = []
         ^^
x:16:12: found the number 2.5; expected a whole number from -40 to 40
  step = [1, 2.5]
             ^^^
)");
  CHECK(faults_of_part(R"(kind = "satin"
start = [0, 0]
along = "E"
toward = "W"
over = [2, 41, 0]
step = [50]
)") ==
        R"(x:15:12: found the number 41; expected a whole number from 1 to 40
  over = [2, 41, 0]
             ^^
x:15:16: found the number 0; expected a whole number from 1 to 40
  over = [2, 41, 0]
                 ^
x:16:9: found the number 50; expected a whole number from -40 to 40
  step = [50]
          ^^
)");
  CHECK(faults_of_part(R"(kind = "satin"
start = [0, 0]
along = "E"
toward = "N"
over = [2, 3, 4]
step = [0, 1]
)") ==
        R"(x:16:8: found a list of 2; expected 3 numbers, one for each stitch of over (the first counted from start), or one for all
  step = [0, 1]
         ^^^^^^
)");
  CHECK(faults_of_part(R"(kind = "satin"
start = [0, 99998]
along = "E"
toward = "S"
over = [2, 3]
)") ==
        R"(x:15:12: found a stitch that reaches the hole [1, 100001]; expected holes within 100000 threads of 0
  over = [2, 3]
             ^
)");
  CHECK(faults_of_part(R"(kind = "satin"
start = [0, 0]
along = "E"
toward = "N"
over = 4
)") ==
        R"(x:15:8: found a whole number; expected a list of whole numbers, e.g. [2, 3, 4, 3, 2]
  over = 4
         ^
)");
}

TEST_CASE("keys of stars") {
  CHECK(faults_of_part(R"(kind = "star"
centre = [0]
reach = 9
points = 6
)") ==
        R"(x:12:10: found a list of 1; expected a hole [x, y] in whole numbers
  centre = [0]
           ^^^
)");
  CHECK(faults_of_part(R"(kind = "star"
centre = [0, 0]
reach = 9
points = 6
)") ==
        R"(x:13:9: found the number 9; expected an even number of threads, twice the longest stitch less 2: 8 or 10
  reach = 9
          ^
x:14:10: found the number 6; expected 4 or 8
  points = 6
           ^
)");
  CHECK(faults_of_part(R"(kind = "star"
centre = [0, 99995]
reach = 200
)") ==
        R"(x:13:9: found the number 200; expected a whole number from 4 to 78
  reach = 200
          ^^^
)");
}

TEST_CASE("keys of eyelets") {
  CHECK(faults_of_part(R"(kind = "eyelet"
centres = [0, 0]
size = 4
)") ==
        R"(x:12:12: found a whole number; expected a hole [x, y] in whole numbers
  centres = [0, 0]
             ^
x:12:15: found a whole number; expected a hole [x, y] in whole numbers
  centres = [0, 0]
                ^
)");
  CHECK(faults_of_part(R"(kind = "eyelet"
centres = [[0, 0], [4, 0], [0, 0], [100000, 0]]
size = 6
legs = 16
outline = "round"
open = 1
)") ==
        R"(x:15:11: found "round"; expected "square" or "star"
  outline = "round"
            ^^^^^^^
x:16:8: found a whole number; expected true or false
  open = 1
         ^
)");
  CHECK(faults_of_part(R"(kind = "eyelet"
centres = [[0, 0], [4, 0], [0, 0], [100000, 0]]
size = 7
legs = 12
)") ==
        R"(x:12:28: found the hole [0, 0] a second time; expected each centre once
  centres = [[0, 0], [4, 0], [0, 0], [100000, 0]]
                             ^^^^^^
x:12:36: found the hole [100000, 0]; expected holes within 100000 threads of 0
  centres = [[0, 0], [4, 0], [0, 0], [100000, 0]]
                                     ^^^^^^^^^^^
x:13:8: found the number 7; expected an even number of threads, since the centre is a hole: 6 or 8
  size = 7
         ^
)");
  CHECK(faults_of_part(R"(kind = "eyelet"
centres = []
size = 6
legs = "some"
)") ==
        R"(x:12:11: found an empty list; expected a list of holes, e.g. [[0, 0], [8, 0]]
  centres = []
            ^^
x:14:8: found a text; expected "all", or a whole number from 4 to 256
  legs = "some"
         ^^^^^^
)");
}

TEST_CASE("keys of four-sided stitch") {
  CHECK(faults_of_part(R"(kind = "four-sided"
start = [0, 0]
path = "E 6, NE 4"
over = 1
)") ==
        R"(x:14:8: found the number 1; expected a whole number from 2 to 12
  over = 1
         ^
)");
  CHECK(faults_of_part(R"(kind = "four-sided"
start = [0, 0]
path = "E 6, N 4, W 8"
squares_lie = "above"
)") ==
        R"(x:14:15: found "above"; expected "left" or "right"
  squares_lie = "above"
                ^^^^^^^
)");
  CHECK(faults_of_part(R"(kind = "four-sided"
start = [0, 0]
path = "E 8, N 4, W 8"
)") ==
        R"(x:13:16: found the number 4; expected 8 or more: between two turns towards the row there are two squares at least
  path = "E 8, N 4, W 8"
                 ^
)");
}

TEST_CASE("keys of backstitch and double running") {
  CHECK(faults_of_part(R"(kind = "backstitch"
start = [0, 0]
path = "E 7"
over = 3
worked = "forward"
)") ==
        R"(x:15:10: found "forward"; expected "back" or "double running"
  worked = "forward"
           ^^^^^^^^^
)");
  CHECK(faults_of_part(R"(kind = "backstitch"
start = [0, 0]
path = "E 8, S 4, W 4, N 4, E 8"
worked = "double running"
)") ==
        R"(x:13:29: found "E 8", which leads over the stitch from [4, 0] to [6, 0] a second time; expected a path that goes over every stitch once
  path = "E 8, S 4, W 4, N 4, E 8"
                              ^^^
)");
}
