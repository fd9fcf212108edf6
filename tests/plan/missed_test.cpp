// Who missed a lesson: with the work that is named, and none of the rest of that lesson, the next one can be begun as its sheet says; with
// any of it left out it cannot.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "course_text.h"
#include "plan/plan.h"

namespace {

using Sections = std::vector<std::pair<int, int>>;

Sections in_lesson(const plan::Plan& plan, int lesson) { return plan.lessons[static_cast<std::size_t>(lesson - 1)].sections; }

bool has(const Sections& done, int t, int s) { return std::find(done.begin(), done.end(), std::pair(t, s)) != done.end(); }

bool on_cloth(const plan::Plan& plan, const Sections& done, int lesson, const guide::Landmark& landmark) {
  if (landmark.part < 0 || landmark.lesson == lesson) return true;  // the cloth itself; stitched in the lesson itself
  for (const auto& [t, s] : done)
    for (int k = plan.trails[t].sections[s].first; k <= plan.trails[t].sections[s].last; ++k)
      if (plan.trails[t].part == landmark.part &&
          (plan.trails[t].trail.stitches[k].up == landmark.hole || plan.trails[t].trail.stitches[k].down == landmark.hole))
        return true;
  return false;
}

/// What is on a student's cloth.
struct Done {
  Sections sections, routes;
  std::vector<int> cuttings;
  bool washed = false;

