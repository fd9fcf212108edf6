// The right word nearest to a mistyped one.
#include "base/nearest.h"

#include <doctest/doctest.h>

using base::nearest_word;

namespace {

const std::vector<std::string> kinds{"blocks", "cable", "edge", "satin", "star", "eyelet", "four-sided", "backstitch", "cutwork"};

}  // namespace

TEST_CASE("a slip of the fingers finds its word") {
  CHECK(nearest_word("blcoks", kinds) == "blocks");      // swapped
  CHECK(nearest_word("bloks", kinds) == "blocks");       // left out
  CHECK(nearest_word("cabble", kinds) == "cable");       // too many
  CHECK(nearest_word("sattin", kinds) == "satin");
  CHECK(nearest_word("satan", kinds) == "satin");        // another letter
  CHECK(nearest_word("Eyelets", kinds) == "eyelet");     // a plural, a capital
  CHECK(nearest_word("FOURSIDED", kinds) == "four-sided");
  CHECK(nearest_word("egde", kinds) == "edge");
}

TEST_CASE("what is too far finds nothing") {
  CHECK(nearest_word("", kinds) == "");
  CHECK(nearest_word("fish", kinds) == "");
  CHECK(nearest_word("needle", kinds) == "");
  CHECK(nearest_word("edge", {}) == "");
  CHECK(nearest_word("y", {"x"}) == "");  // one letter that is another one is no likeness
  CHECK(nearest_word(std::string(61, 'a'), {std::string(60, 'a')}) == "");
}

TEST_CASE("a third of the letters may differ, not more") {
  CHECK(nearest_word("abcdefxyz", {"abcdefghi"}) == "abcdefghi");
  CHECK(nearest_word("abcdewxyz", {"abcdefghi"}) == "");
  CHECK(nearest_word("ax", {"ab"}) == "ab");  // at least one
}

TEST_CASE("the fewest letters to change, the first of equals") {
  CHECK(nearest_word("bar", {"bat", "car", "bar"}) == "bar");
  CHECK(nearest_word("bad", {"bat", "bar"}) == "bat");
  CHECK(nearest_word("ring-2", {"ring-1", "ring-3"}) == "ring-1");
}

TEST_CASE("a letter is a letter in any script") {
  CHECK(nearest_word("bar", {"bår"}) == "bår");
  CHECK(nearest_word("løke", {"løkke"}) == "løkke");
  CHECK(nearest_word("øb", {"åb"}) == "åb");
  CHECK(nearest_word("\xC3\x28\x80", {"abc"}) == "");  // no UTF-8: no harm
}
