// Paths as they are written (form: the project's own course file). Each faulty item is told at its own place.
#include "stitch/path.h"

#include <doctest/doctest.h>

#include <string>

using namespace stitch;

namespace {

/// "NE 8 | S 4 apart" : the items, written out.
std::string items(std::string_view text) {
  const ParsedPath parsed = parse_path("path", text, Apart::allowed);
  REQUIRE(parsed.faults.empty());
  std::string all;
  for (const PathItem& item : parsed.items) {
    if (!all.empty()) all += " | ";
    all += std::string(cloth::name(item.way)) + " " + std::to_string(item.number) + (item.apart ? " apart" : "");
  }
  return all;
}

/// The text with every fault's place marked below it by carets, its words following: what a teacher sees, in short.
std::string marked(const std::string& text, Apart apart = Apart::allowed) {
  const ParsedPath parsed = parse_path("path", text, apart);
  CHECK((parsed.faults.empty() || parsed.items.empty()));
  std::string all;
  for (const KeyFault& fault : parsed.faults) {
    CHECK(fault.key == "path");
    CHECK(fault.offset + fault.length <= text.size());
    if (!all.empty()) all += "\n";
    all += std::to_string(fault.offset) + "+" + std::to_string(fault.length) + " " + fault.found;
    if (!fault.suggestion.empty()) all += " -> " + fault.suggestion;
  }
  return all;
}

std::string expected(const std::string& text) {
  const ParsedPath parsed = parse_path("path", text, Apart::allowed);
  REQUIRE(parsed.faults.size() == 1);
  return parsed.faults.front().expected;
}

}  // namespace

TEST_CASE("a path is directions and numbers parted by commas") {
  CHECK(items("NE 8, SE 7, SW 7, NW 6") == "NE 8 | SE 7 | SW 7 | NW 6");
  CHECK(items("N 1") == "N 1");
  CHECK(items("E 5 apart, S 4") == "E 5 apart | S 4");
  CHECK(items("E 200000") == "E 200000");
  CHECK(items("E 007") == "E 7");
}

TEST_CASE("blanks and line breaks stand where they like") {
  CHECK(items("  NE 8,SE 7 ,\n\tSW   7,\r\nNW 6\n") == "NE 8 | SE 7 | SW 7 | NW 6");
  CHECK(items("NE8,E5apart,2x(S1)") == "NE 8 | E 5 apart | S 1 | S 1");
}

TEST_CASE("groups are written out") {
  CHECK(items("3 x (S 4, E 4)") == "S 4 | E 4 | S 4 | E 4 | S 4 | E 4");
  CHECK(items("N 2, 2 x (S 4, 2 x (E 1, W 3)), N 2") == "N 2 | S 4 | E 1 | W 3 | E 1 | W 3 | S 4 | E 1 | W 3 | E 1 | W 3 | N 2");
  CHECK(items("2 x (E 5 apart, S 4)") == "E 5 apart | S 4 | E 5 apart | S 4");
}

TEST_CASE("groups may be nested eight deep, not nine") {
  const auto nested = [](int depth) {
    std::string text;
    for (int i = 0; i < depth; ++i) text += "1 x (";
    return text + "E 1" + std::string(static_cast<std::size_t>(depth), ')');
  };
  CHECK(items(nested(group_depth_limit)) == "E 1");
  CHECK(marked(nested(group_depth_limit + 1)) == "44+1 a group within groups, too deep");
  CHECK(marked(nested(100000)) == "44+1 a group within groups, too deep");
}

TEST_CASE("an item knows its place, also within a group") {
  const ParsedPath parsed = parse_path("path", "NE  18, 2 x (E 5   apart)", Apart::allowed);
  REQUIRE(parsed.items.size() == 3);
  CHECK(parsed.items[0].offset == 0);
  CHECK(parsed.items[0].length == 6);
  CHECK(parsed.items[0].number_offset == 4);
  CHECK(parsed.items[0].number_length == 2);
  for (const std::size_t i : {1u, 2u}) {
    CHECK(parsed.items[i].offset == 13);
    CHECK(parsed.items[i].length == 11);
    CHECK(parsed.items[i].number_offset == 15);
  }
}

TEST_CASE("an empty path") {
  CHECK(marked("") == "0+0 an empty path");
  CHECK(marked(" \n ") == "3+0 an empty path");
}

TEST_CASE("an unknown direction, with what is near it") {
  CHECK(marked("NWE 8, SE 7") == "0+3 the word \"NWE\" -> NE");
  CHECK(marked("SE 7, ne 8") == "6+2 the word \"ne\" -> NE");
  CHECK(marked("n 8") == "0+1 the word \"n\" -> N");
  CHECK(marked("south 8, North 2, Northwest 3, left 2") ==
        "0+5 the word \"south\" -> S\n9+5 the word \"North\" -> N\n18+9 the word \"Northwest\" -> NW\n31+4 the word \"left\" -> W");
  CHECK(marked("Q 8") == "0+1 the word \"Q\"");
  CHECK(marked("N\u00D8 8") == "0+3 the word \"N\u00D8\" -> NE");
  CHECK(expected("Q 8") == "a direction (N, NE, E, SE, S, SW, W or NW)");
}

