// Faults of [[lesson]] and of its work, exactly as they are shown.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("work of lessons") {
  CHECK(faults_with(R"([[part]]
name = "ring"
kind = "blocks"
thread = "heavy"
start = [0, 0]
path = "E 3"
[[part]]
name = "border"
kind = "cable"
thread = "heavy"
start = [0, 20]
path = "E 12"
rows = 3
[[part]]
name = "bad"
kind = "cable"
thread = "heavy"
start = [0, 20]
path = "E 13"
[[lesson]]
work = ["ring", "ring / 1..13", "border / pass 2", "border / pass 1 / 1..12", "wash", "cut out", " ring/pass 1/2 .. 3 "]
[[lesson]]
work = [
  "rin",
  "ring / 1..14",
  "ring / 0..3",
  "ring / 5..4",
  "ring / pass 2",
  "ring / pass",
  "ring / pass x",
  "ring / cut",
  "ring / 1-20",
  "ring / 1",
  "ring / foo",
  "ring / 1..2 / 3",
  "ring / pass 1 / cut",
  "border / 1..3",
  "border / pass 3",
  "border / pass 2 / 1..99",
  "bad / pass 7 / 1..900",
  "bad / 3..2",
  "bad / x",
  "wash / 1..2",
  "",
  "/",
  "ring /",
  "ring / / 1..2",
  5,
  "ring / 1..99999999999",
  "ring \u002f 1..14",
  "größe / 1..14",
  "ring / é..14",
]
notes = "a\nb\tc\u0007"
date = "2027-01-12"
minutes = 0
locked = 1
foo = 1
)") ==
        R"(x:26:11: found the number 13; expected an even number of threads: 12 or 14
  path = "E 13"
            ^^
x:31:4: found the part "rin"; expected the name of a part, "wash" or "cut out"; did you mean ring?
    "rin",
     ^^^
x:32:14: found the stitch 14; expected at most 13: that many stitches "ring" has
    "ring / 1..14",
               ^^
x:33:11: found the stitch 0; expected stitches counted from 1
    "ring / 0..3",
            ^
x:34:14: found the stitch 4 as last; expected the first stitch, 5, or a later one
    "ring / 5..4",
               ^
x:35:16: found the pass 2; expected pass 1: "ring" has one pass
    "ring / pass 2",
                 ^
x:36:11: found the stage "pass"; expected a pass, e.g. "pass 1"
    "ring / pass",
            ^^^^
x:37:11: found the stage "pass x"; expected a pass, e.g. "pass 1"
    "ring / pass x",
            ^^^^^^
x:38:11: found the stage "cut"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / cut",
            ^^^
x:39:11: found the stage "1-20"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"; did you mean 1..20?
    "ring / 1-20",
            ^^^^
x:40:11: found the stage "1"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / 1",
            ^
x:41:11: found the stage "foo"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / foo",
            ^^^
x:42:18: found a further stage "3"; expected nothing more behind a range
    "ring / 1..2 / 3",
                   ^
x:43:20: found the stage "cut"; expected a range of stitches, e.g. "1..20"
    "ring / pass 1 / cut",
                     ^^^
x:44:13: found the range "1..3"; expected the pass as well: "border" has 2 passes; did you mean border / pass 1 / 1..3?
    "border / 1..3",
              ^^^^
x:45:18: found the pass 3; expected a pass from 1 to 2 of "border"
    "border / pass 3",
                   ^
x:46:25: found the stitch 99; expected at most 12: that many stitches pass 2 of "border" has
    "border / pass 2 / 1..99",
                          ^^
x:48:13: found the stitch 2 as last; expected the first stitch, 3, or a later one
    "bad / 3..2",
              ^
x:49:10: found the stage "x"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "bad / x",
           ^
x:50:11: found a stage "1..2"; expected nothing more behind "wash"
    "wash / 1..2",
            ^^^^
x:51:4: found nothing; expected the name of a part, "wash" or "cut out"
    "",
     ^
x:52:4: found nothing; expected the name of a part, "wash" or "cut out"
    "/",
     ^
x:53:10: found nothing; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring /",
           ^
x:54:11: found nothing; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / / 1..2",
            ^
x:55:3: found a whole number; expected a text in quotation marks
    5,
    ^
x:56:11: found the stage "1..99999999999"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / 1..99999999999",
            ^^^^^^^^^^^^^^
x:57:3: found the stitch 14; expected at most 13: that many stitches "ring" has
    "ring \u002f 1..14",
    ^^^^^^^^^^^^^^^^^^^
x:58:4: found the part "größe"; expected the name of a part, "wash" or "cut out"
    "größe / 1..14",
     ^^^^^
x:59:11: found the stage "é..14"; expected a pass, e.g. "pass 1", or a range of stitches, e.g. "1..20"
    "ring / é..14",
            ^^^^^
x:61:9: found a control character; expected letters, signs and line breaks
  notes = "a\nb\tc\u0007"
          ^^^^^^^^^^^^^^^
x:62:8: found a text; expected a date as year-month-day without quotation marks, e.g. 2027-01-12; did you mean 2027-01-12?
  date = "2027-01-12"
         ^^^^^^^^^^^^
x:63:11: found the number 0; expected a whole number from 1 to 1440
  minutes = 0
            ^
x:64:10: found a whole number; expected true or false
  locked = 1
           ^
x:65:1: found the key "foo"; expected a key of [[lesson]]: title, work, notes, date, minutes, locked
  foo = 1
  ^^^
)");
}

TEST_CASE("a part with a fault of its own does not draw further faults after it") {
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = "E 13"
[[part]]
nam = "b"
kind = "cable"
thread = "heavy"
start = [0, 20]
path = "E 12"
[[lesson]]
work = ["a / pass 9 / 1..9999", "b / 1..3"]
)") ==
        R"(x:13:11: found the number 13; expected an even number of threads: 12 or 14
  path = "E 13"
            ^^
x:14:1: found no "name" in [[part]]; expected name = "...", a name of its own
  [[part]]
  ^^^^^^^^
x:15:1: found the key "nam"; expected a key of [[part]]; did you mean name?
  nam = "b"
  ^^^
)");
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "cabel"
thread = "heavy"
[[lesson]]
work = ["a / 1..3"]
)") ==
        R"(x:10:8: found the kind "cabel"; expected "blocks", "cable", "satin", "star", "eyelet", "four-sided", "backstitch", "edge" or "cutwork"; did you mean cable?
  kind = "cabel"
         ^^^^^^^
)");
  CHECK(faults_with(R"([part]
[[lesson]]
work = ["a / 1..3"]
)") ==
        R"(x:8:1: found [part]; expected [[part]] in double brackets, each time
  [part]
  ^^^^^^
)");
}

TEST_CASE("a course without parts has none to be stitched") {
  CHECK(faults_of("part = []\nformat = 1\n[course]\ntitle = \"x\"\n[cloth]\ncount = 22\n[[lesson]]\nwork = [\"ring\"]\n") ==
        R"(x:8:10: found the part "ring"; expected the name of a part, "wash" or "cut out"
  work = ["ring"]
           ^^^^
)");
}
