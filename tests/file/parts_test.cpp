// Faults of [[part]], exactly as they are shown.
#include <doctest/doctest.h>

#include "read_faults.h"

TEST_CASE("keys that a part must have") {
  CHECK(faults_with(R"([[part]]
)") ==
        R"(x:8:1: found no "name" in [[part]]; expected name = "...", a name of its own
  [[part]]
  ^^^^^^^^
x:8:1: found no "kind" in [[part]]; expected kind = "blocks", "cable", "satin", "star", "eyelet", "four-sided", "backstitch", "edge" or "cutwork"
  [[part]]
  ^^^^^^^^
x:8:1: found no "thread" in [[part]]; expected thread = "...", the name of a table [thread.NAME]
  [[part]]
  ^^^^^^^^
)");
}

TEST_CASE("a mistyped kind key is told where it stands") {
  CHECK(faults_with(R"([[part]]
name = "a"
knid = "blocks"
thread = "heavy"
)")
            .find("x:10:1: found the key \"knid\"; expected a key of [[part]]; did you mean kind?\n  knid = \"blocks\"\n  ^^^^\n") == 0);
}

TEST_CASE("unknown kinds and threads") {
  CHECK(
      faults_with(R"([[part]]
name = "a"
kind = "cabel"
thread = "heavi"
foo = 1
)") ==
      R"(x:10:8: found the kind "cabel"; expected "blocks", "cable", "satin", "star", "eyelet", "four-sided", "backstitch", "edge" or "cutwork"; did you mean cable?
  kind = "cabel"
         ^^^^^^^
x:11:10: found the thread "heavi"; expected a thread of the file: "heavy"; did you mean heavy?
  thread = "heavi"
           ^^^^^^^
)");
}

TEST_CASE("keys of another kind, and keys that are none") {
  CHECK(
      faults_with(R"([[part]]
name = "a"
kind = "blocks"
thread = "heavy"
start = [0, 0]
path = "E 3"
turn = 4
mirror = "x"
about = [0.5, 0.5]
weaves = 3
strat = 1
rows = 3
)") ==
        R"(x:17:1: found the key "weaves"; expected a key of [[part]]: name, kind, thread, start, first, path, cut_side, turn, mirror, about, begin_at, count_from, notes
  weaves = 3
  ^^^^^^
x:18:1: found the key "strat"; expected a key of [[part]]; did you mean start?
  strat = 1
  ^^^^^
x:19:1: found the key "rows"; expected a key of [[part]]: name, kind, thread, start, first, path, cut_side, turn, mirror, about, begin_at, count_from, notes
  rows = 3
  ^^^^
)");
}

TEST_CASE("every value of a part") {
  CHECK(faults_with(R"([[part]]
name = "a/b"
kind = "cable"
thread = "heavy"
start = [0]
path = 5
rows = 4
rows_lie = "rihgt"
begin_at = [1, "x"]
count_from = 5
notes = 7
[[part]]
name = "wash"
kind = "cable"
thread = "heavy"
[[part]]
name = ""
kind = 5
thread = 5
[[part]]
name = "x "
kind = ""
thread = ""
)") ==
        R"(x:9:8: found a / in a name; expected a name without / (it parts the stages of a lesson's work)
  name = "a/b"
         ^^^^^
x:12:9: found a list of 1; expected a hole [x, y] in whole numbers
  start = [0]
          ^^^
x:13:8: found a whole number; expected a text in quotation marks
  path = 5
         ^
x:14:8: found the number 4; expected a whole number from 2 to 3
  rows = 4
         ^
x:15:12: found "rihgt"; expected "right" or "left"; did you mean right?
  rows_lie = "rihgt"
             ^^^^^^^
x:16:16: found a text; expected a whole number from -100000 to 100000
  begin_at = [1, "x"]
                 ^^^
x:17:14: found a whole number; expected a hole [x, y] in whole numbers
  count_from = 5
               ^
x:18:9: found a whole number; expected a text in quotation marks
  notes = 7
          ^
x:19:1: found no "start" in [[part]]; expected start = [x, y]
  [[part]]
  ^^^^^^^^
x:19:1: found no "path" in [[part]]; expected path = "...", e.g. "E 12, S 12"
  [[part]]
  ^^^^^^^^
x:20:8: found "wash"; expected another name: this one stands for a step of the work that needs no thread
  name = "wash"
         ^^^^^^
x:24:8: found an empty name; expected a name
  name = ""
         ^^
x:25:8: found a whole number; expected a text in quotation marks
  kind = 5
         ^
x:26:10: found a whole number; expected a text in quotation marks
  thread = 5
           ^
x:28:8: found a name with a blank before or behind it; expected a name without
  name = "x "
         ^^^^
x:29:8: found the kind ""; expected "blocks", "cable", "satin", "star", "eyelet", "four-sided", "backstitch", "edge" or "cutwork"
  kind = ""
         ^^
x:30:10: found the thread ""; expected a thread of the file: "heavy"
  thread = ""
           ^^
)");
}

