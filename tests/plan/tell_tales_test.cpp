// Where a start one thread off shows first: the wrong cloth is stitched out, stitch by stitch, beside the right one, and at each stitch all
// that is on either is looked over. Written on its own, without any index of holes.
#include "guide/tell_tales.h"

#include <doctest/doctest.h>

#include <random>
#include <tuple>

#include "course_text.h"
#include "plan/plan.h"

namespace {

struct Laid {
  int trail = 0, section = 0, stitch = 0;
  cloth::Hole up, down;
  bool wrong = false;
};

bool shares(const Laid& a, const Laid& b, cloth::Hole moved) {
  const cloth::Hole u = a.up + moved, d = a.down + moved;
  return u == b.up || u == b.down || d == b.up || d == b.down;
}

/// Is the hole on the straight line between the ends, ends left out?
bool strictly_on(cloth::Hole h, cloth::Hole a, cloth::Hole b) {
  const std::int64_t cross = std::int64_t{b.x - a.x} * (h.y - a.y) - std::int64_t{b.y - a.y} * (h.x - a.x);
  const std::int64_t dot = std::int64_t{h.x - a.x} * (b.x - a.x) + std::int64_t{h.y - a.y} * (b.y - a.y);
  return cross == 0 && dot > 0 && dot < cloth::squared(a, b);
}

bool touches(const Laid& a, const Laid& b, cloth::Hole moved) {
  const cloth::Hole u = a.up + moved, d = a.down + moved;
  return shares(a, b, moved) || strictly_on(u, b.up, b.down) || strictly_on(d, b.up, b.down) || strictly_on(b.up, u, d) ||
         strictly_on(b.down, u, d);
}

/// All stitches in the order of the lessons.
std::vector<Laid> in_order(const plan::Plan& plan) {
  std::vector<Laid> all;
  for (const plan::LessonPlan& lesson : plan.lessons)
    for (const auto& [t, s] : lesson.sections)
      for (int k = plan.trails[t].sections[s].first; k <= plan.trails[t].sections[s].last; ++k)
        all.push_back({t, s, k, plan.trails[t].trail.stitches[k].up, plan.trails[t].trail.stitches[k].down, false});
  return all;
}

const guide::CountIn& count_in_of(const plan::Plan& plan, int trail, int section) {
  for (const guide::CountIn& c : plan.count_ins)
    if (c.trail == trail && c.section == section) return c;
  FAIL("no count-in");
  return plan.count_ins.front();
}

/// What a student stitches wrongly who starts wrongly there and counts everything else as the sheets say.
void mark_wrong(const plan::Plan& plan, const guide::CountIn& first, std::vector<Laid>& all) {
  for (std::size_t i = 0; i < all.size(); ++i) {
    Laid& now = all[i];
    if (i > 0 && all[i - 1].trail == now.trail && all[i - 1].section == now.section) {
      now.wrong = all[i - 1].wrong;
      continue;
    }
    now.wrong = now.trail == first.trail && now.section == first.section;
    const guide::Landmark& from = count_in_of(plan, now.trail, now.section).count.landmark;
    for (std::size_t k = 0; k < i; ++k) {
      const guide::PlacedTrail& before = plan.trails[all[k].trail];
      const bool counted = from.part == before.part && from.place == before.place && (all[k].up == from.hole || all[k].down == from.hole);
      const bool goes_on = all[k].trail == now.trail && all[k].stitch + 1 == now.stitch;
      if (all[k].wrong && (counted || goes_on)) now.wrong = true;
    }
  }
}

struct First {
  bool shows = false;
  int trail = 0, stitch = 0;
  bool parted = false;
};
First stitched_out(const plan::Plan& plan, const guide::CountIn& count_in, cloth::Hole off) {
  std::vector<Laid> all = in_order(plan);
  mark_wrong(plan, count_in, all);
  for (std::size_t i = 0; i < all.size(); ++i) {
    First first{false, all[i].trail, all[i].stitch, false};
    for (std::size_t k = 0; k < i; ++k) {
      if (all[i].wrong == all[k].wrong) continue;
      const Laid &wrong = all[i].wrong ? all[i] : all[k], &right = all[i].wrong ? all[k] : all[i];
      const bool parted = shares(wrong, right, {0, 0}) && !shares(wrong, right, off);
      const bool met = touches(wrong, right, off) && !touches(wrong, right, {0, 0});
      first.shows = first.shows || parted || met;
      first.parted = first.parted || parted;
    }
    if (first.shows) return first;
  }
  return {};
}

void same_as_stitched_out(const plan::Plan& plan) {
  REQUIRE(plan.tell_tales.size() == 4 * plan.count_ins.size());
  for (const guide::TellTale& tale : plan.tell_tales) {
    const First first = stitched_out(plan, plan.count_ins[tale.count_in], cloth::step(tale.off));
    CAPTURE(tale.count_in);
    CAPTURE(cloth::name(tale.off));
    REQUIRE(tale.shows == first.shows);
    if (!first.shows) continue;
    CHECK(std::tuple(tale.trail, tale.stitch, tale.parted) == std::tuple(first.trail, first.stitch, first.parted));
    CHECK(tale.other_part >= 0);
  }
}

std::string course_with(const std::string& parts, const std::string& lessons) {
  return "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n[thread.fine]\npearl = 8\n" + parts +
         lessons;
}

}  // namespace

