// What counts cost, in seconds of care: threads at a glance and beyond, legs, threads under stitches; and the bounds by which they are
// sought.
#include "guide/care.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "guide/care_by_hand.h"
#include "guide/hidden.h"

using namespace hand_made;
using guide::When;

namespace {

bool same(double a, double b) { return std::abs(a - b) < 1e-5; }

}  // namespace

TEST_CASE("up to four threads are seen at a glance, each further one is counted (Trick and Pylyshyn 1994, default weights)") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({16, 0}, Grain::upright, 0)}, false)), 1, 0);
  cloth.course.cloth.middle = cloth::Hole{200, 200};
  const guide::OnCloth on_cloth = cloth.on_cloth();
  CHECK(same(on_cloth.cost({16, -4}, {2, 0, 0}), 4 * 0.07));
  CHECK(same(on_cloth.cost({16, -10}, {2, 0, 0}), 4 * 0.07 + 6 * 0.3));
}

TEST_CASE("threads between the stitches of a block are counted as hidden, those beside it are not") {
  Cloth cloth;
  cloth.work(cloth.part(work_of({block({0, 0}, Grain::upright, 0)}, false)), 1, 0);
  const ByHand by_hand(cloth, {2, 0, 0});
  CHECK(same(by_hand.of_legs({-2, 2}, {{cloth::Way::E, 8}}), 4 * 0.07 + 4 * 0.3 + 4 * 0.5));
  CHECK(same(by_hand.of_legs({-2, 0}, {{cloth::Way::E, 8}}), 4 * 0.07 + 4 * 0.3));
}

TEST_CASE("threads under stitches that overlap are counted once, and only what is stitched by then hides them") {
  fix_seed();
  CHECK(rc::check([](unsigned seed) {
    Chance chance(seed);
    guide::Hidden hidden;
    std::vector<std::pair<cloth::Stitch, When>> stitches;
    for (int i = 0; i < 30; ++i) {
      const cloth::Hole a{chance.below(60), 5 * chance.below(2)};
      const cloth::Stitch stitch{a, a + cloth::Hole{chance.once_in(4) ? 40 : chance.below(9) - 4, 0}};
      stitches.emplace_back(stitch, When{1 + chance.below(3), 0, 0});
      hidden.gather(stitch, stitches.back().second);
      if (chance.once_in(5)) hidden.settle();
    }
    hidden.settle();
    const When now{1 + chance.below(4), 0, 0};
    const int from = chance.below(110) - 5, to = chance.below(110) - 5;
    int expected = 0;
    for (int x = std::min(from, to); x < std::max(from, to); ++x)
      expected += std::any_of(stitches.begin(), stitches.end(), [&](const auto& s) {
        const auto [low, high] = std::minmax(s.first.a.x, s.first.b.x);
        return s.first.a.y == 5 && low <= x && x < high && s.second < now;
      });
    RC_ASSERT(hidden.threads({from, 5}, {to, 5}, now) == expected);
  }));
}

TEST_CASE("no count costs less than the bound for its threads together") {
  fix_seed();
  CHECK(rc::check([](unsigned seed) {
    Chance chance(seed);
    course::CountCost weights;
    weights.glance = chance.below(50) / 100.0;
    weights.each = chance.below(50) / 100.0;
    weights.second_leg = chance.below(200) / 100.0;
    weights.glance_to = chance.below(7);
    const guide::Costs costs(weights);
    for (int across = 0; across < 30; ++across)
      for (int down = 0; down < 30; ++down) RC_ASSERT(costs.least_together(across + down) <= costs.least(across, down));
    RC_ASSERT(costs.least_together(0) == 0);
    RC_ASSERT(costs.least_together(30) >= costs.least_together(29));
  }));
}

TEST_CASE("weights out of reason are held within it") {
  course::CountCost weights;
  weights.glance = -1;
  weights.each = std::numeric_limits<double>::quiet_NaN();
  weights.second_leg = std::numeric_limits<double>::infinity();
  weights.glance_to = -3;
  const guide::Costs costs(weights);
  CHECK(costs.counted(100) == 0);
  CHECK(guide::Costs::seconds(costs.least(1, 1)) == 1000);
}