TEST_CASE("a fault within a path stands at its own column where the text is plain") {
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = "E 12, SX 34, S 13"
[[part]]
name = "a"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = """E 12, SX 34"""
[[part]]
name = "b"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = "E 12,\tSX 34"
[[part]]
name = "c"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = 'E 12, SX 34'
[[part]]
name = "d"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = ""
[[part]]
name = "e"
kind = "cable"
thread = "heavy"
start = [0, 0]
path = "E 12, "
)") ==
        R"(x:13:15: found the word "SX"; expected a direction (N, NE, E, SE, S, SW, W or NW); did you mean SE?
  path = "E 12, SX 34, S 13"
                ^^
x:15:8: found the name "a" a second time; expected a name of its own; the other part stands in line 9
  name = "a"
         ^^^
x:19:8: found the word "SX"; expected a direction (N, NE, E, SE, S, SW, W or NW); did you mean SE?
  path = """E 12, SX 34"""
         ^^^^^^^^^^^^^^^^^
x:25:8: found the word "SX"; expected a direction (N, NE, E, SE, S, SW, W or NW); did you mean SE?
  path = "E 12,\tSX 34"
         ^^^^^^^^^^^^^^
x:31:15: found the word "SX"; expected a direction (N, NE, E, SE, S, SW, W or NW); did you mean SE?
  path = 'E 12, SX 34'
                ^^
x:37:8: found an empty path; expected a direction and a number (NE 8), or a group (6 x (S 4, E 4))
  path = ""
         ^^
x:43:13: found a comma with nothing after it; expected a direction and a number (NE 8), or a group (6 x (S 4, E 4))
  path = "E 12, "
              ^
)");
}

TEST_CASE("a part is worked out although its thread is not there") {
  CHECK(faults_with(R"([[part]]
name = "a"
kind = "cable"
thread = "fine"
start = [0, 0]
path = "E 13"
)") ==
        R"(x:11:10: found the thread "fine"; expected a thread of the file: "heavy"
  thread = "fine"
           ^^^^^^
x:13:11: found the number 13; expected an even number of threads: 12 or 14
  path = "E 13"
            ^^
)");
}

namespace {

std::string faults_of_repeat(const std::string& keys) {
  return faults_with("[[part]]\nname = \"a\"\nkind = \"blocks\"\nthread = \"heavy\"\nstart = [4, 4]\npath = \"E 1\"\n" + keys);
}

}  // namespace

TEST_CASE("a repeat: right keys") {
  CHECK(faults_of_repeat("turn = 4\nabout = [0, 0]\n") == "");
  CHECK(faults_of_repeat("turn = 4\nabout = [0.5, -1.5]\n") == "");
  CHECK(faults_of_repeat("turn = 2\nabout = [0.5, 0]\n") == "");
  CHECK(faults_of_repeat("mirror = \"xy\"\nabout = [0.5, 0]\n") == "");
}

TEST_CASE("a repeat: a middle about which quarter turns leave the holes") {
  CHECK(
      faults_of_repeat("turn = 4\nabout = [0.5, 0]\n") ==
      R"(x:15:9: found a middle about which quarter turns put the image off the holes; expected both numbers whole or both halves, e.g. [1, 0] or [0.5, 0.5]
  about = [0.5, 0]
          ^^^^^^^^
)");
  CHECK(faults_of_repeat("mirror = \"x\"\nabout = [0.25, 0]\n") ==
        R"(x:15:10: found the number 0.25; expected whole or half threads, e.g. 0 or 0.5
  about = [0.25, 0]
           ^^^^
)");
}

