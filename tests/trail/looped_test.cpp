// Buttonhole stitches: the laws as the header says them for looped stitches, and the thread's length by geometry.
#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "passes.h"

namespace {

using cloth::Hole;

stitch::Pass edge(const std::string& path, const std::string& out = "left", int over = 4) {
  return passes::pass_of(passes::build("edge", {{"start", Hole{0, 0}}, {"path", path}, {"out", out}, {"over", over}}));
}

const trail::Rules rules{12, {}};

/// Thread of a round about a square of `side` threads, begun and ended beside each other: every stitch in front and behind, and the ridge
/// but for the one thread between the last stitch and the first.
double square_thread(int side) {
  const double fan = 2 * std::sqrt(20.0) + std::sqrt(18.0), stitches = 4 * (4.0 * (side + 1) + fan);
  const double ridge = 4.0 * side + 4 * (4 + 2 * std::numbers::sqrt2);
  return 2 * stitches - 4 + ridge - 1;  // the way back behind the last stitch belongs to the tail
}

/// What a trail of looped stitches breaks, in words.
std::string broken(const stitch::Pass& pass, const trail::Round& round, const trail::Trail& trail) {
  const auto& listed = pass.runs.at(0).stitches;
  if (trail.stitches.size() != listed.size()) return "not each stitch once";
  const int start = trail.stitches[0].place, n = static_cast<int>(listed.size());
  if (!pass.closed && start != 0) return "a line not begun at its first stitch";
  for (int k = 0; k < n; ++k) {
    const trail::Worked& w = trail.stitches[static_cast<std::size_t>(k)];
    if (w.place != (start + k) % n || cloth::Stitch{w.up, w.down} != listed[static_cast<std::size_t>(w.place)]) return "not as listed";
    if (w.backward) return "a loop worked backwards";
    if (w.up == w.down) return "up in the hole just gone down in";
  }
  std::size_t u = 0;
  for (int k = 1; k < n; ++k) {
    if (std::binary_search(trail.ends.begin(), trail.ends.end(), k)) continue;
    if (u == trail.under.size() || trail.under[u].stitch != k) return "no loop before a stitch";
    if (trail.under[u++].via != std::vector{trail.stitches[static_cast<std::size_t>(k - 1)].up})
      return "the loop is not in the stitch's own ridge hole";
  }
  if (u != trail.under.size()) return "a loop too many";
  for (const int s : round.starts)
    if (round.stitches[static_cast<std::size_t>(s)].over) return "begun at a corner";
  return "";
}

TEST_CASE("a square: each stitch once as listed, begun on a side, and its thread") {
  const stitch::Pass pass = edge("E 40, S 40, W 40, N 40");
  const trail::Round round = trail::plan_round(pass, rules);
  CHECK(round.starts.size() == 4 * (41 - 6));  // three stitches clear of the corner stitches on either side
  for (const int start : round.starts) {
    const trail::Trail trail = trail::make_trail(round, start, rules, {100000, 0});
    CHECK(broken(pass, round, trail) == "");
    CHECK(trail.ends == std::vector{0});
    CHECK(trail.front_threads + trail.back_threads == doctest::Approx(square_thread(40)));
    CHECK(trail::thread_of(trail, 0, 175) == doctest::Approx(square_thread(40)));
  }
}

TEST_CASE("threads change on straight stretches, clear of corners") {
  const stitch::Pass pass = edge("E 40, S 40, W 40, N 40");
  const trail::Round round = trail::plan_round(pass, rules);
  const trail::Trail trail = trail::make_trail(round, round.starts[0], rules, {200, 20});
  CHECK(broken(pass, round, trail) == "");
  CHECK(trail.ends.size() > 6);
  for (const int k : trail.ends)
    for (int i = std::max(0, k - 2); i <= k + 1; ++i) CHECK_FALSE(trail.stitches[static_cast<std::size_t>(i)].over);
}

TEST_CASE("a limit of back travel shorter than a stitch does not part the thread") {
  const stitch::Pass pass = edge("E 30", "right", 8);
  const trail::Round round = trail::plan_round(pass, {5, {}});
  CHECK(trail::make_trail(round, 0, {5, {}}, {100000, 0}).ends == std::vector{0});
}

TEST_CASE("random open and closed edges keep the laws") {
  std::mt19937 random(40);
  const auto number = [&](int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); };
  for (int i = 0; i < 200; ++i) {
    const int over = number(3, 8), across = number(2 * over + 1, 60), down = number(2 * over + 1, 60), step = number(2 * over + 1, 20);
    const auto leg = [](const char* way, int n) { return way + (" " + std::to_string(n)); };
    std::string path = leg("E", across) + ", " + leg("S", step) + ", " + leg("E", step) + ", " + leg("S", down);
    const bool closed = number(0, 1) == 1;
    if (closed) path += ", " + leg("W", across + step) + ", " + leg("N", down + step);
    const stitch::Pass pass = edge(path, "left", over);
    CHECK(pass.closed == closed);
    const trail::Round round = trail::plan_round(pass, rules);
    const int start = round.starts[static_cast<std::size_t>(number(0, static_cast<int>(round.starts.size()) - 1))];
    CHECK(broken(pass, round, trail::make_trail(round, start, rules, {static_cast<double>(number(60, 900)), 10})) == "");
  }
}

}  // namespace
