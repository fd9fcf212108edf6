// Paths that blocks cannot take (neighbours in a staircase turn, neighbours in a row do not), and limits.
#include <doctest/doctest.h>

#include <chrono>
#include <string>

#include "parts.h"

using namespace stitch;
using parts::blocks;
using parts::work;

namespace {

std::string faults(const Outcome& outcome) {
  std::string all;
  for (const KeyFault& fault : outcome.faults) {
    if (!all.empty()) all += "\n";
    all += fault.key + " " + std::to_string(fault.offset) + "+" + std::to_string(fault.length) + " " + fault.found + "; " + fault.expected;
  }
  return all;
}

}  // namespace

TEST_CASE("a straight step goes square to the stitches") {
  CHECK(faults(blocks({0, 0}, "E 5, S 3")) ==
        "path 5+3 \"S 3\", a straight step along the stitches; E or W or a slanted step, since the stitches run upright there");
  CHECK(faults(blocks({0, 0}, "NE 2, W 3, NE 1, S 1")) ==
        "path 6+3 \"W 3\", a straight step along the stitches; N or S or a slanted step, since the stitches run across there\n"
        "path 17+3 \"S 1\", a straight step along the stitches; E or W or a slanted step, since the stitches run upright there");
  CHECK(faults(blocks({0, 0}, "N 2")).find("along the stitches") != std::string::npos);
  CHECK(faults(blocks({0, 0}, "N 2", "across")).empty());
  CHECK(faults(blocks({0, 0}, "N 1, E 2")).empty());  // the first item counts the first block: no step is taken
}

TEST_CASE("a slanted step cannot stand apart") {
  CHECK(faults(blocks({0, 0}, "E 2, NE 3 apart")) ==
        "path 5+10 \"NE 3 apart\", a slanted step apart; a slanted step without \"apart\", or E or W apart");
}

TEST_CASE("a step in a group is told once, however often it is repeated") { CHECK(blocks({0, 0}, "1000 x (E 1, S 1)").faults.size() == 1); }

TEST_CASE("a ring whose last block lies across its first") {
  CHECK(faults(blocks({0, 0}, "W 2, SE 1, N 1")) ==
        "path 11+3 \"N 1\", which ends on the first block with its stitches square to it; a ring with an even number of slanted steps");
}

TEST_CASE("a faulty path is told as such") {
  CHECK(blocks({0, 0}, "NWE 8, SE 0").faults.size() == 2);
  CHECK(blocks({0, 0}, "").faults.size() == 1);
}

TEST_CASE("limits are told at the item that breaks them, at once") {
  const auto begun = std::chrono::steady_clock::now();
  CHECK(faults(blocks({0, 0}, "E 5, E 50000")) ==
        "path 5+7 \"E 50000\", which leads to the hole [200016, 0]; holes within 100000 threads of 0");
  CHECK(faults(blocks({0, 0}, "100000 x (NE 200000)")) ==
        "path 10+9 \"NE 200000\", which leads to the hole [799996, -799996]; holes within 100000 threads of 0");
  CHECK(faults(blocks({0, 0}, "1000 x (E 20000, W 20000)")) ==
        "path 8+7 \"E 20000\", by which there are 2000001 stitches; at most 2000000 stitches in one part");
  CHECK(faults(blocks({-100001, 0}, "E 5")) == "start 0+0 the hole [-100001, 0]; holes within 100000 threads of 0");
  CHECK(blocks({0, 0}, "E 2000000000").faults.size() == 1);
  CHECK(blocks({99996, 0}, "N 1").faults.empty());
  CHECK(blocks({99997, 0}, "N 1").faults.size() == 1);  // its far side would lie beyond
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(5));
}

TEST_CASE("a ring of as many blocks as there may be is laid in good time") {
  // A comb of teeth, each up and down in joined rows two blocks apart: 5 stitches a block at a slant, 4 in a row.
  const auto begun = std::chrono::steady_clock::now();
  std::string path = "NE 2";
  const Work made = work(blocks({-60000, 0}, "NE 10000, SE 9999, SW 9999, NW 9998", "across"));
  CHECK(made.closed);
  CHECK(made.passes[0].runs.size() == 39996);
  const Work large = work(blocks({-99000, 99000}, "49 x (N 2000, NE 1, SE 1, S 2000, SE 1, NE 1)", "across"));
  CHECK(large.stitches.size() > 700000);
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(10));
}