  void add(const plan::LessonPlan& lesson) {
    sections.insert(sections.end(), lesson.sections.begin(), lesson.sections.end());
    routes.insert(routes.end(), lesson.routes.begin(), lesson.routes.end());
    cuttings.insert(cuttings.end(), lesson.cuttings.begin(), lesson.cuttings.end());
    washed = washed || std::count(lesson.work.begin(), lesson.work.end(), "wash") > 0;
  }
};

bool cut(const Done& done, int c) { return std::find(done.cuttings.begin(), done.cuttings.end(), c) != done.cuttings.end(); }

/// All of a part's stitches that come before this lesson.
bool stitched(const plan::Plan& plan, const Done& done, int lesson, int part) {
  for (std::size_t o = 0; o < plan.trails.size(); ++o)
    for (std::size_t z = 0; z < plan.trails[o].sections.size(); ++z)
      if (plan.trails[o].part == part && plan.trails[o].sections[z].lesson < lesson && !has(done.sections, static_cast<int>(o), static_cast<int>(z)))
        return false;
  return true;
}

bool ready_for_stretch(const plan::Plan& plan, const Done& done, int lesson, int t, int s) {
  for (int earlier = 0; earlier < s; ++earlier)
    if (plan.trails[t].sections[earlier].lesson < lesson && !has(done.sections, t, earlier)) return false;
  for (std::size_t o = 0; o < plan.trails.size(); ++o)
    for (std::size_t z = 0; z < plan.trails[o].sections.size(); ++z)
      if (plan.trails[o].part == plan.trails[t].part && plan.trails[o].place == plan.trails[t].place && plan.trails[o].pass < plan.trails[t].pass &&
          plan.trails[o].sections[z].lesson < lesson && !has(done.sections, static_cast<int>(o), static_cast<int>(z)))
        return false;
  for (const guide::CountIn& count_in : plan.count_ins) {
    if (count_in.trail != t || count_in.section != s) continue;
    const int by = count_in.lesson;
    bool counted = on_cloth(plan, done.sections, lesson, count_in.count.landmark) ||
                   (count_in.proof && on_cloth(plan, done.sections, lesson, count_in.proof->landmark));
    for (const guide::Count& other : count_in.others) counted = counted || on_cloth(plan, done.sections, lesson, other.landmark);
    if (by <= lesson && !counted) return false;
  }
  return true;
}

bool ready_for_cutting(const plan::Plan& plan, const Done& done, int lesson, int c) {
  for (const cutwork::Bundle& block : plan.cuttings[c].blocks)
    if (!stitched(plan, done, lesson, block.part)) return false;
  return true;
}

bool ready_for_route(const plan::Plan& plan, const Done& done, int lesson, int r, int s) {
  const plan::PartRoute& route = plan.routes[r];
  if (plan.cuttings[route.cutting].lesson < lesson && !cut(done, route.cutting)) return false;
  for (int earlier = 0; earlier < s; ++earlier)
    if (route.sections[earlier].lesson < lesson && !has(done.routes, r, earlier)) return false;
  if (route.stage == course::Stage::bars) return true;
  for (std::size_t o = 0; o < plan.routes.size(); ++o) {
    const plan::PartRoute& bars = plan.routes[o];
    if (bars.cutting != route.cutting || bars.stage != course::Stage::bars) continue;
    for (std::size_t z = 0; z < bars.sections.size(); ++z) {
      if (bars.sections[z].lesson >= lesson || has(done.routes, static_cast<int>(o), static_cast<int>(z))) continue;
      for (int i = bars.sections[z].first; i <= bars.sections[z].last; ++i)
        for (const int opening : plan.cuttings[route.cutting].cutting.bars[bars.items[i].bar].openings)
          for (int k = route.sections[s].first; k <= route.sections[s].last; ++k)
            if (route.items[k].fillings[0].opening == opening) return false;
    }
  }
  return true;
}

bool finishes(const plan::LessonPlan& lesson) {
  return std::count(lesson.work.begin(), lesson.work.end(), "wash") + std::count(lesson.work.begin(), lesson.work.end(), "cut out") > 0;
}

/// Can the lesson be worked with what is done, starts counted from any landmark that the plan knows of? `extra`: what is made up for, likewise.
bool ready(const plan::Plan& plan, int lesson, const Done& done, const Done& extra) {
  const plan::LessonPlan& now = plan.lessons[static_cast<std::size_t>(lesson - 1)];
  for (const auto& [t, s] : now.sections)
    if (!ready_for_stretch(plan, done, lesson, t, s)) return false;
  for (const int c : now.cuttings)
    if (!ready_for_cutting(plan, done, lesson, c)) return false;
  for (const auto& [r, s] : now.routes)
    if (!ready_for_route(plan, done, lesson, r, s)) return false;
  for (const auto& [t, s] : extra.sections)
    if (!ready_for_stretch(plan, done, lesson - 1, t, s) || !ready_for_stretch(plan, done, lesson, t, s)) return false;
  for (const int c : extra.cuttings)
    if (!ready_for_cutting(plan, done, lesson, c)) return false;
  for (const auto& [r, s] : extra.routes)
    if (!ready_for_route(plan, done, lesson, r, s)) return false;
  if (!finishes(now)) return true;
  const plan::LessonPlan& before = plan.lessons[static_cast<std::size_t>(lesson - 2)];
  for (const auto& [t, s] : before.sections)
    if (!has(done.sections, t, s)) return false;
  for (const auto& [r, s] : before.routes)
    if (!has(done.routes, r, s)) return false;
  for (const int c : before.cuttings)
    if (!cut(done, c)) return false;
  return done.washed || std::count(before.work.begin(), before.work.end(), "wash") == 0;
}

/// How many lessons need something, how many nothing.
std::pair<int, int> check_all(const plan::Plan& plan) {
  std::pair<int, int> seen;
  REQUIRE(!plan.lessons.front().missed);
  for (std::size_t i = 1; i < plan.lessons.size(); ++i) {
    const int lesson = static_cast<int>(i) + 1;
    CAPTURE(lesson);
    REQUIRE(plan.lessons[i].missed);
    const plan::Missed& missed = *plan.lessons[i].missed;
    Done done, extra;
    for (int n = 1; n + 1 < lesson; ++n) done.add(plan.lessons[static_cast<std::size_t>(n - 1)]);
    extra.sections = missed.sections;
    extra.routes = missed.routes;
    extra.cuttings = missed.cuttings;
    extra.washed = missed.wash;
    const auto with_extra = [&](const Done& some) {
      Done all = done;
      all.sections.insert(all.sections.end(), some.sections.begin(), some.sections.end());
      all.routes.insert(all.routes.end(), some.routes.begin(), some.routes.end());
      all.cuttings.insert(all.cuttings.end(), some.cuttings.begin(), some.cuttings.end());
      all.washed = all.washed || some.washed;
      return all;
    };
    for (const auto& section : missed.sections) CHECK(has(in_lesson(plan, lesson - 1), section.first, section.second));
    CHECK(ready(plan, lesson, with_extra(extra), extra));
    const auto not_without = [&](auto leave_out) {
      Done fewer = extra;
      leave_out(fewer);
      CHECK(!ready(plan, lesson, with_extra(fewer), fewer));
    };
    for (std::size_t k = 0; k < missed.sections.size(); ++k)
      not_without([&](Done& d) { d.sections.erase(d.sections.begin() + static_cast<std::ptrdiff_t>(k)); });
    for (std::size_t k = 0; k < missed.routes.size(); ++k) not_without([&](Done& d) { d.routes.erase(d.routes.begin() + static_cast<std::ptrdiff_t>(k)); });
    for (std::size_t k = 0; k < missed.cuttings.size(); ++k)
      not_without([&](Done& d) { d.cuttings.erase(d.cuttings.begin() + static_cast<std::ptrdiff_t>(k)); });
    if (missed.wash) not_without([](Done& d) { d.washed = false; });
    const Sections with = with_extra(extra).sections;
    for (const plan::Missed::Instead& instead : missed.instead) {
      CHECK(!on_cloth(plan, with, lesson, plan.count_ins[instead.count_in].count.landmark));
      CHECK(on_cloth(plan, with, lesson, instead.count.landmark));
    }
    ++(missed.nothing() ? seen.second : seen.first);
  }
  return seen;
}

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

}  // namespace

