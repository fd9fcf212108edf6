// Where tails go: held against a search through every stitch. Three or four blocks for a later thread, a waste tail for a first one: common
// practice, no source.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <optional>
#include <set>

#include "guide/worked_course.h"

using namespace worked_course;
using guide::Anchor;
using hand_made::Chance;

namespace {

const std::string ring = blocks("NE 8, SE 7, SW 7, NW 6");
constexpr double tail = 70;  // threads, about 8 cm at 22 an inch
constexpr double reach = 12;

double distance(const cloth::Stitch& s, cloth::Hole hole) { return std::min(cloth::distance(s.a, hole), cloth::distance(s.b, hole)); }
double apart(const cloth::Stitch& s, const cloth::Stitch& t) { return std::min(distance(s, t.a), distance(s, t.b)); }
cloth::Stitch normal(const trail::Worked& w) { return cloth::Stitch{w.up, w.down}.normal(); }

cloth::Hole hole_of(const Whole& whole, int trail, const Anchor& a) {
  const auto& w = whole.trails[trail].trail.stitches[a.stitch];
  return a.start ? w.up : w.down;
}

/// Lesson and item of a trail's stitch; nothing: in no section.
std::optional<std::pair<int, int>> when(const Whole& whole, int trail, int stitch) {
  for (const auto& s : whole.trails[trail].sections)
    if (s.first <= stitch && stitch <= s.last) return std::pair(s.lesson, s.item);
  return std::nullopt;
}

/// Every stitch that stands when the anchored stitch is begun.
std::set<cloth::Stitch> standing(const Whole& whole, int trail, int stitch) {
  std::set<cloth::Stitch> all;
  const auto now = *when(whole, trail, stitch);
  for (int t = 0; t < static_cast<int>(whole.trails.size()); ++t)
    for (int k = 0; k < whole.size(t); ++k) {
      const auto then = when(whole, t, k);
      if (then && (*then < now || (t == trail && *then == now && k < stitch))) all.insert(normal(whole.trails[t].trail.stitches[k]));
    }
  return all;
}

double length(const std::vector<cloth::Stitch>& stitches) {
  double sum = 0;
  for (const auto& s : stitches) sum += cloth::distance(s.a, s.b);
  return sum;
}

std::string trouble(const Whole& whole, int trail, const Anchor& a) {
  const cloth::Hole hole = hole_of(whole, trail, a);
  const std::set<cloth::Stitch> worked = standing(whole, trail, a.stitch);
  const std::set<cloth::Stitch> under(a.under.begin(), a.under.end());
  const cloth::Stitch own = normal(whole.trails[trail].trail.stitches[a.stitch]);
  if (a.under.empty()) return "under nothing";
  if (under.size() != a.under.size()) return "twice under one stitch";
  if (!std::is_sorted(a.under.begin(), a.under.end(), [&](const auto& s, const auto& t) { return distance(s, hole) < distance(t, hole); }))
    return "not nearest first";
  const bool reached = std::any_of(worked.begin(), worked.end(), [&](const auto& s) { return distance(s, hole) <= reach; });
  if (a.start && a.later == reached) return "waits though something is stitched, or the other way round";
  if (!a.start && a.later) return "a finish that waits";
  const bool alone = !a.start && !reached && under == std::set<cloth::Stitch>{own};
  for (const auto& s : a.under) {
    if (!a.later && !alone && !worked.contains(s)) return "under a stitch not worked yet";
    if (distance(s, hole) > std::max(tail, reach)) return "beyond the tail";
    const bool beside = std::any_of(under.begin(), under.end(), [&](const auto& t) { return t != s && apart(s, t) <= 4; });
    if (under.size() > 1 && !beside) return "one that lies apart";
  }
  if (!a.later && distance(a.under[0], hole) > reach) return "begins out of reach";
  if (length(a.under) >= tail + 4) return "held too much";  // no stitch is longer than 4
  if (length(a.under) >= tail || a.later || alone) return "";
  for (const auto& s : worked) {
    const bool beside = std::any_of(under.begin(), under.end(), [&](const auto& t) { return apart(s, t) <= 4; });
    if (beside && !under.contains(s) && distance(s, hole) <= tail) return "held too little, with more beside";
  }
  return "";
}

void check(const Whole& whole) {
  const auto all = guide::all_anchors(whole.course, whole.trails, tail);
  REQUIRE(all.size() == whole.trails.size());
  for (int t = 0; t < static_cast<int>(all.size()); ++t) {
    const auto& ends = whole.trails[t].trail.ends;
    REQUIRE(all[t].size() == 2 * ends.size());
    for (std::size_t i = 0; i < all[t].size(); ++i) {
      const Anchor& a = all[t][i];
      CAPTURE(t);
      CAPTURE(a.stitch);
      CHECK(a.start == (i % 2 == 0));
      CHECK(a.stitch == (a.start ? ends[i / 2] : (i / 2 + 1 < ends.size() ? ends[i / 2 + 1] : whole.size(t)) - 1));
      CHECK(trouble(whole, t, a) == "");
    }
  }
}

}  // namespace

