// Close-ups of paths nobody drew, told into lessons at random: likeness of corners is held against a second, slow comparison.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "guide/close_up_checks.h"

using namespace close_up_checks;
using namespace worked_course;
using hand_made::Chance;

namespace {

/// Does the trail itself find the same corners?
bool turnings_agree(const Whole& whole, int trail) {
  const auto corners = naive::corners(whole, trail);
  const auto turnings = trail::turnings(whole.trails[trail].trail);
  return std::equal(corners.begin(), corners.end(), turnings.begin(), turnings.end(),
                    [](const auto& c, const auto& t) { return t.before < c.turn && c.turn <= t.after; });
}

}  // namespace

TEST_CASE("staircases nobody drew: every bend is in exactly one window, like ones together") {
  hand_made::fix_seed();
  CHECK(rc::check("bends", [] {
    Chance chance(*rc::gen::arbitrary<unsigned>());
    std::string path = "NE " + std::to_string(3 + chance.below(3));
    const int flights = 2 + chance.below(5);
    for (int i = 1; i < flights; ++i) path += (i % 2 ? ", SE " : ", NE ") + std::to_string(1 + chance.below(4));
    Whole whole = plan(blocks(path, chance.once_in(2) ? "across" : "upright"));
    whole.work(0, 1);
    const auto close_ups = whole.close_ups(1);
    RC_ASSERT(trouble(whole, close_ups, 1) == "");
    const std::vector<naive::Corner> bends = naive::bends(whole, 0);
    std::map<cloth::Hole, int> window;
    for (std::size_t i = 0; i < close_ups.size(); ++i)
      if (of_corner(close_ups[i]) && close_ups[i].turn_eighths != 0)
        for (const cloth::Hole h : close_ups[i].stands_for) RC_ASSERT(window.emplace(h, static_cast<int>(i)).second);
    RC_ASSERT(window.size() == bends.size());
    for (const auto& a : bends)
      if (!window.contains(a.hole)) RC_FAIL(path + " has a bend that no window stands for");
    for (const auto& a : bends)
      for (const auto& b : bends) RC_ASSERT((window.at(a.hole) == window.at(b.hole)) == naive::alike(a, b));
  }));
}

TEST_CASE("rows along paths nobody drew, told into lessons at random") {
  hand_made::fix_seed();
  CHECK(rc::check("every corner is in exactly one window, like ones together", [] {
    Chance chance(*rc::gen::arbitrary<unsigned>());
    const std::string path = chance.once_in(2) ? outline_path(chance) : octagon_path(chance);
    Whole whole = plan(cable(path, 2 + chance.below(2)), chance.below(40));
    const int lessons = 3;
    for (std::size_t t = 0; t < whole.trails.size(); ++t) {
      const int n = whole.size(static_cast<int>(t));
      std::vector<int> cuts{0, chance.below(n), chance.below(n), n};
      std::sort(cuts.begin(), cuts.end());
      for (int i = 0; i < 3; ++i)
        if (cuts[i] < cuts[i + 1]) whole.work(static_cast<int>(t), 1 + std::min(2, i + static_cast<int>(t)), cuts[i], cuts[i + 1] - 1);
    }
    for (std::size_t t = 0; t < whole.trails.size(); ++t) RC_ASSERT(turnings_agree(whole, static_cast<int>(t)));
    const auto close_ups = whole.close_ups(lessons);
    for (int lesson = 1; lesson <= lessons; ++lesson) {
      const std::string wrong = check(whole, close_ups, lesson);
      if (!wrong.empty()) RC_FAIL(path + ": " + wrong);
    }
  }));
}
