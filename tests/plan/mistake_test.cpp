// A student's mistake taken in, held against the wrong cloth laid out stitch beside stitch, and against cutting known by geometry: a block that
// stands a thread aside faces its partner no more (Archer p. 191: a thread is cut only between two blocks).
#include "plan/mistake.h"

#include <doctest/doctest.h>

#include <random>
#include <set>
#include <tuple>

#include "course_text.h"

namespace {

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

std::string lesson(const std::string& work) { return "[[lesson]]\nwork = [" + work + "]\n"; }

bool strictly_on(cloth::Hole h, cloth::Hole a, cloth::Hole b) {
  const std::int64_t cross = std::int64_t{b.x - a.x} * (h.y - a.y) - std::int64_t{b.y - a.y} * (h.x - a.x);
  const std::int64_t dot = std::int64_t{h.x - a.x} * (b.x - a.x) + std::int64_t{h.y - a.y} * (b.y - a.y);
  return cross == 0 && dot > 0 && dot < cloth::squared(a, b);
}

/// 0 apart, 1 touching, 2 sharing a hole.
int nearness(const trail::Worked& wrong, cloth::Hole off, const trail::Worked& other) {
  const cloth::Hole u = wrong.up + off, d = wrong.down + off;
  if (u == other.up || u == other.down || d == other.up || d == other.down) return 2;
  return strictly_on(u, other.up, other.down) || strictly_on(d, other.up, other.down) || strictly_on(other.up, u, d) || strictly_on(other.down, u, d);
}

/// Every pair of stitches, one by one.
std::set<std::tuple<int, int, int, bool>> laid_out(const plan::Plan& plan, const plan::Mistake& m) {
  std::set<std::tuple<int, int, int, bool>> misfits;
  for (int k = m.first; k <= m.last; ++k)
    for (int t = 0; t < static_cast<int>(plan.trails.size()); ++t)
      for (int i = 0; i < static_cast<int>(plan.trails[t].trail.stitches.size()); ++i) {
        if (t == m.trail && m.first <= i && i <= m.last) continue;
        const trail::Worked &wrong = plan.trails[m.trail].trail.stitches[k], &other = plan.trails[t].trail.stitches[i];
        const int should = nearness(wrong, {0, 0}, other), does = nearness(wrong, m.off, other);
        if (should == 2 && does != 2) misfits.insert({k, t, i, true});
        if (should == 0 && does > 0) misfits.insert({k, t, i, false});
      }
  return misfits;
}

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string heart = "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n";
const std::string rows = lesson("\"ring\"") + lesson("\"heart / cut\"");

}  // namespace

TEST_CASE("stitches by themselves may stand where they like: it does not matter, nothing is unpicked for it") {
  const course::Course course = course_of(part_text("row", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 3\""));
  const plan::Plan plan = planned(course);
  const auto taken = plan::take_in(course, plan, {0, 0, static_cast<int>(plan.trails[0].trail.stitches.size()) - 1, {1, 0}});
  REQUIRE(taken);
  CHECK(!taken->matters());
}

TEST_CASE("a block of a ring that stands one thread aside: nothing may be cut; the whole ring one thread aside is cut elsewhere") {
  const course::Course course = course_of(ring + heart + rows);
  const plan::Plan plan = planned(course);
  REQUIRE(plan.cuttings.size() == 1);
  REQUIRE(!plan.cuttings[0].cutting.cuts.empty());
  for (const cloth::Hole off : {cloth::Hole{1, 0}, {0, 1}, {-1, 0}, {0, -1}})
    for (int block = 0; block < 12; ++block) {
      const auto taken = plan::take_in(course, plan, {0, 5 * block, 5 * block + 4, off});
      REQUIRE(taken);
      CHECK(taken->matters());
      CHECK(taken->to_unpick == 5);
      REQUIRE(taken->cuttings.size() == 1);
      CHECK(taken->cuttings[0].now == plan::CutNow::forbidden);
      CHECK(!taken->cuttings[0].problems.empty());
    }
  const auto whole = plan::take_in(course, plan, {0, 0, 59, {1, 0}});
  REQUIRE(whole);
  REQUIRE(whole->cuttings.size() == 1);
  CHECK(whole->cuttings[0].now == plan::CutNow::elsewhere);
  CHECK(whole->misfits.empty());
}

TEST_CASE("from a point on, every way: the misfits are those of the wrong cloth laid out beside the right one") {
  const course::Course course = course_from(text_of("lessons/frost.course.toml"));
  const plan::Plan plan = planned(course);
  std::mt19937 random(191);
  int parted = 0;
  for (int round = 0; round < 60; ++round) {
    const int t = static_cast<int>(random() % plan.trails.size()), n = static_cast<int>(plan.trails[t].trail.stitches.size());
    const int first = static_cast<int>(random() % static_cast<unsigned>(n)), last = first + static_cast<int>(random() % static_cast<unsigned>(n - first));
    const plan::Mistake mistake{t, first, last, (1 + round % 2) * cloth::step(static_cast<cloth::Way>(2 * (round % 4)))};
    const auto taken = plan::take_in(course, plan, mistake);
    REQUIRE(taken);
    std::set<std::tuple<int, int, int, bool>> found;
    for (const plan::Misfit& m : taken->misfits) found.insert({m.stitch, m.other, m.other_stitch, m.parted}), parted += m.parted;
    CHECK(found.size() == taken->misfits.size());
    CHECK(found == laid_out(plan, mistake));
    CHECK(taken->to_unpick == last - first + 1);
  }
  CHECK(parted > 50);
}

TEST_CASE("later starts that are counted from wrong stitches are named; earlier ones are not") {
  const course::Course course = course_from(text_of("lessons/frost.course.toml"));
  const plan::Plan plan = planned(course);
  const int last = static_cast<int>(plan.trails[0].trail.stitches.size()) - 1;
  const auto taken = plan::take_in(course, plan, {0, 0, last, {1, 0}});
  REQUIRE(taken);
  for (const int c : taken->count_ins) CHECK(plan.count_ins[c].count.landmark.part == plan.trails[0].part);
  std::size_t from_ring = 0;
  for (const guide::CountIn& in : plan.count_ins) from_ring += in.count.landmark.part == plan.trails[0].part && in.stitch + in.trail > 0;
  CHECK(taken->count_ins.size() == from_ring);
  CHECK(from_ring > 0);
}

TEST_CASE("stitches that are not there are refused") {
  const course::Course course = course_of(ring);
  const plan::Plan plan = planned(course);
  CHECK(!plan::take_in(course, plan, {0, 5, 4, {1, 0}}));
  CHECK(!plan::take_in(course, plan, {0, 0, 60, {1, 0}}));
  CHECK(!plan::take_in(course, plan, {3, 0, 0, {1, 0}}));
}
