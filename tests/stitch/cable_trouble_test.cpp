// Cables that cannot be, and cables that are doubtful. Every stitch crosses two threads (common practice, no source).
#include <doctest/doctest.h>

#include <chrono>
#include <map>
#include <string>

#include "parts.h"

using namespace stitch;
using parts::cable;
using parts::work;

namespace {

using Numbers = std::map<std::string, int>;

/// A line for each fault: "path 2+2 the number 33; an even number of threads: 32 or 34".
std::string faults(const Outcome& outcome) {
  std::string all;
  for (const KeyFault& fault : outcome.faults) {
    if (!all.empty()) all += "\n";
    all += fault.key + " " + std::to_string(fault.offset) + "+" + std::to_string(fault.length) + " " + fault.found + "; " + fault.expected;
  }
  return all;
}

const Doubt& only_doubt(const Work& work) {
  REQUIRE(work.doubts.size() == 1);
  return work.doubts[0];
}

}  // namespace

TEST_CASE("a leg that is no whole number of stitches names the nearest that are") {
  CHECK(faults(cable({0, 0}, "E 33, S 8")) == "path 2+2 the number 33; an even number of threads: 32 or 34");
  CHECK(faults(cable({0, 0}, "E 1, S 8")) == "path 2+1 the number 1; an even number of threads: 2");
  CHECK(faults(cable({0, 0}, "E 3, S 7, W 2")) ==
        "path 2+1 the number 3; an even number of threads: 2 or 4\n"
        "path 7+1 the number 7; an even number of threads: 6 or 8");
  CHECK(faults(cable({0, 0}, "E 4, E 3, S 2")) == "path 7+1 the number 3; an even number of threads in the whole leg: 2 or 4");
  CHECK(faults(cable({0, 0}, "3 x (E 3, S 4)")) == "path 7+1 the number 3; an even number of threads: 2 or 4");
  // closed, begun in the middle of a side: the side is the last item and the first together
  CHECK(faults(cable({0, 0}, "E 3, S 10, W 9, N 10, E 6")) ==
        "path 13+1 the number 9; an even number of threads: 8 or 10\n"
        "path 24+1 the number 6; an even number of threads in the whole leg: 5 or 7");
}

TEST_CASE("a turn straight back") {
  CHECK(faults(cable({0, 0}, "E 10, W 4")) == "path 6+3 \"W 4\", which turns straight back along the leg before it; any other direction");
  CHECK(cable({0, 0}, "SE 10, S 2, N 4, NW 2, SE 2").faults.size() == 2);
  CHECK(faults(cable({0, 0}, "E 10, S 4, W 4, N 4, W 6")) ==
        "path 21+3 \"W 6\", which turns straight back along the leg before it; any other direction");  // where the line closes
}

TEST_CASE("apart is for blocks") {
  CHECK(faults(cable({0, 0}, "E 10 apart")) == "path 5+5 the word \"apart\"; a comma: only steps of blocks stand apart");
}

TEST_CASE("a row that shrinks to nothing stops; the rows before it keep their stitches") {
  const Work square = work(cable({0, 0}, "E 4, S 4, W 4, N 4"));
  CHECK(only_doubt(square).rule == "row-shrinks");
  CHECK(square.doubts[0].stops);
  CHECK(square.doubts[0].numbers == Numbers{{"row", 2}, {"leg", 1}});
  CHECK(square.doubts[0].at == cloth::Hole{0, 0});
  CHECK(square.stitches.size() == 8);
  CHECK(square.passes.empty());
  CHECK(square.legs.size() == 4);
  const Work third = work(cable({0, 0}, "E 20, S 6, W 20, N 6", 3));
  CHECK(only_doubt(third).numbers == Numbers{{"row", 3}, {"leg", 2}});
  CHECK(third.doubts[0].at == cloth::Hole{20, 0});
  CHECK(third.stitches.size() == 26 + 18);
  CHECK(third.passes.empty());
  CHECK(work(cable({0, 0}, "E 20, S 6, W 20, N 6", 3, "left")).doubts.empty());
}

