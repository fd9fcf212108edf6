// Cloth of a course: extent, middle, margins. Geometry worked by hand.
#include <doctest/doctest.h>

#include "course/course.h"

namespace {

course::Course with(std::vector<cloth::Stitch> stitches) {
  course::Course course;
  course.parts.emplace_back();
  course.parts[0].work.stitches = std::move(stitches);
  return course;
}

}  // namespace

TEST_CASE("the middle of a half thread is the hole left of it and above, also below zero") {
  CHECK(course::middle(with({{{0, 0}, {10, 4}}})) == cloth::Hole{5, 2});
  CHECK(course::middle(with({{{0, 0}, {11, 5}}})) == cloth::Hole{5, 2});
  CHECK(course::middle(with({{{-11, -5}, {0, 0}}})) == cloth::Hole{-6, -3});
}

TEST_CASE("the cut cloth is the design and a margin on every side, rounded up to a thread") {
  course::Course course = with({{{0, 0}, {60, 60}}});
  course.cloth.count = {25.4};  // one thread a millimetre
  course.cloth.margin_mm = 60;
  CHECK(course::size_threads(course) == cloth::Hole{180, 180});
  CHECK(course::corner(course) == cloth::Hole{-60, -60});
}

TEST_CASE("needles: 24 with pearl 5, 26 with 8 and 12 (common practice, no source); the teacher's own first") {
  course::Thread thread;
  thread.pearl = 5;
  CHECK(course::needle_size(thread) == 24);
  thread.pearl = 8;
  thread.sold = course::SoldAs{8, course::Form::ball, 80, 10, 26};
  CHECK(course::needle_size(thread) == 26);
  thread.needle = 22;
  CHECK(course::needle_size(thread) == 22);
}
