// Edges planned: a turned design begun at the turned hole is the turned plan; a mirrored one is gone the other way from there. Craft order
// by habit.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "cloth/turn.h"
#include "cloth/way.h"
#include "course_text.h"
#include "plan/plan.h"

namespace {

using cloth::Hole;
using Legs = std::vector<std::pair<cloth::Way, int>>;

std::string hole_text(Hole h) { return "[" + std::to_string(h.x) + ", " + std::to_string(h.y) + "]"; }

cloth::Way apply(cloth::Turn turn, cloth::Way way) { return *cloth::way_between({0, 0}, cloth::apply(turn, cloth::step(way))); }

/// A closed edge: a rectangle with steps at one corner, every number long enough for its corners.
struct Design {
  Legs legs;
  bool left = true;
  int over = 4;
  Hole begin_at;

  std::string text(cloth::Turn turn) const {
    std::string path;
    for (const auto& [way, n] : legs)
      path += (path.empty() ? "" : ", ") + std::string(cloth::name(apply(turn, way))) + " " + std::to_string(n);
    return part_text("hem", "edge", "[0, 0]",
                     "path = \"" + path + "\"\nout = \"" + (left != turn.mirror ? "left" : "right") + "\"\nover = " + std::to_string(over) +
                         "\nbegin_at = " + hole_text(cloth::apply(turn, begin_at)));
  }
};

Design random_design(std::mt19937& random) {
  const auto number = [&](int least, int most) { return std::uniform_int_distribution<int>(least, most)(random); };
  using enum cloth::Way;
  Design design;
  design.over = number(3, 6);
  const int step = number(2 * design.over + 1, 20), steps = number(0, 4), across = number(20, 60), down = number(20, 60);
  design.legs.emplace_back(E, across);
  for (int i = 0; i < steps; ++i) design.legs.insert(design.legs.end(), {{S, step}, {E, step}});
  design.legs.insert(design.legs.end(), {{S, down}, {W, across + steps * step}, {N, down + steps * step}});
  design.begin_at = {number(6, 12), -design.over};  // on the ridge of the first side
  return design;
}

std::vector<cloth::Stitch> worked(const plan::Plan& plan) {
  std::vector<cloth::Stitch> all;
  for (const trail::Worked& w : plan.trails.at(0).trail.stitches) all.push_back({w.up, w.down});
  return all;
}

plan::Plan planned(const std::string& text) {
  auto plan = plan::make_plan(course_of(text));
  REQUIRE(plan);
  CHECK(plan->findings.empty());
  return std::move(*plan);
}

}  // namespace

TEST_CASE("a turned edge is the turned plan; a mirrored one goes the other way from the same stitch") {
  std::mt19937 random(29);
  for (int i = 0; i < 60; ++i) {
    const Design design = random_design(random);
    CAPTURE(design.text({}));
    const std::vector<cloth::Stitch> plain = worked(planned(design.text({})));
    CHECK(plain.front().a == design.begin_at);
    for (const bool mirror : {false, true})
      for (const cloth::Turn quarters : cloth::quarter_turns) {
        const cloth::Turn turn{quarters.quarters, mirror};
        std::vector<cloth::Stitch> wanted = plain;
        for (cloth::Stitch& s : wanted) s = {cloth::apply(turn, s.a), cloth::apply(turn, s.b)};
        if (mirror) std::reverse(wanted.begin() + 1, wanted.end());
        CHECK(worked(planned(design.text(turn))) == wanted);
      }
  }
}

TEST_CASE("left to itself the edge comes after the surface stitches") {
  const std::string edge = part_text("hem", "edge", "[-20, -60]", "path = \"E 80, S 80, W 80, N 80\"");
  const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
  const std::string cable = part_text("cable", "cable", "[-12, -52]", "path = \"E 64, S 64, W 64, N 64\"");
  const plan::Plan plan = planned(edge + cable + ring);
  const auto when = [&](int part) { return std::pair(plan.trails[part].sections[0].lesson, plan.trails[part].sections[0].item); };
  CHECK(when(2) < when(1));
  CHECK(when(1) < when(0));
}
