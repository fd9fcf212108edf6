// Working lengths: as few as will do, changed in good places; thread added up.
#include <algorithm>
#include <cmath>

#include "passes.h"

using namespace passes;

namespace {

trail::Trail with_lengths(const Pass& pass, double usable, double first_less = 0) {
  const Round round = trail::plan_round(pass, {});
  return trail::make_trail(round, round.starts.empty() ? 0 : round.starts.front(), {}, {usable, first_less});
}

/// Each length's own path, front and back.
std::vector<double> paths(const trail::Trail& trail) {
  std::vector<double> all;
  for (std::size_t i = 0; i < trail.ends.size(); ++i) {
    const int last = i + 1 < trail.ends.size() ? trail.ends[i + 1] - 1 : static_cast<int>(trail.stitches.size()) - 1;
    all.push_back(trail::thread_of(trail, trail.ends[i], last));
  }
  return all;
}

double needed(const trail::Trail& trail, double usable) { return (trail.front_threads + trail.back_threads) / usable; }

void check_lengths(const trail::Trail& trail, double usable, double first_less = 0) {
  REQUIRE(!trail.ends.empty());
  CHECK(trail.ends[0] == 0);
  CHECK(std::is_sorted(trail.ends.begin(), trail.ends.end()));
  CHECK(std::adjacent_find(trail.ends.begin(), trail.ends.end()) == trail.ends.end());
  const auto all = paths(trail);
  for (std::size_t i = 0; i < all.size(); ++i) CHECK(all[i] <= usable - (i == 0 ? first_less : 0) + 1e-6);
  const double need = needed(trail, usable), count = static_cast<double>(trail.ends.size());
  CHECK(count <= 1.35 * need + 2);
  CHECK(count >= need - 0.5);
}

/// Stitches between the change before stitch k and the nearest corner, step back or stitch over.
int clear_of_corners(const trail::Trail& trail, int k) {
  int clear = 0;
  const int n = static_cast<int>(trail.stitches.size());
  const int leg = trail.stitches[static_cast<std::size_t>(k)].leg;
  const auto plain = [&](int i) {
    if (i < 0 || i >= n) return true;
    const Worked& w = trail.stitches[static_cast<std::size_t>(i)];
    return w.leg == leg && !w.over && !w.backward;
  };
  while (clear < n && plain(k - 1 - clear) && plain(k + clear)) ++clear;
  return clear;
}

}  // namespace

TEST_CASE("cables: never within two stitches of a corner, and as few lengths as will do") {
  for (const auto* path : {"E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34", "E 40, S 40, W 40, N 40", "SE 30, SW 30, NW 30, NE 30",
                           "E 24, SE 8, NE 8, E 24, S 20, W 64, N 20", "E 200, S 10, E 200"}) {
    for (const double usable : {60.0, 100.0, 163.0, 300.0, 512.5, 900.0}) {
      const trail::Trail trail = with_lengths(cable(path), usable);
      check_lengths(trail, usable);
      for (std::size_t i = 1; i < trail.ends.size(); ++i) {
        CHECK(clear_of_corners(trail, trail.ends[i]) > 2);
        if (usable >= 300) CHECK(trail.stitches[static_cast<std::size_t>(trail.ends[i])].run == 0);  // it begins a level pair
      }
    }
  }
}

TEST_CASE("a length is changed early by less than a quarter where a good place is that near") {
  const trail::Trail trail = with_lengths(cable("E 400, S 400, W 400, N 400"), 300);
  const auto all = paths(trail);
  for (std::size_t i = 0; i + 1 < all.size(); ++i) CHECK(all[i] > 0.75 * 300);
}

TEST_CASE("blocks: changed at the end of a block, not at a corner block") {
  for (double usable = 330; usable < 800; usable += 13) {  // a quarter holds two blocks' ends at least
    const trail::Trail trail = with_lengths(blocks("NE 28, SE 27, SW 27, NW 26"), usable);
    check_lengths(trail, usable);
    for (std::size_t i = 1; i < trail.ends.size(); ++i) {
      const auto k = static_cast<std::size_t>(trail.ends[i]);
      CHECK(trail.stitches[k].run != trail.stitches[k - 1].run);
      CHECK(trail.stitches[k].leg == trail.stitches[k - 1].leg);
      if (usable < 500 || k + 5 >= trail.stitches.size()) continue;
      CHECK(trail.stitches[k + 5].leg == trail.stitches[k].leg);  // three ends: the next block is no corner block
    }
  }
}

