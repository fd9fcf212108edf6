// Bars and fillings: the published pincushion, diamonds by geometry, and laws that hold on every design.
#include "cutwork/needlework.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <numbers>
#include <set>

#include "designs.h"

using namespace designs;
using cutwork::Needlework;
using stitch::Filling;
using stitch::FillingRule;
using Where = stitch::FillingRule::Where;

namespace {

FillingRule rule(Filling kind, Where where = Where::all, std::vector<cloth::Hole> at = {}, int turn = 1) {
  FillingRule r;
  r.kind = kind;
  r.where = where;
  r.at = std::move(at);
  r.turn = turn;
  return r;
}

Needlework worked(const cutwork::Cutting& cutting, std::vector<FillingRule> rules, int weaves = 0, double thickness = 0.5) {
  cutwork::Wish wish;
  wish.rules = std::move(rules);
  wish.weaves = weaves;
  wish.thickness = thickness;
  return cutwork::plan_needlework(cutting, wish);
}

int count(const std::vector<Filling>& all, Filling kind) { return static_cast<int>(std::count(all.begin(), all.end(), kind)); }

/// Does a thread on its way behind the work pass over an opening?
bool crosses_opening(const cutwork::Cutting& cutting, const std::vector<cutwork::RouteItem>& items) {
  for (std::size_t i = 1; i < items.size(); ++i) {
    if (items[i].behind < 0) continue;
    cloth::Hole at = items[i - 1].to;
    std::vector<cloth::Hole> way = items[i].via;
    way.push_back(items[i].from);
    for (const cloth::Hole next : way) {
      for (const auto& opening : cutting.openings)
        if (cloth::crosses({at, next}, opening.box)) return true;
      at = next;
    }
  }
  return false;
}

std::map<int, int> place_of_bars(const Needlework& work) {
  std::map<int, int> place;
  for (std::size_t i = 0; i < work.bars.size(); ++i) place[work.bars[i].bar] = static_cast<int>(i);
  return place;
}

/// Every dove's eye from the last of its bars, caught once at each side of its opening, closed.
void check_eyes(const cutwork::Cutting& cutting, const Needlework& work) {
  const auto place = place_of_bars(work);
  for (std::size_t i = 0; i < work.bars.size(); ++i)
    for (const auto& eye : work.bars[i].fillings) {
      REQUIRE(eye.points.size() == 5);
      CHECK(eye.points.front() == eye.points.back());
      const auto& box = cutting.openings[static_cast<std::size_t>(eye.opening)].box;
      std::set<int> bars;
      for (std::size_t b = 0; b < cutting.bars.size(); ++b)
        if (cutting.bars[b].openings[0] == eye.opening || cutting.bars[b].openings[1] == eye.opening) bars.insert(static_cast<int>(b));
      std::set<int> caught;
      for (std::size_t k = 0; k < 4; ++k) {
        if (eye.sides[k] >= 0) caught.insert(eye.sides[k]);
        else CHECK((box.holds(eye.points[k]) && !box.widened(-1).holds(eye.points[k])));
      }
      CHECK(caught == bars);
      for (const int bar : bars) CHECK(place.at(bar) <= static_cast<int>(i));
      CHECK(work.bars[i].bar == eye.sides[0]);
    }
}

bool always(void (*property)()) {
  static const int fixed = setenv("RC_PARAMS", "seed=1911 max_success=200", 0);
  return fixed == 0 && rc::check(property);
}

}  // namespace

TEST_CASE("the published pincushion: 25 openings, of which 9 carry 4 picots each, one on each of 36 bars") {
  // Archer 1911, fig. 165, of flights of 8, 7, 7 and 6 blocks (p. 194)
  const auto cutting = cutwork::plan_cutting(request(path("NE 8, SE 7, SW 7, NW 6", "across")));
  const auto work = worked(cutting, {rule(Filling::picots), rule(Filling::none, Where::every_second)});
  CHECK(count(work.fillings, Filling::picots) == 9);
  REQUIRE(work.bars.size() == 36);
  std::map<int, int> picots;
  for (const auto& item : work.bars) {
    CHECK(item.picots[0] != item.picots[1]);
    const auto& bar = cutting.bars[static_cast<std::size_t>(item.bar)];
    ++picots[bar.openings[item.picots[0] ? 0 : 1]];
  }
  CHECK(picots.size() == 9);
  for (const auto& [opening, n] : picots) CHECK(n == 4);
}

TEST_CASE("every second opening of a diamond: the larger of its two square grids, never two with a bar between") {
  for (const int n : {4, 6, 8, 14}) {
    const auto cutting = cutwork::plan_cutting(request(diamond(n)));
    const int m = n / 2 - 1;  // m*m + (m+1)*(m+1) openings (geometry)
    const auto work = worked(cutting, {rule(Filling::wheel, Where::every_second)});
    CHECK(count(work.fillings, Filling::wheel) == (m + 1) * (m + 1));
    for (const auto& bar : cutting.bars)
      CHECK(work.fillings[static_cast<std::size_t>(bar.openings[0])] != work.fillings[static_cast<std::size_t>(bar.openings[1])]);
  }
}

TEST_CASE("a dove's eye in every opening of a ring, also beside blocks") {
  for (const int n : {4, 6, 8, 10}) {
    const auto cutting = cutwork::plan_cutting(request(diamond(n)));
    const auto work = worked(cutting, {rule(Filling::doves_eye)});
    std::size_t eyes = 0;
    for (const auto& item : work.bars) {
      eyes += item.fillings.size();
      if (item.halved()) CHECK(item.weaves % 2 == 0);
    }
    CHECK(eyes == cutting.openings.size());
    CHECK(work.after.empty());
    check_eyes(cutting, work);
  }
}

