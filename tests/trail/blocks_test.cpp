// Blocks one after another, against geometry worked out by hand (a block: front 5 x 4, back 4 x sqrt 17).
#include <cmath>
#include <map>
#include <set>

#include "passes.h"

using namespace passes;

namespace {

const double block = 20 + 4 * std::sqrt(17.0);

Round planned(const Pass& pass) {
  Round round = trail::plan_round(pass, {});
  std::multiset<cloth::Stitch> worked, wanted;
  for (const Worked& w : round.stitches) worked.insert(cloth::Stitch{w.up, w.down}.normal());
  for (const stitch::Run& run : pass.runs)
    for (const cloth::Stitch& s : run.stitches) wanted.insert(s.normal());
  CHECK(worked == wanted);
  for (std::size_t k = round.closed ? 0 : 1; k < round.stitches.size(); ++k)
    CHECK(round.stitches[k].up != round.stitches[(k + round.stitches.size() - 1) % round.stitches.size()].down);
  return round;
}

double thread(const Pass& pass) {
  const trail::Trail trail = endless(planned(pass));
  return trail.front_threads + trail.back_threads;
}

/// A closed staircase diamond of n blocks a side, apex blocks shared.
Pass diamond(int n) {
  const auto flight = [](const char* way, int blocks) { return std::string(way) + " " + std::to_string(blocks); };
  return blocks(flight("NE", n) + ", " + flight("SE", n - 1) + ", " + flight("SW", n - 1) + ", " + flight("NW", n - 2));
}

}  // namespace

TEST_CASE("one block takes 36.49 threads (geometry)") { CHECK(thread(blocks("E 1", "upright")) == doctest::Approx(36.49).epsilon(0.0002)); }

TEST_CASE("a joined row of 5 blocks takes 166.46 threads (geometry)") {
  CHECK(thread(blocks("E 5", "upright")) == doctest::Approx(166.46).epsilon(0.0001));
}

TEST_CASE("a closed staircase of n blocks a side: 481.91, 805.85, 1129.79 threads for n = 4, 6, 8 (geometry)") {
  for (const auto& [n, published] : {std::pair{4, 481.91}, {6, 805.85}, {8, 1129.79}}) {
    CHECK(thread(diamond(n)) == doctest::Approx(published).epsilon(0.00001));
    CHECK(thread(diamond(n)) == doctest::Approx((4 * n - 4) * block + 4 * (4 * n - 5)));
  }
}

TEST_CASE("every start of a ring takes the same thread") {
  const Round round = planned(diamond(4));
  CHECK(round.starts.size() == 12);
  for (const int start : round.starts) {
    const trail::Trail trail = endless(round, start);
    CHECK(trail.front_threads + trail.back_threads == doctest::Approx(481.91).epsilon(0.00001));
  }
}

TEST_CASE("shared corner holes of a closed staircase: 2n with two downs, 2n - 4 with two ups (geometry)") {
  for (const int n : {4, 6, 8, 10}) {
    std::map<cloth::Hole, std::map<int, char>> ends;  // by hole: each run that ends there, up or down
    for (const Worked& w : planned(diamond(n)).stitches) {
      ends[w.up][w.run] = 'u';
      ends[w.down][w.run] = 'd';
    }
    int downs = 0, ups = 0, mixed = 0;
    for (const auto& [hole, runs] : ends) {
      if (runs.size() < 2) continue;
      const auto down = std::count_if(runs.begin(), runs.end(), [](const auto& r) { return r.second == 'd'; });
      (down == 2 ? downs : down == 0 ? ups : mixed)++;
    }
    CHECK(downs == 2 * n);
    CHECK(ups == 2 * n - 4);
    CHECK(mixed == 0);
  }
}

TEST_CASE("along a flight shared corner holes are two downs and two ups in turn (geometry)") {
  const Round round = planned(diamond(6));
  std::map<cloth::Hole, int> downs;
  std::map<cloth::Hole, std::set<int>> runs;
  for (const Worked& w : round.stitches) {
    ++downs[w.down];
    runs[w.up].insert(w.run);
    runs[w.down].insert(w.run);
  }
  std::map<int, cloth::Hole> shared_with_next;
  for (const auto& [hole, of] : runs)
    if (of.size() == 2 && *of.rbegin() - *of.begin() == 1) shared_with_next[*of.begin()] = hole;
  for (int run = 0; run < 4; ++run) CHECK((downs[shared_with_next.at(run)] == 2) != (downs[shared_with_next.at(run + 1)] == 2));
}

