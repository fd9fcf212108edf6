// Exact decimals, held against whole numbers of the smallest coin.
#include "base/exact.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cstdint>
#include <random>

namespace {

base::Exact exact(std::string_view text) {
  const auto parsed = base::Exact::parse(text);
  REQUIRE(parsed);
  return *parsed;
}

}  // namespace

TEST_CASE("digits are kept as they are written; what is no price is nothing") {
  for (const char* text : {"0", "7", "4.50", "0.05", "0.00", "123456789.123456789"}) CHECK(exact(text).text() == text);
  CHECK(exact("007.10").text() == "7.10");
  for (const char* text : {"", ".", "4.", ".5", "-1", "+1", "4,50", "1e3", " 1", "1 "}) CHECK_FALSE(base::Exact::parse(text));
}

TEST_CASE("a tenth three times is three tenths, and the largest price may be taken as often as one likes") {
  CHECK(exact("0.1").times(3).text() == "0.3");
  CHECK(exact("4.50").times(0).text() == "0.00");
  CHECK(exact("999999999.999999999").times(4000000000U).text() == "3999999999999999996.000000000");
  CHECK(exact("0.1").plus(exact("0.20")).text() == "0.30");
  CHECK(base::Exact().plus(exact("12")).text() == "12");
}

TEST_CASE("random prices add up and multiply as whole cents do") {
  std::mt19937 random(20270112);
  const auto text = [](std::uint64_t cents) { return fmt::format("{}.{:02}", cents / 100, cents % 100); };
  for (int i = 0; i < 2000; ++i) {
    const std::uint64_t a = random() % 10000000, b = random() % 100000, n = random() % 1000;
    CHECK(exact(text(a)).plus(exact(text(b))).text() == text(a + b));
    CHECK(exact(text(a)).times(static_cast<unsigned>(n)).text() == text(a * n));
  }
}
