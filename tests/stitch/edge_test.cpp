// Buttonhole edges: corners and counts by common practice (no source), counts round a square and a scallop by geometry.
#include <doctest/doctest.h>

#include <algorithm>

#include "parts.h"
#include "stitch/repeat.h"
#include "turning.h"

namespace {

using cloth::Hole;
using Holes = std::vector<Hole>;

stitch::Outcome edge(const std::string& path, const std::string& out = "left", int over = 4, Hole start = {0, 0}) {
  return parts::build("edge", {{"start", start}, {"path", path}, {"out", out}, {"over", over}});
}

const stitch::Run& run(const stitch::Work& work) { return work.passes.at(0).runs.at(0); }

std::vector<const stitch::Feature*> features(const stitch::Work& work, stitch::Shape shape) {
  std::vector<const stitch::Feature*> found;
  for (const stitch::Feature& feature : work.features)
    if (feature.shape == shape) found.push_back(&feature);
  return found;
}

std::string square(int side) {
  const std::string n = " " + std::to_string(side);
  return "E" + n + ", S" + n + ", W" + n + ", N" + n;
}

std::string fault(const stitch::Outcome& outcome) {
  REQUIRE(outcome.faults.size() == 1);
  const stitch::KeyFault& f = outcome.faults[0];
  return f.key + " " + std::to_string(f.offset) + ": " + f.found + "; " + f.expected;
}

/// Every stitch is as long as it should be, from the ridge inwards, and the next one is beside it: they share a hole or both holes are one
/// thread apart.
void goes_on(const stitch::Work& work, int over) {
  const auto& stitches = run(work).stitches;
  for (std::size_t i = 0; i < stitches.size(); ++i) {
    const Hole d = stitches[i].a - stitches[i].b;
    const bool straight = d.x == 0 || d.y == 0;
    RC_ASSERT(std::max(std::abs(d.x), std::abs(d.y)) <= over);
    RC_ASSERT(!straight || std::abs(d.x) + std::abs(d.y) == over);
    if (i == 0 && !work.closed) continue;
    const cloth::Stitch& before = stitches[(i + stitches.size() - 1) % stitches.size()];
    const bool side_by_side = cloth::squared(before.a, stitches[i].a) == 1 && cloth::squared(before.b, stitches[i].b) == 1;
    RC_ASSERT((side_by_side || before.a == stitches[i].a) != (before.b == stitches[i].b));
  }
}

/// The ridge lies to the right of the way: out from the inner hole, then on to the next stitch, turns left.
bool ridge_on_right(const stitch::Work& work) {
  const auto& stitches = run(work).stitches;
  for (std::size_t i = 1; i < stitches.size(); ++i) {
    const Hole out = stitches[i - 1].a - stitches[i - 1].b, on = stitches[i].a + stitches[i].b - stitches[i - 1].a - stitches[i - 1].b;
    if (on.x * out.y - on.y * out.x < 0) return false;
  }
  return true;
}

struct EdgePath {
  Hole start;
  bool right = true;
  int over = 4;
  turning::Items items;
};

/// Straight legs, long enough for any corner; open, or four quarters or two halves of a round.
EdgePath random_edge() {
  EdgePath path{turning::random_hole(), *rc::gen::arbitrary<bool>(), *rc::gen::inRange(3, 9), {}};
  turning::Items once;
  const int legs = *rc::gen::inRange(1, 6);
  for (int i = 0; i < legs; ++i) {
    stitch::PathItem item;
    item.way = once.empty() ? cloth::Way::E : cloth::turned(once.back().way, *rc::gen::element(2, -2));
    item.number = 2 * path.over + *rc::gen::inRange(1, 30);
    once.push_back(item);
  }
  const int quarters = *rc::gen::element(0, 1, 2);
  for (int turned = 0; turned < 4; turned += quarters == 0 ? 4 : quarters) {
    const turning::Items next = turning::apply(cloth::Turn{turned, false}, once);
    path.items.insert(path.items.end(), next.begin(), next.end());
  }
  return path;
}

stitch::Outcome build(const EdgePath& path) {
  return edge(turning::text(path.items), path.right ? "right" : "left", path.over, path.start);
}

EdgePath apply(cloth::Turn turn, EdgePath path) {
  return {cloth::apply(turn, path.start), path.right != turn.mirror, path.over, turning::apply(turn, path.items)};
}

TEST_CASE("an outer corner: five stitches share the corner hole") {  // common practice, no source
  const stitch::Work work = parts::work(edge("E 10, S 10"));
  const auto fans = features(work, stitch::Shape::fan);
  REQUIRE(fans.size() == 1);
  CHECK(fans[0]->hole == Hole{10, 0});
  Holes out;  // from the corner hole, across first as it is gone from its end: up the right side, then to the left
  for (const cloth::Stitch& s : fans[0]->stitches) {
    CHECK(s.b == fans[0]->hole);
    out.push_back(s.a - s.b);
  }
  CHECK(out == Holes{{4, 0}, {4, -2}, {3, -3}, {2, -4}, {0, -4}});
  CHECK(parts::normal_set(run(work).stitches).size() == 11 + 3 + 11);
}

TEST_CASE("an inner corner: two stitches at right angles share the ridge hole") {  // common practice, no source
  const stitch::Work work = parts::work(edge("E 10, N 10"));
  const auto notches = features(work, stitch::Shape::notch);
  REQUIRE(notches.size() == 1);
  CHECK(notches[0]->hole == Hole{6, -4});
  REQUIRE(notches[0]->stitches.size() == 2);
  CHECK(notches[0]->stitches[0] == cloth::Stitch{{6, -4}, {10, -4}});
  CHECK(notches[0]->stitches[1] == cloth::Stitch{{6, -4}, {6, 0}});
}

TEST_CASE("one scallop of a stepped edge has 5 + 3 + 5 stitches") {  // common practice, no source
  const stitch::Work work = parts::work(edge("6 x (E 8, S 8)", "left"));
  const auto notches = features(work, stitch::Shape::notch);
  REQUIRE(notches.size() == 5);
  const auto& stitches = run(work).stitches;
  for (std::size_t i = 1; i < notches.size(); ++i) {
    const auto at = [&](std::size_t n) {
      const auto second = [&](const cloth::Stitch& s) { return s == notches[n]->stitches[1]; };
      return std::find_if(stitches.begin(), stitches.end(), second) - stitches.begin();
    };
    CHECK(std::abs(at(i) - at(i - 1)) == 13);
  }
}

TEST_CASE("round a square of L threads there are 4(L + 1) + 12 stitches") {  // geometry
  CHECK(parts::work(edge(square(40))).stitches.size() == 176);
  for (int side = 1; side < 60; ++side) {
    const stitch::Work work = parts::work(edge(square(side)));
    CHECK(work.closed);
    CHECK(static_cast<int>(parts::normal_set(work.stitches).size()) == 4 * (side + 1) + 12);
    CHECK(parts::extent(work.stitches) == cloth::Box{-4, -4, side + 4, side + 4});
  }
}

TEST_CASE("inside a window every corner is an inner one") {  // geometry: each side ends 4 threads before both its corners
  const stitch::Work work = parts::work(edge(square(20), "right"));
  CHECK(work.stitches.size() == 4 * 13);
  CHECK(features(work, stitch::Shape::notch).size() == 4);
  CHECK(parts::extent(work.stitches) == cloth::Box{0, 0, 20, 20});
}

TEST_CASE("random edges: stitches lie side by side or share a hole, the ridge to the right of the way") {
  CHECK(turning::always("edges go on", [] {
    const EdgePath path = random_edge();
    const stitch::Outcome outcome = build(path);
    RC_PRE(outcome.faults.empty() && outcome.work.doubts.empty());  // halves may turn straight back
    goes_on(outcome.work, path.over);
    RC_ASSERT(ridge_on_right(outcome.work));
    RC_ASSERT(parts::normal_set(outcome.work.stitches).size() == outcome.work.stitches.size());
  }));
}

TEST_CASE("a turned edge is the same turned; a mirrored one is gone the other way") {
  CHECK(turning::always("turned edges", [] {
    const EdgePath path = random_edge();
    const stitch::Outcome one = build(path);
    RC_PRE(one.faults.empty() && one.work.doubts.empty());
    for (const cloth::Turn turn : turning::all_turns()) {
      const stitch::Work other = build(apply(turn, path)).work;
      std::vector<cloth::Stitch> wanted = run(one.work).stitches;
      for (cloth::Stitch& s : wanted) s = turning::apply(turn, s);
      if (turn.mirror) std::reverse(wanted.begin(), wanted.end());
      const std::vector<cloth::Stitch>& got = run(other).stitches;
      RC_ASSERT(parts::normal_set(got) == parts::normal_set(wanted));
      const auto first = std::find(got.begin(), got.end(), wanted.front());  // a mirrored round begins at another corner
      std::vector<cloth::Stitch> begun(first, got.end());
      begun.insert(begun.end(), got.begin(), first);
      RC_ASSERT(begun == wanted);
      RC_ASSERT(ridge_on_right(other));
    }
  }));
}

TEST_CASE("a quarter edge turned is the whole; a mirrored image is gone with its ridge to the right") {
  const stitch::Work quarter = parts::work(edge("E 20, S 20", "left", 4, {0, -20}));
  const auto places = [&](const stitch::Repeat& repeat) {
    stitch::Work all = stitch::repeated(quarter, repeat);
    CHECK(all.doubts.empty());
    for (const stitch::Pass& pass : all.passes) {
      CHECK(pass.order == stitch::Order::looped);
      stitch::Work one;
      one.passes = {pass};
      CHECK(ridge_on_right(one));
    }
    return all;
  };
  CHECK(places({4, "", {0, 0}}).places == 4);
  CHECK(places({1, "xy", {0, 0}}).places == 4);
  const stitch::Work half = parts::work(edge("N 10, E 40, S 10", "left", 4, {-20, 0}));
  const stitch::Work whole = stitch::repeated(half, {2, "", {0, 0}});
  CHECK(whole.doubts.empty());
  CHECK(parts::normal_set(whole.stitches) == parts::normal_set(parts::work(edge("N 20, E 40, S 20, W 40", "left", 4, {-20, 10})).stitches));
}

TEST_CASE("an edge that meets itself stops") {
  for (const char* path : {"E 40, S 20, W 20, N 40", "E 40, S 30, W 40, N 27, E 36"}) {
    CAPTURE(path);
    const stitch::Work work = parts::work(edge(path, "left"));
    REQUIRE(work.doubts.size() == 1);
    CHECK(work.doubts[0].rule == "edge-crosses-itself");
    CHECK(work.doubts[0].stops);
    CHECK(work.passes.empty());
    CHECK(parts::normal_set(work.stitches).size() == work.stitches.size());
  }
}

TEST_CASE("faults") {
  CHECK(fault(edge("E 8, SE 4")) == "path 5: \"SE 4\", a slanted leg; a straight one: N, E, S or W");
  CHECK(fault(edge("E 3, N 10")) == "path 2: the number 3; 4 or more: stitches over 4 need as many threads before an inner corner");
  CHECK(fault(edge("E 10, N 8, W 10")) ==
        "path 8: the number 8; 9 or more: stitches over 4 need as many threads before an inner corner, and a thread between two of them");
  CHECK(fault(edge("E 10, W 3")).find("straight back") != std::string::npos);
  CHECK(edge("E 10", "left", 4, {99998, 99998}).faults.size() == 1);
  CHECK(edge("E 2", "right", 4, {0, 99998}).faults.size() == 1);
}

}  // namespace
