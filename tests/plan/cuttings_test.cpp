// Cutting in whole plans: repeated blocks, repeated areas, several parts that cut.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "course_text.h"
#include "plan/plan.h"

namespace {

plan::Plan planned(const std::string& parts) {
  auto plan = plan::make_plan(course_of(parts));
  REQUIRE(plan);
  return std::move(*plan);
}

std::string heart(const std::string& within, const std::string& more = "", const std::string& name = "heart") {
  return "[[part]]\nname = \"" + name + "\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [" + within + "]\n" + more + "\n";
}

std::string blocks(const std::string& name, const std::string& start, const std::string& path, const std::string& more = "") {
  return part_text(name, "blocks", start, "first = \"across\"\npath = \"" + path + "\"\n" + more);
}

using Snip = std::pair<cutwork::Axis, std::pair<int, cloth::Hole>>;
std::set<Snip> snips(const plan::PartCutting& cut) {
  std::set<Snip> all;
  for (const auto& c : cut.cutting.cuts) all.insert({c.axis, {c.thread, c.at}});
  return all;
}

const std::string ring4 = "NE 4, SE 3, SW 3, NW 2";
const std::string ring_and_heart = blocks("ring", "[0, 0]", ring4) + heart("\"ring\"");

bool told(const plan::PartCutting& cut, cutwork::Trouble what) {
  return std::any_of(cut.cutting.problems.begin(), cut.cutting.problems.end(), [&](const auto& p) { return p.what == what; });
}

}  // namespace

TEST_CASE("a ring made of one flight turned four times is cut like the ring written out") {
  const auto whole = planned(ring_and_heart);
  const auto turned = planned(blocks("ring", "[0, 0]", "NE 4", "turn = 4\nabout = [14, 2]") + heart("\"ring\""));
  REQUIRE(turned.cuttings.size() == 1);
  CHECK(turned.cuttings[0].late.empty());
  CHECK(snips(whole.cuttings[0]).size() == 48);  // 16n - 16 with n = 4, by geometry
  CHECK(snips(turned.cuttings[0]) == snips(whole.cuttings[0]));
  CHECK(turned.cuttings[0].cutting.openings.size() == 5);
}

TEST_CASE("a ring of two halves, the second a mirror image") {
  const auto mirrored = planned(blocks("half", "[0, 0]", "NE 4, SE 3", "mirror = \"y\"\nabout = [14, 2]") + heart("\"half\""));
  CHECK(snips(mirrored.cuttings[0]) == snips(planned(ring_and_heart).cuttings[0]));
}

TEST_CASE("a repeated ring is cut at every place; with a zone at the zone's images only") {
  const std::string rings = blocks("ring", "[0, 0]", ring4, "turn = 4\nabout = [14, 42]");
  const auto all = planned(rings + heart("\"ring\""));
  CHECK(all.cuttings[0].cutting.areas == 4);
  CHECK(snips(all.cuttings[0]).size() == 4 * 48);
  const auto one = planned(rings + heart("\"ring\"", "zone = [14, 2]"));
  CHECK(snips(one.cuttings[0]) == snips(planned(ring_and_heart).cuttings[0]));
  const auto two = planned(rings + heart("\"ring\"", "zone = [14, 2]\nturn = 2\nabout = [14, 42]"));
  CHECK(snips(two.cuttings[0]).size() == 2 * 48);
  const auto four = planned(rings + heart("\"ring\"", "zone = [14, 2]\nturn = 4\nabout = [14, 42]"));
  CHECK(snips(four.cuttings[0]) == snips(all.cuttings[0]));
  const auto outside = planned(rings + heart("\"ring\"", "zone = [14, 2]\nturn = 4\nabout = [14, 60]"));
  CHECK(told(outside.cuttings[0], cutwork::Trouble::zone_outside));
  CHECK(outside.cuttings[0].cutting.cuts.empty());
}

TEST_CASE("a repeated part that is not worked at one of its places: nothing is cut") {
  const std::string rings = blocks("ring", "[0, 0]", ring4, "turn = 4\nabout = [14, 42]") + heart("\"ring\"");
  const auto plan = planned(rings + "[[lesson]]\nwork = [\"ring / 1..200\"]\n[[lesson]]\nwork = [\"heart\"]\n");
  REQUIRE(plan.cuttings[0].late.size() == 1);
  CHECK(plan.cuttings[0].cutting.cuts.empty());
}