TEST_CASE("the samples: with what is named a student is ready, with less she is not") {
  std::pair<int, int> seen;
  for (const char* file : {"frost", "bookmark", "mat", "runner"}) {
    CAPTURE(file);
    const auto here = check_all(planned(course_from(text_of(std::string("lessons/") + file + ".course.toml"))));
    seen.first += here.first;
    seen.second += here.second;
  }
  CHECK(seen.first > 0);
  CHECK(seen.second > 0);
}

TEST_CASE("random rows in random lessons: the same") {
  std::mt19937 random(1911);
  const auto any = [&](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
  for (int round = 0; round < 60; ++round) {
    const int n = any(2, 5), lessons = any(2, 4);
    std::string parts;
    std::vector<std::string> work(static_cast<std::size_t>(lessons));
    for (int i = 0; i < n; ++i) {
      const std::string name = "p" + std::to_string(i), at = "[" + std::to_string(any(-60, 60)) + ", " + std::to_string(any(-60, 60)) + "]";
      const int stitches = 4 * any(2, 6);  // two rows over two threads each
      parts += part_text(name, "cable", at, "path = \"E " + std::to_string(stitches) + "\"");
      const auto put = [&](int lesson, const std::string& what) {
        work[static_cast<std::size_t>(lesson)] += (work[static_cast<std::size_t>(lesson)].empty() ? "\"" : ", \"") + what + "\"";
      };
      const int first = any(0, lessons - 1), second = any(first, lessons - 1), stop = any(1, 6);
      if (second == first) {
        put(first, name);
      } else {
        put(first, name + " / 1.." + std::to_string(stop));
        put(second, name + " / " + std::to_string(stop + 1) + ".." + std::to_string(stitches));
      }
    }
    std::string text =
        "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n[thread.fine]\npearl = 8\n" + parts;
    for (const std::string& some : work) text += "[[lesson]]\nwork = [" + (some.empty() ? std::string("\"wash\"") : some) + "]\n";
    CAPTURE(text);
    check_all(planned(course_from(text)));
  }
}

TEST_CASE("who missed the cutting cuts before she weaves, who missed the bars weaves before she fills, all before the wash") {
  const std::string heart =
      "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\nfillings = [{ kind = \"square filet\" }]\n";
  const auto course = course_of(part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 6, SE 5, SW 5, NW 4\"") + heart +
                                "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\", \"heart / bars / 1..5\"]\n"
                                "[[lesson]]\nwork = [\"heart / bars / 6..16\"]\n[[lesson]]\nwork = [\"heart / fillings\"]\n"
                                "[[lesson]]\nwork = [\"wash\"]\n[[lesson]]\nwork = [\"cut out\"]\n");
  const plan::Plan plan = planned(course);
  check_all(plan);
  CHECK(plan.lessons[1].missed->sections.size() == 1);
  CHECK(plan.lessons[2].missed->cuttings == std::vector<int>{0});
  CHECK(plan.lessons[2].missed->routes.size() == 1);
  CHECK(plan.lessons[3].missed->cuttings.empty());
  CHECK(plan.lessons[3].missed->routes.size() == 1);
  CHECK(plan.lessons[4].missed->routes.size() == 1);
  CHECK(plan.lessons[5].missed->wash);
  CHECK(!plan.lessons[5].missed->nothing());
}