TEST_CASE("slants that cross between the holes are doubtful, at both places") {
  const Work made = work(cable({0, 0}, "SE 10, N 6, SW 10"));  // at [7, 7]
  CHECK(only_doubt(made).rule == "row-crosses-itself");
  CHECK(!made.doubts[0].stops);
  CHECK(made.doubts[0].at == cloth::Hole{6, 6});
  CHECK(made.doubts[0].also_at == cloth::Hole{8, 6});
  CHECK(made.doubts[0].numbers == Numbers{{"row", 1}, {"leg", 1}, {"other_row", 1}, {"other_leg", 3}});
  CHECK(made.passes.size() == 1);
}

TEST_CASE("a line that lies on itself is doubtful, and each of its stitches is there once") {
  const Work made = work(cable({0, 0}, "E 20, S 10, W 10, N 10, W 6"));
  CHECK(only_doubt(made).rule == "row-crosses-itself");
  CHECK(made.doubts[0].at == cloth::Hole{4, 0});
  CHECK(made.doubts[0].also_at == cloth::Hole{6, 0});
  CHECK(parts::normal_set(made.stitches).size() == made.stitches.size());
  CHECK(made.passes[0].runs[0].stitches.size() == 28);
}

TEST_CASE("a row that crosses another row of its part is doubtful") {
  // First rows share the hole [6, 6]; the second row's slant crosses the first at [5, 5].
  const Work made = work(cable({0, 0}, "SE 10, N 8, SW 10"));
  CHECK(only_doubt(made).rule == "row-crosses-itself");
  CHECK(made.doubts[0].numbers == Numbers{{"row", 1}, {"leg", 1}, {"other_row", 2}, {"other_leg", 3}});
}

TEST_CASE("a row that runs through a hole of its own again is doubtful, a free end that only reaches one is not") {
  const Work through = work(cable({0, 0}, "E 20, S 10, W 10, N 20"));
  CHECK(only_doubt(through).rule == "row-crosses-itself");
  CHECK(!through.doubts[0].stops);
  CHECK(through.doubts[0].at == cloth::Hole{10, 0});
  CHECK(through.doubts[0].also_at == cloth::Hole{10, 0});
  CHECK(through.doubts[0].numbers == Numbers{{"row", 1}, {"leg", 1}, {"other_row", 1}, {"other_leg", 4}});
  CHECK(work(cable({0, 0}, "E 20, S 10, W 10, N 10")).doubts.at(0).numbers.at("other_row") == 2);  // its second row runs on through
  CHECK(work(cable({0, 0}, "E 20, S 10, W 10, N 10", 2, "left")).doubts.empty());
  CHECK(work(cable({0, 0}, "E 20, S 20, W 20, N 20", 3)).doubts.empty());
}

TEST_CASE("limits are told at the item that breaks them, at once") {
  const auto begun = std::chrono::steady_clock::now();
  CHECK(faults(cable({0, 0}, "E 10, SE 100000")) ==
        "path 6+9 \"SE 100000\", which leads to the hole [100010, 100000]; holes within 100000 threads of 0");
  CHECK(faults(cable({0, 0}, "100000 x (E 200000)")) ==
        "path 10+8 \"E 200000\", which leads to the hole [200000, 0]; holes within 100000 threads of 0");
  CHECK(faults(cable({0, 0}, "500 x (E 50000, S 2, W 50000, N 2)")) ==
        "path 21+7 \"W 50000\", by which there are 2000078 stitches; at most 2000000 stitches in one part");
  CHECK(faults(cable({2000000000, 0}, "E 10")) == "start 0+0 the hole [2000000000, 0]; holes within 100000 threads of 0");
  // a further row reaches beyond what the first one keeps
  CHECK(faults(cable({0, 99990}, "S 10, E 10", 2, "right")).find("[-2, 100002]") != std::string::npos);
  CHECK(faults(cable({0, 99990}, "S 10, E 10", 2, "left")).empty());
  CHECK(faults(cable({99990, 0}, "E 10, S 10", 3, "left")) ==
        "path 0+4 \"E 10\", where a further row reaches the hole [100002, -2]; holes within 100000 threads of 0\n"
        "path 6+4 \"S 10\", where a further row reaches the hole [100002, -2]; holes within 100000 threads of 0");
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(5));
}

TEST_CASE("a very long cable is laid in good time") {
  const auto begun = std::chrono::steady_clock::now();
  const Work made = work(cable({-50000, -50000}, "E 100000, S 100000, W 100000, N 100000", 3));
  CHECK(made.stitches.size() == 200000 + 199992 + 199984);
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(10));
}
