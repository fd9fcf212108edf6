// Whole plans of small courses, held against facts worked out by hand.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "course_text.h"
#include "plan/plan.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"");
const std::string border =
    part_text("border", "cable", "[8, -30]", "path = \"E 12, SE 26, S 12, SW 26, W 12, NW 26, N 12, NE 26\"\nrows = 3\nrows_lie = \"right\"");

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

std::string lesson(const std::string& work) { return "[[lesson]]\nwork = [" + work + "]\n"; }

}  // namespace

TEST_CASE("trails stand in the order of part and pass, each stitch of a pass once") {
  const course::Course course = course_of(ring + border);
  const plan::Plan plan = planned(course);
  REQUIRE(plan.trails.size() == 3);
  CHECK(plan.trails[0].part == 0);
  CHECK(plan.trails[2].pass == 2);
  for (const auto& trail : plan.trails) {
    std::map<cloth::Stitch, int> worked, wanted;
    for (const auto& w : trail.trail.stitches) ++worked[cloth::Stitch{w.up, w.down}.normal()];
    for (const auto& run : course.parts[trail.part].work.passes[trail.pass - 1].runs)
      for (const auto& stitch : run.stitches) ++wanted[stitch.normal()];
    CHECK(worked == wanted);
  }
}

TEST_CASE("without lessons the work is laid out in the craft's order and within the minutes") {
  const course::Course course = course_of(border + ring, "stitches_a_minute = { blocks = 1, cable = 2 }");
  const plan::Plan plan = planned(course);
  REQUIRE(!plan.lessons.empty());
  CHECK(plan.lessons[0].work[0].substr(0, 4) == "ring");
  int stitches = 0;
  for (const auto& lesson : plan.lessons) {
    stitches += lesson.stitches;
    CHECK(lesson.minutes <= lesson.minutes_given * 1.02);
  }
  int wanted = 0;
  for (const auto& trail : plan.trails) wanted += static_cast<int>(trail.trail.stitches.size());
  CHECK(stitches == wanted);
}

TEST_CASE("sections cover each trail without gap or overlap, laid out or written") {
  for (const std::string& lessons : {std::string(), lesson("\"ring / 1..20\"") + lesson("\"ring / 21..60\", \"border\"")}) {
    const plan::Plan plan = planned(course_of(ring + border + lessons));
    for (const auto& trail : plan.trails) {
      int next = 0;
      for (const auto& section : trail.sections) {
        CHECK(section.first == next);
        next = section.last + 1;
      }
      CHECK(next == static_cast<int>(trail.trail.stitches.size()));
    }
  }
}

TEST_CASE("every section has its count-in, and counting the legs from the landmark ends in the hole") {
  const plan::Plan plan = planned(course_of(ring + border + lesson("\"ring / 1..20\"") + lesson("\"ring / 21..60\", \"border\"")));
  std::size_t sections = 0;
  for (const auto& trail : plan.trails) sections += trail.sections.size();
  CHECK(plan.count_ins.size() == sections);
  for (const auto& count_in : plan.count_ins) {
    cloth::Hole at = count_in.count.landmark.hole;
    for (const auto& leg : count_in.count.legs) at = at + leg.threads * cloth::step(leg.way);
    CHECK(at == count_in.hole);
    CHECK(plan.trails[count_in.trail].trail.stitches[count_in.stitch].up == count_in.hole);
    REQUIRE(count_in.proof);
    CHECK(count_in.proof->landmark.hole != count_in.count.landmark.hole);
  }
}

TEST_CASE("work named twice is told and done once; what is left out stays out") {
  const plan::Plan plan = planned(course_of(ring + lesson("\"ring / 1..30\"") + lesson("\"ring / 21..40\"")));
  REQUIRE(plan.findings.size() == 1);
  CHECK(plan.findings[0].rule == "work-doubled");
  CHECK(plan.findings[0].numbers.at("n") == 10);
  REQUIRE(plan.trails[0].sections.size() == 2);
  CHECK(plan.trails[0].sections[1].first == 30);
  CHECK(plan.trails[0].sections[1].last == 39);
}

