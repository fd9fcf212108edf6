// The back thread of a round against the least that any order of the same front could have.
#include <cmath>

#include "matching.h"
#include "passes.h"

using namespace passes;

namespace {

matching::Least least_back(const Pass& pass) {
  std::vector<matching::End> ends;
  for (const stitch::Run& run : pass.runs)
    for (const cloth::Stitch& s : run.stitches)
      for (const cloth::Hole hole : {s.a, s.b}) ends.push_back({hole.x, hole.y});
  return matching::least_back(ends, pass.closed ? matching::Back::closed : matching::Back::open, 12);
}

/// Back thread over the bound.
double over_bound(const char* name, const Pass& pass) {
  const matching::Least least = least_back(pass);
  CHECK(least.proven);
  const double back = back_round(trail::plan_round(pass, {}));
  MESSAGE(std::string(name) << ": back " << back << ", least " << least.threads << ", ratio " << back / least.threads);
  CHECK(back >= least.threads - 1e-3);
  return back / least.threads;
}

Pass alone(Pass pass, std::size_t row) {
  pass.runs = {pass.runs[row]};
  pass.order = stitch::Order::in_turn;
  return pass;
}

}  // namespace

TEST_CASE("the bound itself: two stitches side by side, worked out by hand") {
  // (0,0)-(4,0) and (0,1)-(4,1): open, the back is one step of 1; as a circle two.
  const std::vector<matching::End> ends{{0, 0}, {4, 0}, {0, 1}, {4, 1}};
  CHECK(matching::least_back(ends, matching::Back::open, 6).threads == doctest::Approx(1));
  CHECK(matching::least_back(ends, matching::Back::closed, 6).threads == doctest::Approx(2));
  // A chain of three: the two ends in one hole may not be joined, so each goes on by a stitch.
  const std::vector<matching::End> chain{{0, 0}, {2, 0}, {2, 0}, {4, 0}, {4, 0}, {6, 0}};
  CHECK(matching::least_back(chain, matching::Back::open, 6).threads == doctest::Approx(4));
}

TEST_CASE("a row worked alone, one connected part with no other law: the least possible") {
  CHECK(over_bound("row", alone(cable("E 60"), 0)) == doctest::Approx(1));
  CHECK(over_bound("slanted row", alone(cable("SE 60"), 0)) == doctest::Approx(1));
  CHECK(over_bound("row with corners", alone(cable("E 20, SE 20, S 20"), 0)) == doctest::Approx(1).epsilon(0.02));
  CHECK(over_bound("ring of one row", alone(cable("E 20, S 20, W 20, N 20"), 0)) == doctest::Approx(1));
}

TEST_CASE("two rows turn about and blocks: other laws bind, the bound stays below") {
  CHECK(over_bound("cable on a slant", cable("SE 60")) == doctest::Approx(1));
  CHECK(over_bound("straight cable", cable("E 60")) >= 1);
  CHECK(over_bound("octagon", cable("E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34")) >= 1);
  CHECK(over_bound("staircase ring", blocks("NE 8, SE 7, SW 7, NW 6")) >= 1);
  CHECK(over_bound("row of blocks", blocks("E 5", "upright")) >= 1);
}