TEST_CASE("a missing number") {
  CHECK(marked("NE, SE 7") == "0+2 NE without a number");
  CHECK(marked("NE 8, SE") == "6+2 SE without a number");
  CHECK(marked("NE SE 7") == "0+2 NE without a number");
  CHECK(marked("2 x (NE)") == "5+2 NE without a number");
  CHECK(marked("NE eight, S 2") == "3+5 the word \"eight\"");
  CHECK(marked("NE apart") == "3+5 the word \"apart\"");
  CHECK(expected("NE, SE 7") == "a number after it, such as NE 8");
}

TEST_CASE("a number that is none, or none that can be") {
  CHECK(marked("NE 0") == "3+1 the number 0");
  CHECK(marked("NE -3") == "3+2 the number -3");
  CHECK(marked("NE +3") == "3+2 the number +3");
  CHECK(marked("NE 8.5") == "3+3 the number 8.5");
  CHECK(marked("NE 200001") == "3+6 the number 200001");
  CHECK(marked("NE 2000000000") == "3+10 the number 2000000000");
  CHECK(marked("NE 9223372036854775807, S 18446744073709551617") ==
        "3+19 the number 9223372036854775807\n26+20 the number 18446744073709551617");
  CHECK(marked("0 x (S 4)") == "0+1 the number 0");
  CHECK(marked("-2 x (S 4)") == "0+2 the number -2");
  CHECK(expected("NE 0") == "a whole number from 1 to 200000");
}

TEST_CASE("a missing comma") {
  CHECK(marked("NE 8 SE 7") == "5+2 the word \"SE\"");
  CHECK(marked("NE 8 2 x (S 4)") == "5+1 the number 2");
  CHECK(marked("2 x (S 4) E 3") == "10+1 the word \"E\"");
  CHECK(marked("NE 8 SE 0") == "5+2 the word \"SE\"\n8+1 the number 0");
  CHECK(marked("NE 8; SE 0, Q 1") == "4+1 the sign \";\" -> ,\n12+1 the word \"Q\"");
  CHECK(expected("NE 8 SE 7") == "a comma before it");
}

TEST_CASE("a comma too many") {
  CHECK(marked("NE 8, SE 7,") == "10+1 a comma with nothing after it");
  CHECK(marked("NE 8, SE 7, ") == "10+1 a comma with nothing after it");
  CHECK(marked("2 x (S 4,), E 3") == "8+1 a comma with nothing after it");
  CHECK(marked(",NE 8,, SE 7") == "0+1 a comma\n6+1 a comma");
}

TEST_CASE("brackets") {
  CHECK(marked("6 x (S 4, E 4") == "4+1 an opening bracket that is never closed");
  CHECK(marked("6 x (S 4, 2 x (E 4)") == "4+1 an opening bracket that is never closed");
  CHECK(marked("S 4), E 0") == "3+1 a closing bracket without an opening one\n8+1 the number 0");
  CHECK(marked("6 x ()") == "4+2 brackets with nothing in them");
  CHECK(marked("(S 4, E 0)") == "0+1 a bracket without a number before it\n8+1 the number 0");
  CHECK(marked("6 (S 4)") == "2+1 an opening bracket -> 6 x (");
  CHECK(marked("6 X (S 4)") == "2+1 the word \"X\" -> x");
  CHECK(marked("6 \u00D7 (S 0)") == "2+2 the word \"\u00D7\" -> x\n8+1 the number 0");
  CHECK(marked("6 * (S 4)") == "2+1 the sign \"*\" -> x");
  CHECK(marked("6 x S 4, E 0") == "4+1 the word \"S\"\n11+1 the number 0");
  CHECK(marked("6 x") == "3+0 the end of the path");
  CHECK(marked("6 x, S 4") == "3+1 a comma");
}

TEST_CASE("a number in the place of a direction") {
  CHECK(marked("8 NE, S 4") == "0+4 a number before its direction -> NE 8");
  CHECK(marked("8") == "0+1 the number 8");
}

TEST_CASE("apart") {
  CHECK(marked("E 5 Apart") == "4+5 the word \"Apart\" -> apart");
  CHECK(marked("E 5 aprat, S 4 part") == "4+5 the word \"aprat\" -> apart\n15+4 the word \"part\" -> apart");
  CHECK(marked("E 5 apart apart") == "10+5 the word \"apart\"");
  CHECK(marked("2 x (E 5) apart") == "10+5 the word \"apart\"");
  CHECK(marked("E 5, S 2 apart, W 4 apart", Apart::refused) == "9+5 the word \"apart\"\n20+5 the word \"apart\"");
}

TEST_CASE("every faulty item is told, in order") {
  CHECK(marked("NWE 8, S 4, E 0, 2 x (N, Q 4, W 3), S 4 E 5,") ==
        "0+3 the word \"NWE\" -> NE\n14+1 the number 0\n22+1 N without a number\n25+1 the word \"Q\"\n40+1 the word \"E\"\n43+1 a comma "
        "with nothing after it");
}