TEST_CASE("the thread of a ring: 20 + 4 sqrt 17 threads a block and 4 between (geometry), at 22 an inch, with take-up") {
  const plan::Plan plan = planned(course_of(part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8, SE 7, SW 7, NW 6\"")));
  double mm = 0;
  for (const auto& lesson : plan.lessons) mm += lesson.thread_mm.at("heavy");
  // 1129.79 threads = 1304.4 mm on the cloth without ends; a change of thread counts nothing of the 4 threads between two blocks.
  const double changes = static_cast<double>(plan.trails[0].trail.ends.size() - 1) * 4 * 25.4 / 22;
  CHECK(mm / 1.06 == doctest::Approx(1304.4 - changes).epsilon(0.001));
}

TEST_CASE("counts to be sure add up to the round: octagon of 92 and 88 stitches") {
  const plan::Plan plan = planned(course_of(
      part_text("border", "cable", "[24, -38]", "path = \"E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34\"\nrows = 2\nrows_lie = \"right\"")));
  const auto& lines = plan.counts[0];
  std::vector<int> sum{0, 0}, round;
  for (const auto& line : lines) {
    if (line.what == plan::CountLine::whole_round) {
      round = line.numbers;
      continue;
    }
    for (int row : {0, 1}) sum[row] += line.legs * line.numbers[row];
  }
  CHECK(round == std::vector<int>{92, 88});
  CHECK(sum == round);
}

TEST_CASE("begin_at is taken where a trail can begin there, told where not") {
  const auto with = [](const std::string& begin) {
    return course_of(part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"\nbegin_at = " + begin));
  };
  const plan::Plan free = planned(course_of(ring));
  const cloth::Hole other = free.trails[0].trail.stitches[10].up;
  const plan::Plan told = planned(with("[" + std::to_string(other.x) + ", " + std::to_string(other.y) + "]"));
  CHECK(told.trails[0].trail.stitches[0].up == other);
  const plan::Plan missed = planned(with("[90, 90]"));
  REQUIRE(missed.findings.size() == 1);
  CHECK(missed.findings[0].rule == "begin-at-missed");
}

TEST_CASE("a stopped planning says so") {
  std::stop_source source;
  source.request_stop();
  const auto plan = plan::make_plan(course_of(ring), source.get_token());
  REQUIRE(!plan);
  CHECK(plan.error().kind == base::TroubleKind::cancelled);
}

TEST_CASE("the same course gives the same plan") {
  const course::Course course = course_of(ring + border);
  const plan::Plan a = planned(course), b = planned(course);
  REQUIRE(a.trails.size() == b.trails.size());
  for (std::size_t t = 0; t < a.trails.size(); ++t) {
    CHECK(a.trails[t].trail.stitches.front().up == b.trails[t].trail.stitches.front().up);
    CHECK(a.trails[t].trail.ends == b.trails[t].trail.ends);
  }
}

TEST_CASE("a repeated part: a trail for each place and pass, passes side by side, work named once, all its stitches worked once") {
  const std::string band =
      part_text("band", "cable", "[10, -60]", "path = \"E 24, SE 12\"\nrows = 3\nmirror = \"xy\"\nabout = [-0.5, 0]");
  const course::Course course = course_of(ring + band + "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"band\"]\n");
  const plan::Plan plan = planned(course);
  REQUIRE(plan.trails.size() == 9);
  for (int t = 1; t < 9; ++t) {
    CHECK(plan.trails[t].pass == (t < 5 ? 1 : 2));
    CHECK(plan.trails[t].place == (t - 1) % 4);
    CHECK(plan.trails[t].trail.stitches.size() == plan.trails[t < 5 ? 1 : 5].trail.stitches.size());
  }
  CHECK(plan.lessons[1].work == std::vector<std::string>{"band / pass 1", "band / pass 2"});
  CHECK(plan.count_ins.size() == 9);
}

TEST_CASE("ranges of a repeated part's work count on through its places") {
  const std::string four = part_text("four", "blocks", "[8, 8]", "path = \"E 1\"\nturn = 4\nabout = [0, 0]");
  const plan::Plan plan = planned(course_of(four + "[[lesson]]\nwork = [\"four / 1..7\"]\n[[lesson]]\nwork = [\"four / 8..20\"]\n"));
  CHECK(plan.lessons[0].work == std::vector<std::string>{"four / 1..7"});
  CHECK(plan.lessons[0].stitches == 7);
  CHECK(plan.lessons[1].work == std::vector<std::string>{"four / 8..20"});
  CHECK(plan.findings.empty());
}
