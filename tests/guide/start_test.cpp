// The start of a round: the cheapest of all count-ins, the teacher's own where it is a start.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "guide/random_cloth.h"

using namespace hand_made;
using guide::When;

namespace {

/// A round whose stitches come up at the holes.
trail::Round round_of(const std::vector<cloth::Hole>& holes) {
  trail::Round round;
  round.closed = true;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    round.stitches.push_back({holes[i], holes[(i + 1) % holes.size()], false, 0, 0, 0, false});
    round.starts.push_back(static_cast<int>(i));
  }
  return round;
}

/// Holes of a ring round a box, so many threads apart.
std::vector<cloth::Hole> round_about(cloth::Box box, int apart) {
  std::vector<cloth::Hole> holes;
  for (int x = box.x0; x < box.x1; x += apart) holes.push_back({x, box.y0});
  for (int y = box.y0; y < box.y1; y += apart) holes.push_back({box.x1, y});
  for (int x = box.x1; x > box.x0; x -= apart) holes.push_back({x, box.y1});
  for (int y = box.y1; y > box.y0; y -= apart) holes.push_back({box.x0, y});
  return holes;
}

/// Cheapest, then topmost, then leftmost, asked one by one.
cloth::Hole best_of(const trail::Round& round, const guide::OnCloth& on_cloth, When now) {
  std::vector<std::tuple<double, int, int>> all;
  for (const int s : round.starts) {
    const cloth::Hole up = round.stitches[s].up;
    all.emplace_back(on_cloth.find(up, now).count.cost_s, up.y, up.x);
  }
  const auto best = *std::min_element(all.begin(), all.end());
  return {std::get<2>(best), std::get<1>(best)};
}

}  // namespace

TEST_CASE("a round starts where its count-in costs least, of equals topmost, then leftmost") {
  fix_seed();
  CHECK(rc::check([](unsigned seed) {
    Chance chance(seed);
    const Cloth cloth = random_cloth(chance);
    const guide::OnCloth on_cloth = cloth.on_cloth();
    trail::Round round = round_of(round_about({-12, -11, 70, 66}, 2));
    std::rotate(round.stitches.begin(), round.stitches.begin() + chance.below(100), round.stitches.end());
    if (chance.once_in(2)) std::erase_if(round.starts, [&](int s) { return s % 3 != 0; });
    const When now{1 + chance.below(4), chance.below(10), 0};
    const guide::Start start = guide::choose_start(round, on_cloth, now, std::nullopt);
    RC_ASSERT(std::count(round.starts.begin(), round.starts.end(), start.stitch) == 1);
    RC_ASSERT(round.stitches[start.stitch].up == best_of(round, on_cloth, now));
    RC_ASSERT(!start.begin_at_missed);
  }));
}

TEST_CASE("on a cloth alike on all sides the topmost start is taken") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({20, 0}, Grain::upright, 0), block({40, 20}, Grain::across, 1), block({20, 40}, Grain::upright, 2),
                                 block({0, 20}, Grain::across, 3)},
                                true)),
             1, 0);
  const trail::Round round = round_of(round_about({-8, -8, 52, 52}, 2));
  const guide::Start start = guide::choose_start(round, cloth.on_cloth(), {2, 0, 0}, std::nullopt);
  CHECK(round.stitches[start.stitch].up == cloth::Hole{20, -8});
}

TEST_CASE("the teacher's own start is taken where it is one; else the nearest, and it is said") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false)), 1, 0);
  const trail::Round round = round_of(round_about({-8, -8, 12, 12}, 4));
  const guide::OnCloth on_cloth = cloth.on_cloth();
  guide::Start start = guide::choose_start(round, on_cloth, {2, 0, 0}, cloth::Hole{12, 4});
  CHECK(round.stitches[start.stitch].up == cloth::Hole{12, 4});
  CHECK_FALSE(start.begin_at_missed);
  CHECK_FALSE(start.nearest.has_value());
  start = guide::choose_start(round, on_cloth, {2, 0, 0}, cloth::Hole{15, 3});
  CHECK(start.begin_at_missed);
  CHECK(start.nearest == cloth::Hole{12, 4});
  CHECK(round.stitches[start.stitch].up == cloth::Hole{12, 4});
}

TEST_CASE("an open round begins with its first stitch") {
  Cloth cloth;
  cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false));
  trail::Round round = round_of(round_about({-8, -8, 12, 12}, 4));
  round.closed = false;
  round.starts = {0};
  CHECK(guide::choose_start(round, cloth.on_cloth(), {1, 0, 0}, std::nullopt).stitch == 0);
}

TEST_CASE("among thousands of starts one as cheap as the best is found") {
  Cloth cloth;
  std::vector<stitch::Feature> blocks;
  const std::vector<cloth::Hole> places = round_about({0, 0, 1200, 1200}, 8);
  for (std::size_t i = 0; i < places.size(); ++i) blocks.push_back(block(places[i], Grain::upright, static_cast<int>(i)));
  blocks.push_back(block({600, -20}, Grain::upright, static_cast<int>(places.size())));
  cloth.work(cloth.part(work_of(blocks, false)), 1, 0);
  const guide::OnCloth on_cloth = cloth.on_cloth();
  const trail::Round round = round_of(round_about({-30, -30, 1230, 1230}, 1));
  REQUIRE(round.starts.size() > 5000);
  const guide::Start start = guide::choose_start(round, on_cloth, {2, 0, 0}, std::nullopt);
  CHECK(round.stitches[start.stitch].up == best_of(round, on_cloth, {2, 0, 0}));
}
