// Thread on the back that may not go straight: under stitches worked before, or parted; and what must stay clear.
#include <set>

#include "passes.h"

using namespace passes;

namespace {

/// Blocks by their upper left holes, all upright, worked one after another.
Pass upright_blocks(const std::vector<cloth::Hole>& corners) {
  Pass pass;
  for (const cloth::Hole at : corners) {
    stitch::Run run{{}, std::vector<int>(5, 0), stitch::Freedom::all_alike, stitch::DownSide::none};
    for (int i = 0; i < 5; ++i) run.stitches.push_back({at + cloth::Hole{i, 0}, at + cloth::Hole{i, 4}});
    pass.runs.push_back(std::move(run));
  }
  return pass;
}

/// What a finished trail must keep on the back: each stretch within the limit, clear, and under stitches worked before.
void check_back(const trail::Trail& trail, const trail::Rules& rules) {
  std::set<int> ends(trail.ends.begin(), trail.ends.end());
  std::map<int, std::vector<cloth::Hole>> under;
  for (const trail::Under& u : trail.under) {
    CHECK_FALSE(ends.contains(u.stitch));
    CHECK_FALSE(u.via.empty());
    under[u.stitch] = u.via;
  }
  CHECK(ends.contains(0));
  std::set<cloth::Hole> used;
  double back = 0;
  for (int k = 0; k < static_cast<int>(trail.stitches.size()); ++k) {
    const Worked& w = trail.stitches[static_cast<std::size_t>(k)];
    if (!ends.contains(k)) {
      std::vector<cloth::Hole> way{trail.stitches[static_cast<std::size_t>(k - 1)].down};
      for (const cloth::Hole hole : under[k]) {
        CHECK(used.contains(hole));
        way.push_back(hole);
      }
      way.push_back(w.up);
      for (std::size_t i = 1; i < way.size(); ++i) {
        CHECK(way[i] != way[i - 1]);
        CHECK(cloth::distance(way[i - 1], way[i]) <= rules.back_limit + 1e-6);
        for (const cloth::Box& box : rules.keep_clear) CHECK_FALSE(cloth::crosses({way[i - 1], way[i]}, box));
        back += cloth::distance(way[i - 1], way[i]);
      }
    }
    used.insert({w.up, w.down});
  }
  CHECK(trail.back_threads == doctest::Approx(back));
}

trail::Trail made(const Pass& pass, const trail::Rules& rules) {
  trail::Trail trail = endless(trail::plan_round(pass, rules), -1, rules);
  check_back(trail, rules);
  return trail;
}

}  // namespace

TEST_CASE("travel within the limit is straight, on one thread") {
  const trail::Trail trail = made(upright_blocks({{0, 0}, {16, 0}}), {});
  CHECK(trail.ends == std::vector{0});
  CHECK(trail.under.empty());
}

TEST_CASE("travel beyond the limit, nothing to run under: a new thread") {
  const trail::Trail trail = made(upright_blocks({{0, 0}, {30, 0}, {40, 0}}), {});
  CHECK(trail.ends == std::vector{0, 5});
  CHECK(trail.under.empty());
}

TEST_CASE("travel beyond the limit runs under blocks worked before, the shortest way") {
  // Down a row of blocks 8 apart, then back to beside the first one: the way leads back along the row.
  const Pass pass = upright_blocks({{0, 0}, {8, 0}, {16, 0}, {24, 0}, {32, 0}, {0, 8}});
  const trail::Trail trail = made(pass, {});
  CHECK(trail.ends == std::vector{0});
  REQUIRE(trail.under.size() == 1);
  CHECK(trail.under[0].stitch == 25);
  CHECK(trail.under[0].via.size() >= 2);
  const double straight = cloth::distance(trail.stitches[24].down, trail.stitches[25].up);
  CHECK(straight > 12);
  CHECK(trail.back_threads < back_round({false, pass.order, trail.stitches, {}}) - straight + 1.2 * straight);
}

TEST_CASE("only stitches worked before are run under") {
  // The blocks between come later: the second block is reached by a new thread.
  const trail::Trail trail = made(upright_blocks({{0, 0}, {40, 0}, {30, 0}, {20, 0}, {10, 0}}), {});
  CHECK(trail.ends == std::vector{0, 5});
}

TEST_CASE("a way under stitches that is longer than two tails is not gone: a new thread") {
  // Out along a row of blocks and on to one that lies just beyond the limit from the first: the only way back leads along the row.
  const auto out_and_back = [](int blocks) {
    std::vector<cloth::Hole> corners;
    for (int i = 0; i < blocks; ++i) corners.push_back({8 * i, 0});
    corners.push_back({0, 8});
    return upright_blocks(corners);
  };
  CHECK(made(out_and_back(9), {}).ends.size() == 1);
  CHECK(made(out_and_back(15), {}).ends.size() == 2);
}

