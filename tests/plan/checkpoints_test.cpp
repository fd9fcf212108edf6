// Counts on the way, held against where the stitches really turn.
#include <doctest/doctest.h>

#include <algorithm>

#include "course_text.h"
#include "plan/plan.h"

namespace {

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

std::string lesson(const std::string& work) { return "[[lesson]]\nwork = [" + work + "]\n"; }

/// Which way a stitch lies: -, |, / or the other slant.
int lie(const trail::Worked& w) {
  const int dx = w.down.x - w.up.x, dy = w.down.y - w.up.y;
  return dy == 0 ? 0 : dx == 0 ? 1 : (dx > 0) == (dy > 0) ? 2 : 3;
}

/// In each row, so many stitches have turned just often enough, and the next one lies another way.
void turns_there(const plan::Plan& plan, const plan::Checkpoint& point) {
  const guide::PlacedTrail& trail = plan.trails[point.trail];
  const guide::Section& section = trail.sections[point.section];
  for (std::size_t row = 0; row < point.numbers.size(); ++row) {
    std::vector<int> lies;
    for (int k = section.first; k <= section.last; ++k)
      if (trail.trail.stitches[k].run == static_cast<int>(row)) lies.push_back(lie(trail.trail.stitches[k]));
    const auto n = static_cast<std::size_t>(point.numbers[row]);
    int turns = 0;
    for (std::size_t i = 1; i < n; ++i) turns += lies[i] != lies[i - 1];
    CHECK(turns == point.corner - 1);
    REQUIRE(n < lies.size());
    CHECK(lies[n] != lies[n - 1]);
  }
}

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string cable = part_text("border", "cable", "[8, -30]", "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\nrows = 3\nrows_lie = \"right\"");

}  // namespace

TEST_CASE("on the way: rows turn where it is said, seven or eight times round an octagon") {
  const plan::Plan plan = planned(course_of(ring + cable + lesson("\"ring\"") + lesson("\"border\"")));
  int seen = 0;
  for (const plan::Checkpoint& point : plan.checkpoints)
    if (plan.trails[point.trail].part == 1) turns_there(plan, point), ++seen;
  CHECK(seen == 16);  // two passes
}

TEST_CASE("on the way: a ring's corner blocks are its topmost, lowest and outermost") {
  const plan::Plan plan = planned(course_of(ring + lesson("\"ring\"")));
  const auto& stitches = plan.trails[0].trail.stitches;
  int x0 = 1 << 20, x1 = -x0, y0 = x0, y1 = -x0;
  for (const trail::Worked& w : stitches)
    for (const cloth::Hole h : {w.up, w.down}) x0 = std::min(x0, h.x), x1 = std::max(x1, h.x), y0 = std::min(y0, h.y), y1 = std::max(y1, h.y);
  REQUIRE(plan.checkpoints.size() >= 3);
  for (const plan::Checkpoint& point : plan.checkpoints) {
    REQUIRE(point.numbers.size() == 1);
    CHECK(point.stitch + 1 == 5 * point.numbers[0]);  // a block is five stitches (Archer)
    bool outermost = false;
    for (int k = point.stitch - 4; k <= point.stitch; ++k)
      for (const cloth::Hole h : {stitches[k].up, stitches[k].down})
        outermost = outermost || h.x == x0 || h.x == x1 || h.y == y0 || h.y == y1;
    CHECK(outermost);
  }
}

TEST_CASE("on the way: of a line in two lessons, each counts from its own beginning") {
  const plan::Plan plan = planned(course_of(cable + lesson("\"border / pass 1 / 1..50\"") + lesson("\"border / pass 1 / 51..148\", \"border / pass 2\"")));
  int second = 0;
  for (const plan::Checkpoint& point : plan.checkpoints) {
    turns_there(plan, point);
    second += point.lesson == 2;
  }
  CHECK(second >= 2);
}