TEST_CASE("a ring of blocks: the first tail waits, later ones run under three or four blocks") {
  Whole whole = plan(ring);
  whole.work(0, 1);
  check(whole);
  const auto anchors = guide::anchors(whole.course, whole.trails, 0, tail);
  REQUIRE(anchors.size() >= 4);
  CHECK(anchors[0].later);
  CHECK(anchors[0].under[0] == normal(whole.trails[0].trail.stitches[0]));
  for (std::size_t i = 1; i < anchors.size(); ++i) {
    CHECK(anchors[i].under.size() == 18);  // of 4 threads each: 72
    CHECK(!anchors[i].later);
  }
}

TEST_CASE("the first thread of a part runs under another part's stitches where they are within reach and stand") {
  const std::string line = cable("E 40", 2, "[0, 6]");
  Whole near = plan(ring + line);
  near.work(0, 1);
  near.work(1, 2);
  check(near);
  CHECK(!guide::anchors(near.course, near.trails, 1, tail)[0].later);
  Whole first = plan(ring + line);
  first.work(1, 1);
  first.work(0, 1);
  check(first);
  CHECK(guide::anchors(first.course, first.trails, 1, tail)[0].later);
  Whole far = plan(ring + cable("E 40", 2, "[0, 100]"));
  far.work(0, 1);
  far.work(1, 2);
  check(far);
  CHECK(guide::anchors(far.course, far.trails, 1, tail)[0].later);
}

TEST_CASE("two trails of one item: neither is before the other") {
  Whole whole = plan(cable("E 40", 2, "[0, 0]") + cable("E 40", 2, "[0, 8]"));
  for (auto& trail : whole.trails) trail.sections.push_back({1, 0, 0, static_cast<int>(trail.trail.stitches.size()) - 1});
  check(whole);
  CHECK(guide::anchors(whole.course, whole.trails, 1, tail)[0].later);
}

TEST_CASE("a thread that begins far from all that stands waits too, and is not held across the gap") {
  Whole whole = plan(cable("E 40"));
  auto& trail = whole.trails[0].trail;
  for (std::size_t k = 20; k < trail.stitches.size(); ++k) {
    trail.stitches[k].up.y += 60;
    trail.stitches[k].down.y += 60;
  }
  trail.ends = {0, 20};
  whole.work(0, 1);
  check(whole);
  const auto anchors = guide::anchors(whole.course, whole.trails, 0, tail);
  CHECK(anchors[2].later);
  for (const auto& s : anchors[3].under) CHECK(s.a.y >= 60);
}

TEST_CASE("one stitch alone is held by itself") {
  Whole whole = plan(ring);
  whole.trails[0].trail.stitches.resize(1);
  whole.trails[0].trail.ends = {0};
  whole.work(0, 1);
  check(whole);
}

TEST_CASE("no tail: still under one stitch") {
  Whole whole = plan(ring);
  whole.work(0, 1);
  for (const Anchor& a : guide::anchors(whole.course, whole.trails, 0, 0)) CHECK(a.under.size() == 1);
}

TEST_CASE("parts nobody drew, in any order and in pieces") {
  hand_made::fix_seed();
  CHECK(rc::check("every tail is held by what stands, nearest first", [] {
    Chance chance(*rc::gen::arbitrary<unsigned>());
    std::string parts;
    const int n = 1 + chance.below(3);
    for (int i = 0; i < n; ++i) {
      const std::string start = "[" + std::to_string(chance.below(60)) + ", " + std::to_string(chance.below(60)) + "]";
      const std::string name = "part " + std::to_string(i);
      parts += chance.once_in(2) ? part_text(name, "blocks", start, "path = \"NE 3, SE 2, SW 2, NW 1\"")
                                 : part_text(name, "cable", start, "path = \"" + octagon_path(chance) + "\"\nrows = 3");
    }
    Whole whole = plan(parts, chance.below(30));
    std::vector<int> order(whole.trails.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = static_cast<int>(i);
    for (std::size_t i = order.size(); i-- > 1;) std::swap(order[i], order[chance.below(static_cast<int>(i) + 1)]);
    for (const int t : order) {
      const int cut = chance.below(whole.size(t) - 1);
      whole.work(t, 1, 0, cut);
      whole.work(t, 1 + chance.below(2), cut + 1);
    }
    const auto all = guide::all_anchors(whole.course, whole.trails, tail);
    for (int t = 0; t < static_cast<int>(all.size()); ++t)
      for (const Anchor& a : all[t])
        if (const std::string wrong = trouble(whole, t, a); !wrong.empty()) RC_FAIL(parts + std::to_string(a.stitch) + ": " + wrong);
  }));
}