TEST_CASE("blocks in shorter lengths: rather within a block than at a corner") {
  for (const double usable : {60.0, 90.0, 130.0, 170.0, 210.0, 250.0}) {
    const trail::Trail trail = with_lengths(blocks("NE 8, SE 7, SW 7, NW 6"), usable);
    check_lengths(trail, usable);
    for (std::size_t i = 1; i < trail.ends.size(); ++i) {
      const int k = trail.ends[i];
      const auto at = [&](int j) { return trail.stitches[static_cast<std::size_t>(j)]; };
      CHECK((clear_of_corners(trail, k) > 2 || (at(k).run != at(k - 1).run && at(k).leg == at(k - 1).leg)));
    }
  }
}

TEST_CASE("blocks in lengths that hold less than one of them") {
  for (const double usable : {30.0, 36.0}) check_lengths(with_lengths(blocks("NE 8, SE 7, SW 7, NW 6"), usable), usable);
  // Three stitches of a block take 12 + 2 sqrt 17 = 20.2 threads: two a length.
  CHECK(with_lengths(blocks("NE 8, SE 7, SW 7, NW 6"), 20).ends.size() == 70);
}

TEST_CASE("corners so near each other that no place is clear of them: the lengths stay few") {
  for (const auto* path :
       {"E 2, S 2, E 2, S 2, E 2, S 2, E 2, S 2, E 2, S 2, E 2, S 2", "SE 2, NE 2, SE 2, NE 2, SE 2, NE 2, SE 2, NE 2, SE 2, NE 2"}) {
    auto outcome = build_cable(path, 2, "right");
    if (outcome.work.passes.empty()) continue;
    for (const double usable : {30.0, 60.0}) check_lengths(with_lengths(outcome.work.passes[0], usable), usable);
  }
}

TEST_CASE("a length that does not even hold a stitch: one stitch each") {
  const trail::Trail trail = with_lengths(blocks("NE 2"), 1);
  CHECK(trail.ends.size() == trail.stitches.size());
  CHECK(trail.back_threads == doctest::Approx(0));
}

TEST_CASE("the first length is shorter by what its tail takes more") {
  const Pass pass = cable("E 400");
  for (const double less : {0.0, 50.0, 200.0, 299.0, 400.0}) {
    const trail::Trail trail = with_lengths(pass, 300, less);
    const auto all = paths(trail);
    if (less < 290) CHECK(all[0] <= 300 - less);
    CHECK(all[0] > 0);
    CHECK(all[1] > 0.75 * 300);
  }
}

TEST_CASE("enough thread for all: one length") {
  const trail::Trail trail = with_lengths(blocks("NE 8, SE 7, SW 7, NW 6"), 1130);
  CHECK(trail.ends == std::vector{0});
}

TEST_CASE("front and back: what every stretch takes adds up to the whole, changes of thread count nothing") {
  for (const Pass& pass : {cable("E 40, SE 34, S 12, SW 34, W 40, NW 34, N 12, NE 34"), blocks("NE 8, SE 7, SW 7, NW 6")}) {
    const trail::Trail trail = with_lengths(pass, 150);
    const int n = static_cast<int>(trail.stitches.size());
    double front = 0, back = 0;
    for (int k = 0; k < n; ++k) {
      const Worked& w = trail.stitches[static_cast<std::size_t>(k)];
      front += std::hypot(w.up.x - w.down.x, w.up.y - w.down.y);
      if (std::find(trail.ends.begin(), trail.ends.end(), k) != trail.ends.end()) continue;
      const Worked& before = trail.stitches[static_cast<std::size_t>(k - 1)];
      back += std::hypot(w.up.x - before.down.x, w.up.y - before.down.y);
    }
    CHECK(trail.front_threads == doctest::Approx(front));
    CHECK(trail.back_threads == doctest::Approx(back));
    CHECK(trail::thread_of(trail, 0, n - 1) == doctest::Approx(front + back));
    CHECK(trail::thread_of(trail, 0, 40) + trail::thread_of(trail, 41, n - 1) == doctest::Approx(front + back));
    CHECK(trail::thread_of(trail, 5, 4) == doctest::Approx(0));
  }
}