TEST_CASE("the limit itself is allowed, a thread more is not") {
  const Pass pass = upright_blocks({{0, 0}, {16, 0}});
  for (const auto& [limit, ends] : {std::pair{12.0, 1U}, {11.99, 2U}}) {
    trail::Rules rules;
    rules.back_limit = limit;
    CHECK(made(pass, rules).ends.size() == ends);
  }
}

TEST_CASE("thread goes round what must stay clear, where another way of working the blocks allows it") {
  const Pass pass = upright_blocks({{0, 0}, {8, 0}});
  trail::Rules rules;
  rules.keep_clear = {{4, 1, 8, 6}};  // free along the upper ends only
  const trail::Trail trail = made(pass, rules);
  CHECK(trail.ends == std::vector{0});
  CHECK(trail.stitches[4].down == cloth::Hole{4, 0});
  CHECK(trail.stitches[5].up == cloth::Hole{8, 0});
}

TEST_CASE("thread is parted where it cannot but cross what must stay clear") {
  const Pass pass = upright_blocks({{0, 0}, {8, 0}});
  trail::Rules rules;
  rules.keep_clear = {{5, -3, 7, 8}};
  CHECK(made(pass, rules).ends == std::vector{0, 5});
}

TEST_CASE("a way under stitches keeps clear as well") {
  const Pass pass = upright_blocks({{0, 0}, {8, 0}, {16, 0}, {24, 0}, {0, 8}});
  trail::Rules rules;
  rules.keep_clear = {{12, -1, 16, 3}};
  const trail::Trail trail = made(pass, rules);
  CHECK(trail.ends == std::vector{0});
  CHECK(trail.under.size() == 1);
  rules.keep_clear = {{12, -4, 16, 12}};  // nothing leads across any more: parted there, twice
  CHECK(made(pass, rules).ends == std::vector{0, 10, 20});
}

TEST_CASE("many openings, small and large, are each seen") {
  // A field of openings; thread from every block to the next crosses just one of them.
  std::vector<cloth::Hole> corners;
  trail::Rules rules;
  for (int i = 0; i < 60; ++i) {
    corners.push_back({8 * i - 240, 0});
    rules.keep_clear.push_back({8 * i - 235, -1, 8 * i - 233, 5});
    for (int j = 1; j < 6; ++j) rules.keep_clear.push_back({8 * i - 240, 20 * j, 8 * i - 236, 20 * j + 4});
  }
  rules.keep_clear.push_back({-1000, 1000, 1000, 3000});
  CHECK(made(upright_blocks(corners), rules).ends.size() == 60);
  rules.keep_clear = {{-100000, 1, 100000, 2}};  // all along the row, between the ends: every block lies over it, its thread crosses
  const trail::Trail trail = made(upright_blocks({{0, 0}, {8, 0}}), rules);
  CHECK(trail.ends.size() == 9);  // within a block too; from one to the next the thread stays on its side
}

TEST_CASE("a stitch that can only come up where the needle just went down starts a new thread") {
  Pass pass;  // two runs of one stitch in the same two holes
  for (int i = 0; i < 2; ++i) pass.runs.push_back({{{{0, 0}, {4, 0}}}, {0}, stitch::Freedom::each_way, stitch::DownSide::none});
  pass.runs[1].stitches[0] = {{0, 0}, {0, 0}};
  pass.runs[0].stitches[0] = {{0, 0}, {0, 0}};
  CHECK(made(pass, {}).ends == std::vector{0, 1});
}

TEST_CASE("a length changed where thread would have run under stitches needs no way there") {
  trail::Rules rules;
  rules.back_limit = 4.05;  // less than from stitch to stitch of a block: sqrt 17
  const Round round = trail::plan_round(blocks("NE 6, SE 5, SW 5, NW 4"), rules);
  for (const double usable : {25.0, 60.0, 110.0}) {
    const trail::Trail trail = trail::make_trail(round, 0, rules, {usable, 0});
    CHECK(trail.ends.size() > 1);
    check_back(trail, rules);
  }
}

TEST_CASE("a limit below every stitch's own back thread still ends") {
  trail::Rules rules;
  rules.back_limit = 1;
  const Pass pass = cable("E 40, S 40, W 40, N 40");
  const trail::Trail trail = made(pass, rules);
  CHECK(trail.ends.size() == trail.stitches.size());
}
