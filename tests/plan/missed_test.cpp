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

/// Can the lesson be worked with what is done, starts counted from any landmark that the plan knows of?
bool ready(const plan::Plan& plan, int lesson, const Sections& done) {
  for (const auto& [t, s] : in_lesson(plan, lesson)) {
    for (int earlier = 0; earlier < s; ++earlier)
      if (plan.trails[t].sections[earlier].lesson < lesson && !has(done, t, earlier)) return false;
    for (std::size_t o = 0; o < plan.trails.size(); ++o)
      for (std::size_t z = 0; z < plan.trails[o].sections.size(); ++z)
        if (plan.trails[o].part == plan.trails[t].part && plan.trails[o].place == plan.trails[t].place &&
            plan.trails[o].pass < plan.trails[t].pass && plan.trails[o].sections[z].lesson < lesson &&
            !has(done, static_cast<int>(o), static_cast<int>(z)))
          return false;
  }
  for (const int c : plan.lessons[static_cast<std::size_t>(lesson - 1)].cuttings)
    for (const cutwork::Bundle& block : plan.cuttings[c].blocks)
      for (std::size_t o = 0; o < plan.trails.size(); ++o)
        for (std::size_t z = 0; z < plan.trails[o].sections.size(); ++z)
          if (plan.trails[o].part == block.part && plan.trails[o].sections[z].lesson < lesson &&
              !has(done, static_cast<int>(o), static_cast<int>(z)))
            return false;
  for (const guide::CountIn& count_in : plan.count_ins) {
    if (count_in.lesson != lesson) continue;
    bool counted =
        on_cloth(plan, done, lesson, count_in.count.landmark) || (count_in.proof && on_cloth(plan, done, lesson, count_in.proof->landmark));
    for (const guide::Count& other : count_in.others) counted = counted || on_cloth(plan, done, lesson, other.landmark);
    if (!counted) return false;
  }
  return true;
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
    Sections done;
    for (int n = 1; n + 1 < lesson; ++n)
      for (const auto& section : in_lesson(plan, n)) done.push_back(section);
    Sections with = done;
    for (const auto& section : missed.sections) {
      CHECK(has(in_lesson(plan, lesson - 1), section.first, section.second));
      with.push_back(section);
    }
    CHECK(ready(plan, lesson, with));
    for (std::size_t k = 0; k < missed.sections.size(); ++k) {
      Sections fewer = with;
      fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(done.size() + k));
      CHECK(!ready(plan, lesson, fewer));
    }
    for (const plan::Missed::Instead& instead : missed.instead) {
      CHECK(!on_cloth(plan, with, lesson, plan.count_ins[instead.count_in].count.landmark));
      CHECK(on_cloth(plan, with, lesson, instead.count.landmark));
    }
    ++(missed.sections.empty() ? seen.second : seen.first);
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
