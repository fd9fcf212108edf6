// Corners of a trail in needle order.
#include "passes.h"

using namespace passes;

namespace {

std::vector<trail::Turning> turnings_of(const char* path, const char* lie = "right") {
  return trail::turnings(endless(trail::plan_round(cable(path, 2, lie), {})));
}

}  // namespace

TEST_CASE("an octagon turns eight times; every other corner has a step back") {
  const trail::Trail trail = endless(trail::plan_round(cable("E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34"), {}));
  const auto turnings = trail::turnings(trail);
  REQUIRE(turnings.size() == 8);
  for (std::size_t i = 0; i < turnings.size(); ++i) {
    const auto& t = turnings[i];
    const auto at = [&](int k) { return trail.stitches[static_cast<std::size_t>(k)]; };
    CHECK(at(t.before).leg != at(t.after).leg);
    for (const int k : {t.before, t.after}) CHECK_FALSE((at(k).over || at(k).backward));
    const bool from_slant = i % 2 == 1;
    CHECK(t.steps_back.size() == (from_slant ? 1 : 0));
    for (int k = t.before + 1; k < t.after; ++k) CHECK((at(k).over || at(k).backward));
    for (const int k : t.steps_back) CHECK((t.before < k && k < t.after));
  }
}

TEST_CASE("a square: each corner has its own step back, between the stitches that it names") {
  const auto turnings = turnings_of("E 20, S 20, W 20, N 20");
  REQUIRE(turnings.size() == 4);
  for (const auto& t : turnings) {
    REQUIRE(t.steps_back.size() == 1);
    CHECK((t.before < t.steps_back[0] && t.steps_back[0] < t.after));
  }
}

TEST_CASE("every step back belongs to one corner, also where corners lie next to each other; one at a free end to none") {
  for (const auto* path : {"E 20, S 20, W 20, N 20", "E 8, SW 4, E 8", "E 4, S 4, E 4, S 4", "E 12, SW 12, E 12, SW 12", "E 10, S 2, E 10",
                           "E 40, SW 20, NW 20"}) {
    for (const auto* lie : {"right", "left"}) {
      auto outcome = build_cable(path, 2, lie);
      if (outcome.work.passes.empty()) continue;
      const trail::Trail trail = endless(trail::plan_round(outcome.work.passes[0], {}));
      std::vector<int> told, wanted;
      for (const auto& t : trail::turnings(trail)) {
        for (const int k : t.steps_back) CHECK((t.before <= k && k <= t.after + 1));
        told.insert(told.end(), t.steps_back.begin(), t.steps_back.end());
      }
      for (std::size_t k = 0; k < trail.stitches.size(); ++k)
        if (trail.stitches[k].backward && k + 1 < trail.stitches.size()) wanted.push_back(static_cast<int>(k));
      CHECK(told == wanted);
    }
  }
}

TEST_CASE("a single leg has no corner; a flight of blocks turns between two blocks") {
  CHECK(turnings_of("E 20").empty());
  const trail::Trail trail = endless(trail::plan_round(blocks("NE 4, SE 3"), {}));
  const auto turnings = trail::turnings(trail);
  REQUIRE(turnings.size() == 1);
  CHECK(turnings[0].before == 19);
  CHECK(turnings[0].after == 20);
}
