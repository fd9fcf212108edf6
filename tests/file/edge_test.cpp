// The keys of an edge and the faults in its path (the project's own form).
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("an edge: its keys, and faults in its path") {
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "edge"
thread = "heavy"
start = [0, 0]
path = "E 3, N 20"
out = "outside"
over = 9
)") ==
        R"(x:14:7: found "outside"; expected "left" or "right"
  out = "outside"
        ^^^^^^^^^
x:15:8: found the number 9; expected a whole number from 3 to 8
  over = 9
         ^
)");
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "edge"
thread = "heavy"
start = [0, 0]
path = "E 3, N 20, NE 4"
)") ==
        R"(x:13:20: found "NE 4", a slanted leg; expected a straight one: N, E, S or W
  path = "E 3, N 20, NE 4"
                     ^^^^
)");
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "edge"
thread = "heavy"
start = [0, 0]
path = "E 3, N 20, W 10, N 8, E 10"
out = "left"
)") ==
        R"(x:13:11: found the number 3; expected 4 or more: stitches over 4 need as many threads before an inner corner
  path = "E 3, N 20, W 10, N 8, E 10"
            ^
)");
}
