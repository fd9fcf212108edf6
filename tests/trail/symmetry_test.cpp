// Turned and mirrored work gives turned and mirrored rounds, stitch by stitch.
#include "passes.h"

using namespace passes;

namespace {

Round apply(cloth::Turn turn, Round round) {
  for (Worked& w : round.stitches) w.up = cloth::apply(turn, w.up), w.down = cloth::apply(turn, w.down);
  return round;
}

void check_same(const Round& one, const Round& other) {
  CHECK(one.closed == other.closed);
  CHECK(one.starts == other.starts);
  REQUIRE(one.stitches.size() == other.stitches.size());
  CHECK(text(points(one.stitches)) == text(points(other.stitches)));
  for (std::size_t k = 0; k < one.stitches.size(); ++k) {
    const Worked &a = one.stitches[k], &b = other.stitches[k];
    CHECK(std::tuple(a.backward, a.run, a.place, a.leg, a.over) == std::tuple(b.backward, b.run, b.place, b.leg, b.over));
  }
}

}  // namespace

TEST_CASE("passes turned and mirrored: the same round, turned and mirrored") {
  std::vector<Pass> all;
  for (const auto* path :
       {"E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34", "E 20, S 20, W 20, N 20", "E 24, SE 8, NE 8, E 24, S 20, W 64, N 20",
        "E 12, SW 12, E 12, SW 12", "E 40, SW 20, NW 20", "E 2, SE 2, E 2, SE 2, E 2", "SE 8, NE 8, SE 8, NE 8"})
    for (const auto* lie : {"right", "left"}) all.push_back(cable(path, 2, lie));
  for (const auto* path : {"NE 8, SE 7, SW 7, NW 6", "NE 3, SE 2, NE 2, SE 2", "N 4, NE 1, E 3", "NE 1"}) all.push_back(blocks(path));
  for (const Pass& pass : all)
    for (const cloth::Turn turn : all_turns())
      check_same(trail::plan_round(apply(turn, pass), {}), apply(turn, trail::plan_round(pass, {})));
}

TEST_CASE("what must stay clear turns with the work") {
  const Pass pass = blocks("E 4 apart", "upright");
  trail::Rules rules;
  rules.keep_clear = {{4, 0, 8, 3}, {12, 1, 16, 4}};
  const Round round = trail::plan_round(pass, rules);
  for (const cloth::Turn turn : all_turns()) {
    trail::Rules turned = rules;
    for (cloth::Box& box : turned.keep_clear) {
      const cloth::Hole a = cloth::apply(turn, {box.x0, box.y0}), b = cloth::apply(turn, {box.x1, box.y1});
      box = {a.x, a.y, a.x, a.y};
      box.grow(b);
    }
    check_same(trail::plan_round(apply(turn, pass), turned), apply(turn, round));
  }
}