TEST_CASE("a repeat: values that are none") {
  CHECK(faults_of_repeat("turn = 3\nmirror = \"z\"\nabout = 4\n") ==
        R"(x:14:8: found the number 3; expected 4 (quarter turns) or 2 (a half turn)
  turn = 3
         ^
x:15:10: found "z"; expected "x", "y" or "xy"
  mirror = "z"
           ^^^
x:16:9: found a whole number; expected a middle [x, y] in whole or half threads
  about = 4
          ^
)");
  CHECK(faults_of_repeat("about = [0, 0]\n") ==
        R"(x:14:9: found a middle with nothing to repeat about it; expected turn = 4 or mirror = "x" beside it, or no about
  about = [0, 0]
          ^^^^^^
)");
  CHECK(faults_of_repeat("turn = 2\n").find("about = [x, y], the middle of the repeat") != std::string::npos);
  CHECK(faults_of_repeat("turn = 2\nabout = [-90000, 0]\n").find("x:15:9: found a middle that puts an image too far out") == 0);
}

TEST_CASE("cutwork: values that do not fit") {
  CHECK(faults_with(R"([[part]]
name = "heart"
kind = "cutwork"
thread = "heavy"
within = []
bar_threads = 13
bars = "knotted"
weaves = 1
fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
)") ==
        R"(x:12:10: found an empty list; expected a list of parts' names, e.g. ["ring"]
  within = []
           ^^
x:13:15: found the number 13; expected a whole number from 1 to 12
  bar_threads = 13
                ^^
x:14:8: found "knotted"; expected "woven" or "wrapped"
  bars = "knotted"
         ^^^^^^^^^
x:15:10: found the number 1; expected a whole number from 2 to 60
  weaves = 1
           ^
x:16:22: found "dove eye"; expected "none", "dove's eye", "square filet", "wheel" or "picots"; did you mean dove's eye?
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                       ^^^^^^^^^^
x:16:42: found "al"; expected "all", "every second", or a list of holes, one in each opening; did you mean all?
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                           ^^^^
x:16:50: found no "kind" in a rule of fillings; expected kind = "dove's eye"
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                                   ^^^^^^^^^^^^^^
x:16:60: found an empty list; expected a hole in each opening that is meant, e.g. [[10, 2]]
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                                             ^^
x:16:66: found a whole number; expected a rule, e.g. { kind = "wheel", where = "all" }
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                                                   ^
x:16:94: found the key "turn" without holes; expected where = [[x, y]], holes that come again
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                                                                               ^
x:16:97: found the key "about"; expected a key of a rule of fillings: kind, where, turn, mirror
  fillings = [{ kind = "dove eye", where = "al" }, { where = [] }, 3, { kind = "wheel", turn = 4, about = [0, 0] }]
                                                                                                  ^^^^^
)");
}

TEST_CASE("cutwork: the parts that hold it, and its stages") {
  CHECK(faults_with(R"([[part]]
name = "ring"
kind = "blocks"
thread = "heavy"
start = [0, 0]
path = "NE 4"
[[part]]
name = "heart"
kind = "cutwork"
thread = "heavy"
within = ["rign", "heart", "ring"]
[[lesson]]
work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
[[part]]
name = "leaf"
kind = "cutwork"
thread = "heavy"
within = ["ring"]
leave = 3
)") ==
        R"(x:18:11: found the part "rign"; expected the name of a part of blocks or satin stitch; did you mean ring?
  within = ["rign", "heart", "ring"]
            ^^^^^^
x:18:19: found the part "heart", which has no blocks; expected the name of a part of blocks or satin stitch
  within = ["rign", "heart", "ring"]
                    ^^^^^^^
x:20:18: found the stage "bras"; expected a stage: "cut", "bars" or "fillings"; did you mean bars?
  work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
                   ^^^^
x:20:40: found a further stage "1"; expected nothing more behind "cut"
  work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
                                         ^
x:20:60: found the number 0; expected bars counted from 1
  work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
                                                             ^
x:20:90: found the number 1 as last; expected the first number, 2, or a later one
  work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
                                                                                           ^
x:20:117: found a further stage "2"; expected nothing more behind a range
  work = ["heart / bras", "heart / cut / 1", "heart / bars / 0..3", "heart / fillings / 2..1", "heart / bars / 1..8 / 2"]
                                                                                                                      ^
x:26:9: found the number 3; expected 0 (cut every thread held) or 4 (cut four, leave four)
  leave = 3
          ^
)");
}
