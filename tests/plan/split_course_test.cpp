// Whole courses parted into lessons by the program: ends where one can stop, locked lessons, number of lessons, home work, what would help.
#include <algorithm>
#include <cmath>
#include <set>

#include "course_text.h"
#include "plan/plan.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8, SE 7, SW 7, NW 6\"");
const std::string border =
    part_text("border", "cable", "[24, -46]", "path = \"E 12, SE 42, S 12, SW 42, W 12, NW 42, N 12, NE 42\"\nrows = 3");

course::Course course_with(const std::string& keys, const std::string& lessons,
                           const std::string& habits = "stitches_a_minute = { blocks = 2, cable = 4 }") {
  return course_from("format = 1\n[course]\ntitle = \"T\"\n" + keys + "\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n[habits]\n" +
                     habits + "\n" + ring + border + lessons);
}

plan::Plan planned(const course::Course& course, plan::Lessons lessons = plan::Lessons::as_written) {
  auto plan = plan::make_plan(course, {}, lessons);
  REQUIRE(plan);
  return std::move(*plan);
}

std::vector<std::vector<std::string>> work(const plan::Plan& plan) {
  std::vector<std::vector<std::string>> all;
  for (const auto& lesson : plan.lessons) all.push_back(lesson.work);
  return all;
}

void check_covered(const plan::Plan& plan) {
  for (const auto& trail : plan.trails) {
    int next = 0;
    for (const auto& section : trail.sections) {
      CHECK(section.first == next);
      next = section.last + 1;
    }
    CHECK(next == static_cast<int>(trail.trail.stitches.size()));
  }
}

std::string rules(const plan::Plan& plan) {
  std::string all;
  for (const auto& finding : plan.findings) all += finding.rule + " ";
  return all;
}

}  // namespace

TEST_CASE("as many lessons as it takes, each within its class's share, none ending at half a corner") {
  const course::Course course = course_with("minutes = 90", "");
  const plan::Plan plan = planned(course);
  check_covered(plan);
  double all = 0;
  for (const auto& lesson : plan.lessons) {
    CHECK(lesson.room == doctest::Approx(54));  // 0.6 of 90
    CHECK(lesson.minutes <= 54.001);
    all += lesson.minutes;
  }
  CHECK(static_cast<int>(plan.lessons.size()) >= static_cast<int>(std::ceil(all / 54)));
  CHECK(plan.split.lessons == static_cast<int>(plan.lessons.size()));
  CHECK(plan.split.over == 0);
  for (const auto& trail : plan.trails)
    for (const auto& section : trail.sections) {
      const auto& stitches = trail.trail.stitches;
      if (section.last + 1 == static_cast<int>(stitches.size())) continue;
      CHECK_FALSE(stitches[section.last].backward);
      CHECK_FALSE(stitches[section.last + 1].backward);
      CHECK(stitches[section.last].run != stitches[section.last + 1].run);  // the end of a block, or of a pair of stitches
    }
}

TEST_CASE("a number of lessons is kept and evened out; home work makes room") {
  for (const int n : {3, 5, 8}) {
    const plan::Plan plan = planned(course_with("minutes = 300\nlessons = " + std::to_string(n), ""));
    REQUIRE(plan.lessons.size() == static_cast<std::size_t>(n));
    check_covered(plan);
    double all = 0;
    for (const auto& lesson : plan.lessons) all += lesson.minutes;
    for (const auto& lesson : plan.lessons) CHECK(std::abs(lesson.minutes - all / n) < 0.5 * all / n);
  }
  CHECK(planned(course_with("minutes = 90\nhome_minutes = 30", "")).lessons.size() <
        planned(course_with("minutes = 90", "")).lessons.size());
}

TEST_CASE("too little time: each of the ways out that are named is enough, and less of it is not") {
  const std::string keys = "minutes = 60\nlessons = 4";
  const plan::Plan tight = planned(course_with(keys, ""));
  CHECK(rules(tight).find("split-impossible") != std::string::npos);
  const auto& s = tight.split;
  CHECK(s.over > 0);
  const auto over = [&](int lessons, int minutes, int home) {
    return planned(course_with("minutes = " + std::to_string(minutes) + "\nlessons = " + std::to_string(lessons) +
                                   "\nhome_minutes = " + std::to_string(home),
                               ""))
        .split.over;
  };
  CHECK(over(4 + s.more_lessons, 60, 0) == 0);
  CHECK(over(4 + s.more_lessons - 1, 60, 0) > 0);
  CHECK(over(4, 60 + s.more_minutes, 0) == 0);
  CHECK(over(4, 60 + s.more_minutes - 2, 0) > 0);
  CHECK(over(4, 60, s.more_home) == 0);
  CHECK(over(4, 60, s.more_home - 1) > 0);
}

TEST_CASE("locked lessons stay as they are; the rest is parted round them in order") {
  const std::string lessons =
      "[[lesson]]\nwork = [\"ring / 1..50\"]\nlocked = true\n[[lesson]]\n[[lesson]]\nwork = [\"ring / 51..140\"]\n[[lesson]]\n"
      "work = [\"border / pass 2\"]\nlocked = true\n";
  const course::Course course = course_with("minutes = 300", lessons);
  const plan::Plan plan = planned(course, plan::Lessons::split_again);
  check_covered(plan);
  const auto all = work(plan);
  REQUIRE(all.size() == 4);
  CHECK(all[0] == std::vector<std::string>{"ring / 1..50"});
  CHECK(all[3] == std::vector<std::string>{"border / pass 2"});
  CHECK_FALSE(all[1].empty());
  CHECK_FALSE(all[2].empty());
}

TEST_CASE("split again moves nothing where nothing has changed, and little where little has") {
  const course::Course course = course_with("minutes = 90\nlessons = 6", "");
  const plan::Plan first = planned(course);
  std::string lessons;
  for (const auto& lesson : first.lessons) {
    lessons += "[[lesson]]\nwork = [";
    for (const std::string& item : lesson.work) lessons += "\"" + item + "\", ";
    lessons += "]\n";
  }
  CHECK(work(planned(course_with("minutes = 90\nlessons = 6", lessons), plan::Lessons::split_again)) == work(first));
  const plan::Plan faster = planned(course_with("minutes = 90\nlessons = 6", lessons, "stitches_a_minute = { blocks = 2.2, cable = 4 }"),
                                    plan::Lessons::split_again);
  int same = 0, of = 0;
  for (std::size_t t = 0; t < first.trails.size(); ++t)
    for (const auto& section : first.trails[t].sections)
      for (int k = section.first; k <= section.last; ++k, ++of)
        for (const auto& now : faster.trails[t].sections)
          if (now.first <= k && k <= now.last && now.lesson == section.lesson) ++same;
  CHECK(same >= 0.9 * of);
}

TEST_CASE("what the class has seen is not new: a lesson may then begin two techniques at no cost") {
  const double fresh = planned(course_with("minutes = 1000\nlessons = 1", "")).split.cost;
  CHECK(planned(course_with("minutes = 1000\nlessons = 1\nseen_before = [\"cable\"]", "")).split.cost == doctest::Approx(fresh - 15));
}

TEST_CASE("beginners are slower") {
  const auto minutes = [](const std::string& habits) {
    double all = 0;
    for (const auto& lesson : planned(course_with("", "", habits)).lessons) all += lesson.minutes;
    return all;
  };
  CHECK(minutes("pace = \"beginner\"") > 1.5 * minutes("pace = \"practised\""));
}
