// Bars and fillings in whole plans: lessons and their stretches, thread, minutes, what is withheld.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "course_text.h"
#include "plan/plan.h"
#include "plan/routes.h"

namespace {

const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 6, SE 5, SW 5, NW 4\"");

std::string heart(const std::string& more = "") {
  return "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n" + more + "\n";
}
std::string lesson(const std::string& work) { return "[[lesson]]\nwork = [" + work + "]\n"; }

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

}  // namespace

TEST_CASE("written lessons: stretches of bars and fillings, in the work's own words") {
  const auto course = course_of(ring + heart("fillings = [{ kind = \"square filet\" }]") + lesson("\"ring\"") +
                                lesson("\"heart / cut\", \"heart / bars / 1..6\"") + lesson("\"heart / bars / 7..16\", \"heart / fillings\""));
  const auto plan = planned(course);
  REQUIRE(plan.routes.size() == 2);
  CHECK(plan.routes[0].items.size() == 16);  // 4 m^2 bars with m = 2 (geometry)
  CHECK(plan.routes[1].items.size() == 13);
  CHECK(plan.lessons[1].work == std::vector<std::string>{"heart / cut", "heart / bars / 1..6"});
  CHECK(plan.lessons[2].work == std::vector<std::string>{"heart / bars / 7..16", "heart / fillings"});
  CHECK(plan.lessons[2].minutes == doctest::Approx(10 * plan.routes[0].items[0].weaves / 3.0 + 13 * 4 / 2.0));  // by the table of speeds
  const double bar_mm = plan.routes[0].threads(0, 5) * 25.4 / 22 * 1.06;
  CHECK(plan.lessons[1].thread_mm.at("heavy") == doctest::Approx(bar_mm));
}

TEST_CASE("every length of thread lasts for what is worked with it") {
  for (const char* length : {"30", "50", "80"}) {
    const auto course = course_of(ring + heart("fillings = [{ kind = \"dove's eye\" }]"), std::string("working_length_cm = ") + length);
    const auto plan = planned(course);
    const plan::PartRoute& route = plan.routes[0];
    const double usable = (std::stod(length) - 16) * 10;
    for (std::size_t l = 0; l < route.lengths.size(); ++l) {
      const int end = l + 1 < route.lengths.size() ? route.lengths[l + 1] : static_cast<int>(route.items.size());
      const double used = route.threads(route.lengths[l], end - 1) * 25.4 / 22 * 1.06;
      CHECK((used <= usable + 1e-6 || end == route.lengths[l] + 1));
      CHECK(std::binary_search(route.starts.begin(), route.starts.end(), route.lengths[l]));
    }
  }
}

TEST_CASE("the program's own split: cutting, bars, fillings behind one another; every bar in one lesson") {
  const auto course = course_of(ring + heart("fillings = [{ kind = \"wheel\" }]"));
  const auto plan = planned(course);
  const guide::Section* last = nullptr;
  for (const plan::PartRoute& route : plan.routes) {
    int next = 0;
    for (const guide::Section& section : route.sections) {
      CHECK(section.first == next);
      next = section.last + 1;
      CHECK(std::pair(plan.cuttings[0].lesson, plan.cuttings[0].item) < std::pair(section.lesson, section.item));
      if (last) CHECK(std::pair(last->lesson, last->item) < std::pair(section.lesson, section.item));
      last = &section;
    }
    CHECK(next == static_cast<int>(route.items.size()));
  }
  double minutes = 0;
  for (const auto& l : plan.lessons) minutes += l.minutes;
  CHECK(plan.lessons.size() > 1);
  for (const auto& l : plan.lessons) CHECK(l.minutes <= l.room + 1e-6);
  CHECK(minutes > 0);
}

TEST_CASE("thread of bars is bought as well") {
  const auto with = planned(course_of(ring + heart())), without = planned(course_of(ring));
  const double bars = with.routes[0].threads(0, 15) * 25.4 / 22;
  CHECK(with.supplies.threads[0].front_mm - without.supplies.threads[0].front_mm == doctest::Approx(bars));
  CHECK(with.supplies.threads[0].lengths - without.supplies.threads[0].lengths == static_cast<int>(with.routes[0].lengths.size()));
}

TEST_CASE("a cutting that is withheld has no bars") {
  const auto plan = planned(course_of(ring + heart() + lesson("\"heart\"") + lesson("\"ring\"")));
  CHECK(plan.cuttings[0].cutting.cuts.empty());
  for (const auto& route : plan.routes) CHECK(route.items.empty());
}

TEST_CASE("a repeated part: rules with holes come again at every place") {
  const std::string rings = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"\nturn = 4\nabout = [14, 42]");
  const auto plan = planned(course_of(rings + heart("zone = [14, 2]\nfillings = [{ kind = \"wheel\", where = [[14, 2]] }]\nturn = 4\nabout = [14, 42]")));
  CHECK(plan.cuttings[0].cutting.openings.size() == 20);
  CHECK(plan.routes[1].items.size() == 4);
}