TEST_CASE("four loops round the middle are a circle through the bars' middles") {
  const auto cutting = cutwork::plan_cutting(request(diamond(6)));
  const auto work = worked(cutting, {rule(Filling::doves_eye)});
  bool seen = false;
  for (const auto& item : work.bars)
    for (const auto& eye : item.fillings)
      if (std::count(eye.sides.begin(), eye.sides.end(), -1) == 0) {
        CHECK(eye.threads == doctest::Approx(2 * std::numbers::pi * 4));  // middles 4 threads from the centre (geometry)
        seen = true;
      }
  CHECK(seen);
}

TEST_CASE("an opening without bars has its dove's eye by itself") {
  const auto cutting = cutwork::plan_cutting(request(diamond(2)));
  REQUIRE(cutting.openings.size() == 1);
  const auto work = worked(cutting, {rule(Filling::doves_eye)});
  CHECK(work.bars.empty());
  REQUIRE(work.after.size() == 1);
  CHECK(work.after[0].fillings[0].sides == std::vector<int>{-1, -1, -1, -1, -1});
}

TEST_CASE("weaves: as many as lie side by side; one less where a bar is halved") {
  const auto cutting = cutwork::plan_cutting(request(diamond(4)));
  CHECK(worked(cutting, {}, 0, 0.52).bars[0].weaves == 7);  // 4 threads long, 0.52 each
  CHECK(worked(cutting, {}, 5).bars[0].weaves == 5);
  CHECK(worked(cutting, {}, 5).bars[0].threads == doctest::Approx(5 * 8));  // over four threads and under them
  CHECK(worked(cutting, {rule(Filling::picots)}, 5).bars[0].weaves == 4);
  CHECK(worked(cutting, {}, 0, 30).bars[0].weaves == 2);
}

TEST_CASE("rules: the last one for an opening holds; holes come again by turns; what cannot be filled is told") {
  const auto cutting = cutwork::plan_cutting(request(diamond(6)));  // 13 openings round [22, 2]
  const cloth::Hole top = {cutting.openings[0].box.x0 + 2, cutting.openings[0].box.y0 + 2};
  const auto work = worked(cutting, {rule(Filling::doves_eye), rule(Filling::none, Where::at, {top}, 4)});
  CHECK(count(work.fillings, Filling::none) == 4);
  CHECK(count(work.fillings, Filling::doves_eye) == 9);
  CHECK(work.not_filled.empty());
  const auto nowhere = worked(cutting, {rule(Filling::wheel, Where::at, {{1000, 0}})});
  REQUIRE(nowhere.not_filled.size() == 1);
  CHECK(nowhere.not_filled[0].why == cutwork::NotFilled::Why::no_opening);
}

TEST_CASE("square filets and wheels: every opening once, never across an opening, few new threads") {
  for (const Filling kind : {Filling::square_filet, Filling::wheel}) {
    for (const auto& cutting : {cutwork::plan_cutting(request(diamond(10))),
                                cutwork::plan_cutting(request(path("E 5, SE 1, S 4, SW 1, W 4, NW 1, N 4", "upright"), 4))}) {
      const auto work = worked(cutting, {rule(kind)});
      std::set<int> openings;
      int threads = 0;
      for (const auto& item : work.after) {
        openings.insert(item.fillings[0].opening);
        threads += item.behind < 0 ? 1 : 0;
      }
      CHECK(openings.size() == cutting.openings.size());
      CHECK(work.after.size() == cutting.openings.size());
      CHECK(threads <= 1 + static_cast<int>(openings.size()) / 5);  // a limit of our own: the order is good, not proven to be the best
      CHECK(!crosses_opening(cutting, work.after));
    }
  }
}

TEST_CASE("random rules on diamonds and joined squares: every bar once, every eye from its last bar, nothing across an opening") {
  CHECK(always([] {
    const int n = *rc::gen::inRange(1, 6);
    const bool joined = *rc::gen::arbitrary<bool>();
    const std::string k = std::to_string(2 * n + 1), less = std::to_string(2 * n);
    const auto cutting = joined ? cutwork::plan_cutting(request(path("E " + k + ", SE 1, S " + less + ", SW 1, W " + less + ", NW 1, N " + less, "upright"), 4))
                                : cutwork::plan_cutting(request(diamond(2 * n)));
    std::vector<FillingRule> rules;
    for (int r = *rc::gen::inRange(0, 4); r > 0; --r) {
      const auto& box = cutting.openings[static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(cutting.openings.size())))].box;
      rules.push_back(rule(static_cast<Filling>(*rc::gen::inRange(0, 5)), static_cast<Where>(*rc::gen::inRange(0, 3)), {{box.x0 + 2, box.y0 + 2}},
                           *rc::gen::element(1, 2, 4)));
    }
    const auto work = worked(cutting, rules, *rc::gen::inRange(0, 9));
    RC_ASSERT(place_of_bars(work).size() == cutting.bars.size());
    RC_ASSERT(work.bars.size() == cutting.bars.size());
    RC_ASSERT(!crosses_opening(cutting, work.bars));
    RC_ASSERT(!crosses_opening(cutting, work.after));
    check_eyes(cutting, work);
    int filled = static_cast<int>(work.after.size());
    for (const auto& item : work.bars) {
      filled += static_cast<int>(item.fillings.size());
      RC_ASSERT(!item.halved() || item.weaves % 2 == 0);
    }
    RC_ASSERT(filled == static_cast<int>(work.fillings.size()) - count(work.fillings, Filling::none) - count(work.fillings, Filling::picots));
  }));
}
