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
