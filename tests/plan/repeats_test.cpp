// Random repeated parts, many of which share stitches with their own images: by counting over the planned trails, every stitch is worked
// once in each pass that has it, and the needle never comes up in the hole it has just gone down in.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "course_text.h"
#include "plan/plan.h"

namespace {

std::string part_of(const std::string& kind, const std::string& keys) {
  return "[[part]]\nname = \"p\"\nkind = \"" + kind + "\"\nthread = \"heavy\"\n" + keys;
}

std::string random_part(std::mt19937& random) {
  const auto pick = [&](std::initializer_list<const char*> of) { return std::string(of.begin()[random() % of.size()]); };
  const auto even = [&] { return std::to_string(2 * (static_cast<int>(random() % 11) - 5)); };
  const std::string repeat = pick({"turn = 4\n", "turn = 2\n", "mirror = \"x\"\n", "mirror = \"xy\"\n", "turn = 4\nmirror = \"y\"\n"}) +
                             "about = [" + even() + ", " + even() + "]\n";
  const std::string start = "[" + even() + ", " + even() + "]";
  switch (random() % 8) {
    case 0:
      return part_of("satin", "start = " + start + "\nalong = \"E\"\ntoward = \"" + pick({"N", "S"}) +
                                  "\"\nover = " + pick({"[4, 4, 4, 4, 4]", "[2, 3, 4, 3]", "[5]"}) + "\n" + repeat);
    case 1:
      return part_of("star",
                     "centre = " + start + "\nreach = " + pick({"4", "8", "10"}) + "\npoints = " + pick({"4", "8"}) + "\n" + repeat);
    case 2:
      return part_of("eyelet", "centres = [" + start + ", [" + even() + ", 20]]\nsize = " + pick({"2", "4", "6"}) + "\noutline = \"" +
                                   pick({"square", "star"}) + "\"\n" + repeat);
    case 3:
      return part_of("four-sided", "start = " + start + "\nover = 2\npath = \"" + pick({"E 12", "E 12, S 8", "E 12, S 12, W 12, N 12"}) +
                                       "\"\nsquares_lie = \"" + pick({"left", "right"}) + "\"\n" + repeat);
    case 4:
      return part_of("backstitch", "start = " + start + "\npath = \"" + pick({"E 12", "E 12, SE 8", "E 12, S 12, W 12, N 12"}) +
                                       "\"\nworked = \"" + pick({"back", "double running"}) + "\"\n" + repeat);
    default:
      break;
  }
  if (random() % 2 == 0)
    return part_text("p", "blocks", start,
                     "first = \"across\"\npath = \"" + pick({"NE 3", "NE 4, SE 3, SW 3, NW 2", "NE 2, SE 3", "N 3"}) + "\"\n" + repeat);
  return part_text("p", "cable", start,
                   "path = \"" + pick({"E 12", "E 12, SE 8", "E 12, S 12, W 12, N 12", "SE 8, SW 8, NW 8, NE 8"}) +
                       "\"\nrows = " + pick({"2", "3"}) + "\n" + repeat);
}

}  // namespace

TEST_CASE("random repeated parts keep the laws") {
  std::mt19937 random(11);
  for (int round = 0; round < 300; ++round) {
    const std::string text = random_part(random);
    INFO(text);
    const course::Course course = course_of(text);
    const auto plan = plan::make_plan(course);
    REQUIRE(plan);
    std::map<int, std::multiset<cloth::Stitch>> by_pass;
    std::set<cloth::Stitch> all, worked;
    for (const cloth::Stitch& stitch : course.parts[0].work.stitches) all.insert(stitch.normal());
    for (const guide::PlacedTrail& placed : plan->trails) {
      const auto& stitches = placed.trail.stitches;
      const auto& ends = placed.trail.ends;
      for (std::size_t k = 0; k < stitches.size(); ++k) {
        by_pass[placed.pass].insert(cloth::Stitch{stitches[k].up, stitches[k].down}.normal());
        worked.insert(cloth::Stitch{stitches[k].up, stitches[k].down}.normal());
        if (k > 0 && stitches[k].up == stitches[k - 1].down) CHECK(std::count(ends.begin(), ends.end(), static_cast<int>(k)) == 1);
      }
    }
    for (const auto& [pass, stitches] : by_pass) CHECK(std::set<cloth::Stitch>(stitches.begin(), stitches.end()).size() == stitches.size());
    if (!plan->trails.empty()) CHECK(worked == all);
  }
}
