// The wash and the cutting out as work of lessons: behind all else, the wash first (Archer 1911, ch. XII), each with its minutes.
#include "plan/finishing.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "course_text.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "path = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string hem = part_text("hem", "edge", "[-20, -30]", "path = \"E 70, S 70, W 70, N 70\"");  // 4(L+1)+12 = 296 stitches (trade.md)
std::string lesson(const std::string& work, const std::string& more = "") { return "[[lesson]]\nwork = [" + work + "]\n" + more; }

course::Course taught(const std::string& keys, const std::string& habits, const std::string& more) {
  return course_from("format = 1\n[course]\ntitle = \"Test\"\n" + keys + "[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n[habits]\n" + habits + more);
}

std::vector<std::string> all_work(const plan::Plan& plan) {
  std::vector<std::string> all;
  for (const plan::LessonPlan& lesson : plan.lessons) all.insert(all.end(), lesson.work.begin(), lesson.work.end());
  return all;
}

double minutes(const plan::Plan& plan) {
  double all = 0;
  for (const plan::LessonPlan& lesson : plan.lessons) all += lesson.minutes;
  return all;
}

}  // namespace

TEST_CASE("where the program parts the work, an edge brings the wash and the cutting out, last and in this order") {
  for (const char* lessons : {"", "lessons = 2\n", "lessons = 5\n"}) {
    const auto plan = plan::make_plan(taught(lessons, "", hem + ring));
    REQUIRE(plan);
    const auto work = all_work(*plan);
    REQUIRE(work.size() >= 4);
    CHECK(work[work.size() - 2] == "wash");
    CHECK(work.back() == "cut out");
    CHECK(std::count(work.begin(), work.end(), "wash") == 1);
    CHECK(minutes(*plan) == doctest::Approx(60 / 6.0 + 296 / 5.0 + 20 + 296 / 40.0));
  }
  const auto plain = plan::make_plan(taught("", "", ring));
  REQUIRE(plain);
  CHECK(all_work(*plain) == std::vector<std::string>{"ring"});
}

TEST_CASE("their minutes are the teacher's own where she gives them") {
  const std::string habits = "wash_minutes = 45\n[habits.stitches_a_minute]\ncut-out = 10\n";
  const auto plan = plan::make_plan(taught("", habits, ring + hem + lesson("\"ring\", \"hem\"", "minutes = 300\n") + lesson("\"wash\"") + lesson("\"cut out\"")));
  REQUIRE(plan);
  REQUIRE(plan->lessons.size() == 3);
  CHECK(plan->lessons[1].minutes == doctest::Approx(45));
  CHECK(plan->lessons[2].minutes == doctest::Approx(29.6));
}

TEST_CASE("split again, they stay where they are locked and else come last, though lessons had them elsewhere") {
  const auto course = taught("", "", ring + hem + lesson("\"wash\"") + lesson("\"hem\"") + lesson("\"ring\", \"cut out\""));
  const auto again = plan::make_plan(course, {}, plan::Lessons::split_again);
  REQUIRE(again);
  const auto work = all_work(*again);
  CHECK(work[work.size() - 2] == "wash");
  CHECK(work.back() == "cut out");
  CHECK(std::count(work.begin(), work.end(), "wash") == 1);
  const auto locked = taught("", "", ring + hem + lesson("\"ring\", \"hem\"", "minutes = 300\n") + lesson("\"wash\", \"cut out\"", "locked = true\n") + lesson("\"ring\""));
  const auto stays = plan::make_plan(locked, {}, plan::Lessons::split_again);
  REQUIRE(stays);
  REQUIRE(stays->lessons.size() >= 2);
  CHECK(stays->lessons[1].work == std::vector<std::string>{"wash", "cut out"});
  const auto all = all_work(*stays);
  CHECK(std::count(all.begin(), all.end(), "cut out") == 1);
}

TEST_CASE("the cloth prepared in the first lesson takes its minutes there, and the split makes room for them") {
  std::string rings;  // four of 10 minutes each
  for (int i = 0; i < 4; ++i) rings += part_text("ring " + std::to_string(i), "blocks", "[" + std::to_string(50 * i) + ", 0]", "path = \"NE 4, SE 3, SW 3, NW 2\"");
  for (const int minutes : {0, 20}) {
    const auto plan = plan::make_plan(taught("lessons = 2\nminutes = 100\n", "prepare_minutes = " + std::to_string(minutes) + "\n", rings));
    REQUIRE(plan);
    REQUIRE(plan->lessons.size() == 2);
    CHECK(plan->lessons[0].prepare_minutes == minutes);
    CHECK(plan->lessons[1].prepare_minutes == 0);
    CHECK(plan->lessons[0].minutes == doctest::Approx(20 + minutes / 2.0));
    CHECK(plan->lessons[1].minutes == doctest::Approx(20 + minutes / 2.0));
  }
  const auto locked = plan::make_plan(taught("", "prepare_minutes = 30\n", ring + lesson("\"ring / 1..30\"", "locked = true\n") + lesson("\"ring / 31..60\"")), {}, plan::Lessons::split_again);
  REQUIRE(locked);
  CHECK(locked->lessons[0].minutes == doctest::Approx(35));
}