TEST_CASE("every stitch of a ring goes down on the side that will be cut (Archer; common practice)") {
  for (const Pass& pass : {diamond(4), diamond(8), blocks("E 5, SE 1, S 4, SW 1, W 4, NW 1, N 4", "upright"),
                           blocks("E 3 apart, SE 1, S 2 apart", "upright")}) {
    for (const Worked& w : planned(pass).stitches) {
      const stitch::Run& run = pass.runs[static_cast<std::size_t>(w.run)];
      const cloth::Stitch& s = run.stitches[static_cast<std::size_t>(w.place)];
      if (run.down != stitch::DownSide::none) CHECK(w.down == (run.down == stitch::DownSide::a ? s.a : s.b));
    }
  }
}

TEST_CASE("the stitches of a block follow each other, all the same way") {
  const Round round = planned(blocks("NE 8, SE 7, SW 7, NW 6"));
  for (std::size_t k = 1; k < round.stitches.size(); ++k) {
    const Worked &before = round.stitches[k - 1], &w = round.stitches[k];
    CHECK_FALSE(w.backward);
    if (before.run != w.run) continue;
    CHECK(std::abs(w.place - before.place) == 1);
    CHECK(w.down - w.up == before.down - before.up);
  }
}

TEST_CASE("thread between two blocks that touch stays behind them and never shows at a free corner") {
  for (const Pass& pass : {diamond(4), diamond(10), blocks("NE 3, N 2, NW 4, SW 2"), blocks("SE 3, E 2, NE 4", "upright")}) {
    const Round round = planned(pass);
    for (std::size_t k = 1; k < round.stitches.size(); ++k) {
      const Worked &before = round.stitches[k - 1], &w = round.stitches[k];
      if (before.run == w.run) continue;
      const cloth::Hole back = w.up - before.down;
      CHECK((back.x == 0 || back.y == 0 || cloth::squared({0, 0}, back) == 17));  // along an edge, or on to the next stitch of a joined row
    }
  }
}

TEST_CASE("rather more thread behind two blocks than less that shows at their free corner") {
  // One block below left of the other, at one corner hole; left and lower ends wanted down. Past the free corner (0,0) to (4,-4) would do.
  stitch::Run across{{}, std::vector<int>(5, 0), stitch::Freedom::all_alike, stitch::DownSide::a};
  stitch::Run upright{{}, std::vector<int>(5, 0), stitch::Freedom::all_alike, stitch::DownSide::b};
  for (int i = 0; i < 5; ++i) {
    across.stitches.push_back({{0, i}, {4, i}});
    upright.stitches.push_back({{4 + i, -4}, {4 + i, 0}});
  }
  const Round round = planned({{across, upright}, stitch::Order::in_turn, false});
  const cloth::Hole down = round.stitches[4].down, up = round.stitches[5].up;
  CHECK(down == cloth::Hole{0, 4});  // straight on through the shared corner hole (4,0), covered by both
  CHECK(up == cloth::Hole{8, -4});
}

TEST_CASE("a ring may begin with every block") {
  const Round round = planned(diamond(6));
  REQUIRE(round.starts.size() == 20);
  for (const int start : round.starts) CHECK(start % 5 == 0);
  CHECK(planned(blocks("NE 4")).starts == std::vector{0});
}

TEST_CASE("a row worked alone: forwards and backwards in turn, as the holes allow no other (never up where just gone down)") {
  Pass pass = cable("E 20");
  pass.runs.pop_back();
  pass.order = stitch::Order::in_turn;
  CHECK(first_points(planned(pass), 8) == "(0,0) (2,0) (4,0) (2,0) (4,0) (6,0) (8,0) (6,0)");
  Pass ring = cable("E 20, S 20, W 20, N 20");
  ring.runs.pop_back();
  ring.order = stitch::Order::in_turn;
  const Round round = planned(ring);
  CHECK(steps_back(round.stitches) == 20);
  for (const int start : round.starts) CHECK_FALSE(round.stitches[static_cast<std::size_t>(start)].backward);
}
