// Threads to millimetres. The inch is 25.4 mm exactly (international yard and pound agreement, 1959); ISO 7211-2 counts threads per cm.
#include "cloth/size.h"

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>

TEST_CASE("100 threads of the usual cloths, in millimetres") {
  const std::pair<double, double> sizes[] = {{22, 115.45}, {25, 101.60}, {28, 90.71}, {32, 79.38}};
  for (const auto& [count, millimetres] : sizes) CHECK(std::round(cloth::mm(100, {count}) * 100) / 100 == doctest::Approx(millimetres).epsilon(1e-12));
}

TEST_CASE("as many threads as the count are an inch") {
  for (const double count : {18.0, 22.0, 25.0, 36.0}) CHECK(cloth::mm(count, {count}) == doctest::Approx(25.4).epsilon(1e-14));
}

TEST_CASE("a count per centimetre measures centimetres") {
  for (const double threads : {7.0, 8.7, 10.0, 12.6}) CHECK(cloth::mm(threads, cloth::per_cm(threads)) == doctest::Approx(10).epsilon(1e-14));
  CHECK(cloth::per_cm(10).per_inch == doctest::Approx(25.4));
}

TEST_CASE("warp and weft counted apart: each way has its own millimetres, a slanted way both") {
  const cloth::Count count{25.4, 12.7};  // a thread a millimetre across, two down
  CHECK(cloth::mm(7, count) == doctest::Approx(7));
  CHECK(cloth::mm_down(7, count) == doctest::Approx(14));
  CHECK(cloth::mm_a_thread(count) == doctest::Approx(1.5));
  CHECK(cloth::mm(cloth::distance({0, 0}, {6, 4}, count.tall()), count) == doctest::Approx(10));  // 6, 8, 10
  CHECK(cloth::Count{22}.tall() == 1);
  CHECK(cloth::mm_down(22, {22}) == doctest::Approx(25.4));
}

TEST_CASE("the thread of one block, and of one with the step to the next, at 22 threads an inch") {
  // Geometry: front 5 x 4, back 4 x sqrt 17; the step is 4 threads more.
  const double block = 5 * 4 + 4 * std::sqrt(17.0);
  const auto tenths = [](double mm) { return std::lround(mm * 10); };
  CHECK(block == doctest::Approx(36.49).epsilon(1e-4));
  CHECK(tenths(cloth::mm(block, {22})) == 421);
  CHECK(tenths(cloth::mm(block + 4, {22})) == 468);
}
