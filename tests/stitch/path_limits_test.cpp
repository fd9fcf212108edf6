// Whatever numbers are written, a path is read at once and never written out beyond its limits.
#include <doctest/doctest.h>

#include <chrono>
#include <string>

#include "stitch/path.h"

using namespace stitch;

namespace {

/// Reads the path; nothing here may take as long as a second, by far.
ParsedPath quickly(const std::string& text) {
  const auto begun = std::chrono::steady_clock::now();
  ParsedPath parsed = parse_path("path", text, Apart::allowed);
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(5));
  return parsed;
}

std::string repeated(const std::string& text, std::size_t bytes) {
  std::string all;
  while (all.size() < bytes) all += text;
  return all;
}

constexpr std::size_t file_limit = 4'000'000;  // bytes of a course file

}  // namespace

TEST_CASE("a group of as many items as are allowed, and of one more") {
  CHECK(quickly("100000 x (E 1)").items.size() == 100000);
  CHECK(quickly("50000 x (E 1, S 1)").items.size() == 100000);
  const ParsedPath over = quickly("E 1, 50000 x (E 1, S 1)");
  REQUIRE(over.faults.size() == 1);
  CHECK(over.faults[0].offset == 5);
  CHECK(over.faults[0].length == 5);
  CHECK(over.faults[0].expected == "at most 100000 with all groups written out");
}

TEST_CASE("groups of groups that would never end") {
  CHECK(quickly("99999999 x (S 4)").faults.size() == 1);
  CHECK(quickly("18446744073709551617 x (S 4)").faults.size() == 1);
  std::string text = "E 1";
  for (int i = 0; i < group_depth_limit; ++i) text = "99999 x (" + text + ", S 1)";
  const ParsedPath parsed = quickly(text);
  REQUIRE(parsed.faults.size() == 1);
  CHECK(parsed.items.empty());
}

TEST_CASE("items after the limit are still looked at") {
  const ParsedPath parsed = quickly("100000 x (E 1), S 4, N 0, 100000 x (W 2, Q 1)");
  REQUIRE(parsed.faults.size() == 3);
  CHECK(parsed.faults[0].offset == 16);
  CHECK(parsed.faults[1].offset == 23);
  CHECK(parsed.faults[2].offset == 41);
}

TEST_CASE("files filled with one thing") {
  for (const std::string text : {"E 1,", "100000 x (E 1),", "100000 x (Q),", "1 x (", "(", ")", ",", "Q", "Q ", "9", "9 ", "E 1 ", "6 x ",
                                 ";", "E 1 apart ", "\u00D8 ", "\n", "NE"}) {
    CAPTURE(text);
    const ParsedPath parsed = quickly(repeated(text, file_limit));
    CHECK(!parsed.faults.empty());
    CHECK(parsed.faults.size() <= path_fault_limit);
    CHECK(parsed.items.empty());
    for (const KeyFault& fault : parsed.faults) CHECK(fault.found.size() < 100);
  }
}