TEST_CASE("a ring in two lessons and a frame of cable: every start one thread off, every way, is stitched out") {
  const course::Course course = course_from(text_of("lessons/frost.course.toml"));
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  same_as_stitched_out(*plan);
}

TEST_CASE("two rows of blocks that touch: the touching stitch shows it; a row by itself never does") {
  const std::string rows = part_text("one", "blocks", "[0, 0]", "first = \"upright\"\npath = \"E 2\"") +
                           part_text("two", "blocks", "[8, 0]", "first = \"across\"\npath = \"E 1\"") +
                           part_text("far", "blocks", "[80, 0]", "first = \"upright\"\npath = \"E 2\"");
  const course::Course course = course_from(course_with(rows, "[[lesson]]\nwork = [\"one\"]\n[[lesson]]\nwork = [\"two\", \"far\"]\n"));
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  same_as_stitched_out(*plan);
  int never = 0, shown = 0;
  for (const guide::TellTale& tale : plan->tell_tales) ++(tale.shows ? shown : never);
  CHECK(never >= 4);
  CHECK(shown >= 4);
}

TEST_CASE("random rows of blocks and cables in random lessons are as they are stitched out") {
  std::mt19937 random(1911);
  const auto any = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  for (int round = 0; round < 40; ++round) {
    std::string parts, lessons;
    const int n = any(2, 4);
    for (int i = 0; i < n; ++i) {
      const std::string name = "p" + std::to_string(i), at = "[" + std::to_string(any(-8, 8)) + ", " + std::to_string(any(-8, 8)) + "]";
      const bool upright = any(0, 1) == 1;
      const std::string blocks = std::string("first = \"") + (upright ? "upright" : "across") + "\"\npath = \"" + (upright ? "E " : "SE ");
      parts += any(0, 1) == 0 ? part_text(name, "blocks", at, blocks + std::to_string(any(1, 3)) + "\"")
                              : part_text(name, "cable", at,
                                          "path = \"" + std::string(any(0, 1) ? "E " : "S ") + std::to_string(2 * any(2, 5)) + "\"");
      lessons += "[[lesson]]\nwork = [\"" + name + "\"]\n";
    }
    CAPTURE(parts);
    const course::Course course = course_from(course_with(parts, lessons));
    auto plan = plan::make_plan(course);
    REQUIRE(plan);
    same_as_stitched_out(*plan);
  }
}
