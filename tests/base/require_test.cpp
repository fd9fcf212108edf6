// Our own mistakes stop the program, in every build, and say what was promised.
#include "base/require.h"

#include <doctest/doctest.h>

#include "base/dies.h"
#include "base/result.h"

TEST_CASE("a promise that does not hold stops the program with its text") {
  CHECK(last_words([] { base::require(false, "rows stay level"); }) == "tellekant: a mistake of the program itself: rows stay level\n");
}

TEST_CASE("one that holds does nothing") { CHECK(last_words([] { base::require(true, "rows stay level"); }) == "lives"); }

TEST_CASE("what cannot be done is a value, not an exception") {
  const auto half = [](int n) -> base::Result<int> {
    if (n % 2) return base::trouble(base::TroubleKind::input, "an odd number");
    return n / 2;
  };
  CHECK(half(8) == 4);
  REQUIRE_FALSE(half(7));
  CHECK(half(7).error().kind == base::TroubleKind::input);
  CHECK(half(7).error().what == "an odd number");
}