TEST_CASE("two parts that cut the same threads: told at the later one; with zones each has its own") {
  const std::string two = blocks("ring", "[0, 0]", ring4) + blocks("leaf", "[40, 0]", ring4);
  const auto both = planned(two + heart("\"ring\"") + heart("\"ring\", \"leaf\"", "", "second"));
  CHECK(!both.cuttings[0].cutting.cuts.empty());
  CHECK(told(both.cuttings[1], cutwork::Trouble::cut_twice));
  CHECK(both.cuttings[1].cutting.cuts.empty());
  const auto apart = planned(two + heart("\"ring\", \"leaf\"", "zone = [14, 2]") + heart("\"ring\", \"leaf\"", "zone = [54, 2]", "second"));
  CHECK(snips(apart.cuttings[0]).size() == 48);
  CHECK(snips(apart.cuttings[1]).size() == 48);
}

namespace {

const std::string dots = "[[part]]\nname = \"dots\"\nkind = \"eyelet\"\nthread = \"heavy\"\ncentres = [[-6, 2], [34, 2]]\nsize = 4\n";

plan::Plan planned_with(const std::string& habits, const std::string& parts) {
  auto plan = plan::make_plan(course_of(parts, habits));
  REQUIRE(plan);
  return std::move(*plan);
}

}  // namespace

TEST_CASE("what is looked over before a ring is cut: 4n - 4 blocks of five stitches, 16n - 16 snips (geometry)") {
  const auto plan = planned(ring_and_heart + dots);
  REQUIRE(plan.cuttings[0].ready.size() == 1);
  const plan::ReadyArea& area = plan.cuttings[0].ready[0];
  REQUIRE(area.blocks.size() == 1);
  CHECK(area.blocks[0].part == 0);
  CHECK(area.blocks[0].blocks == 12);  // n = 4
  CHECK(area.blocks[0].stitches == 60);
  CHECK(area.snips == 48);
  CHECK(area.first_cutting == 1);
  CHECK(area.last_cutting == 12);
  CHECK(area.finished.size() == 2);  // the dots stand four threads beside the blocks
  const auto far = planned(ring_and_heart + part_text("frame", "backstitch", "[-40, -40]", "path = \"E 108, S 84, W 108, N 84\""));
  CHECK(far.cuttings[0].ready[0].finished.size() == 1);
}

TEST_CASE("every thread of the ring has both its ends beside the cloth that is cut; each is told once") {
  const auto plan = planned(ring_and_heart);
  const auto& tails = plan.cuttings[0].ready[0].tails;
  const trail::Trail& ring = plan.trails[0].trail;
  CHECK(tails.size() == 2 * ring.ends.size());
  CHECK(std::count_if(tails.begin(), tails.end(), [](const auto& t) { return t.begins; }) == static_cast<std::ptrdiff_t>(ring.ends.size()));
  const auto far = planned(ring_and_heart + part_text("frame", "backstitch", "[-40, -40]", "path = \"E 108, S 84, W 108, N 84\""));
  for (const auto& tail : far.cuttings[0].ready[0].tails) CHECK(far.trails[tail.trail].part == 0);
}

TEST_CASE("thread on the back across the opening: where the limit lets it run there, and never where it ends before") {
  const auto safe = planned(ring_and_heart + dots);
  CHECK(safe.cuttings[0].ready[0].across.empty());
  const auto plan = planned_with("back_limit = 60", ring_and_heart + dots);
  const auto& across = plan.cuttings[0].ready[0].across;
  REQUIRE(across.size() == 1);
  const auto& trail = plan.trails[across[0].trail];
  CHECK(trail.part == 2);
  const cloth::Hole from = trail.trail.stitches[across[0].stitch - 1].down, to = trail.trail.stitches[across[0].stitch].up;
  CHECK(std::min(from.x, to.x) < 0);  // from the eyelet on one side to that on the other
  CHECK(std::max(from.x, to.x) > 28);
}

TEST_CASE("each area is looked over by itself: four rings, each with its own blocks") {
  const auto plan = planned(blocks("ring", "[0, 0]", ring4, "turn = 4\nabout = [14, 42]") + heart("\"ring\""));
  REQUIRE(plan.cuttings[0].ready.size() == 4);
  for (const plan::ReadyArea& area : plan.cuttings[0].ready) {
    CHECK(area.blocks[0].blocks == 12);
    CHECK(area.snips == 48);
    CHECK(area.last_cutting - area.first_cutting == 11);
  }
}
