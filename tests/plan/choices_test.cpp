// What teachers do differently is a choice of the course file: each has a stated default and changes the plan by itself, and nothing else.
// The words that go with them: tests/picture/choices_words_test.cpp.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "course_text.h"
#include "plan/plan.h"

namespace {

plan::Plan planned(const std::string& parts, const std::string& habits = "") {
  auto plan = plan::make_plan(course_of(parts, habits));
  REQUIRE(plan);
  return std::move(*plan);
}

const trail::Trail& trail_of(const plan::Plan& plan) { return plan.trails.at(0).trail; }

std::string ring(const std::string& more = "") {
  return part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 6, SE 5, SW 5, NW 4\"\n" + more);
}
std::string octagon(const std::string& more = "", const std::string& path = "E 12, SE 34, S 12, SW 34, W 12, NW 34, N 12, NE 34") {
  return part_text("border", "cable", "[24, -38]", "path = \"" + path + "\"\n" + more);
}
std::string edge(const std::string& more = "") { return part_text("hem", "edge", "[0, 0]", "path = \"E 40, S 40, W 40, N 40\"\n" + more); }

/// Is the stitch's lower end, its last hole, nearer to the middle of the ring than its first?
int going_inwards(const plan::Plan& plan, cloth::Hole middle) {
  int n = 0;
  for (const trail::Worked& w : trail_of(plan).stitches) n += cloth::distance(w.down, middle) < cloth::distance(w.up, middle) ? 1 : 0;
  return n;
}

std::set<cloth::Stitch> spare(const plan::Plan& plan) {
  std::set<cloth::Stitch> all;
  for (const trail::Worked& w : trail_of(plan).stitches)
    if (w.over) all.insert(cloth::Stitch{w.up, w.down}.normal());
  return all;
}

int steps_back(const plan::Plan& plan) {
  const auto& all = trail_of(plan).stitches;
  return static_cast<int>(std::count_if(all.begin(), all.end(), [](const trail::Worked& w) { return w.backward; }));
}

}  // namespace

TEST_CASE("blocks: the needle goes down on the side that will be cut, or comes up there") {
  const cloth::Hole middle{24, 2};  // 8n - 4 = 44 threads both ways, the first block at the left corner
  CHECK(going_inwards(planned(ring()), middle) == 100);
  CHECK(going_inwards(planned(ring("cut_side = \"down\"")), middle) == 100);
  CHECK(going_inwards(planned(ring("cut_side = \"up\"")), middle) == 0);
}

TEST_CASE("blocks: which way the first one's stitches run, and joined or apart") {
  const auto upright = [](const plan::Plan& plan) {
    const trail::Worked& w = trail_of(plan).stitches.front();
    return w.up.x == w.down.x;
  };
  CHECK(upright(planned(part_text("row", "blocks", "[0, 0]", "path = \"E 5\""))));
  CHECK_FALSE(upright(planned(part_text("row", "blocks", "[0, 0]", "first = \"across\"\npath = \"S 5\""))));
  // joined rows share end stitches, 4n + 1; apart they do not, 5n (geometry; Archer)
  CHECK(trail_of(planned(part_text("row", "blocks", "[0, 0]", "path = \"E 5\""))).stitches.size() == 21);
  CHECK(trail_of(planned(part_text("row", "blocks", "[0, 0]", "path = \"E 5 apart\""))).stitches.size() == 25);
}

TEST_CASE("cable: the spare stitch of a slant at its end or at its start; the same cable walked backwards is the other choice") {
  const plan::Plan plain = planned(octagon()), end = planned(octagon("step_back = \"end\"")),
                   start = planned(octagon("step_back = \"start\""));
  CHECK(spare(plain) == spare(end));
  CHECK(steps_back(end) == 4);  // geometry, from the laws: an octagon has one a slant
  CHECK(steps_back(start) == 4);
  CHECK(spare(start).size() == 4);
  for (const cloth::Stitch& s : spare(start)) CHECK_FALSE(spare(end).contains(s));
  // the path from its end to its start, its rows on the same side of the cloth: the end of each slant is where its start was
  const std::string back = "SW 34, S 12, SE 34, E 12, NE 34, N 12, NW 34, W 12";
  CHECK(spare(planned(octagon("rows_lie = \"left\"", back))) == spare(start));
  CHECK(spare(planned(octagon("rows_lie = \"left\"\nstep_back = \"start\"", back))) == spare(end));
  // on straight sides alone the counts allow one place only
  const std::string square = "E 40, S 40, W 40, N 40";
  CHECK(spare(planned(octagon("step_back = \"start\"", square))) == spare(planned(octagon("", square))));
}

TEST_CASE("cable: level pairs and law 2 hold for either choice, on random rings and open ways") {
  for (const char* const path : {"E 12, SE 8, E 10, NE 6, E 4", "SE 20, SW 12, NW 20, NE 12", "E 6, SE 4, S 6, SW 4, W 6, NW 4, N 6, NE 4",
                                 "SE 2, E 2, NE 2", "S 10, SE 14, NE 14, N 10"})
    for (const char* const lie : {"right", "left"})
      for (const char* const at : {"end", "start"}) {
        CAPTURE(path);
        const auto course = course_of(octagon(std::string("rows_lie = \"") + lie + "\"\nstep_back = \"" + at + "\"", path));
        const auto plan = plan::make_plan(course);
        REQUIRE(plan);
        if (plan->trails.empty()) continue;  // its inner row has shrunk to nothing
        const auto& all = plan->trails[0].trail.stitches;
        CHECK(all.size() == course.parts[0].work.stitches.size());
        for (std::size_t k = 1; k < all.size(); ++k) CHECK(all[k].up != all[k - 1].down);
      }
}

TEST_CASE("edge: five or seven stitches in an outer corner (from a practising reader; common practice, no source)") {
  CHECK(trail_of(planned(edge())).stitches.size() == 176);  // 4(L + 1) + 12 round a square of 40 (geometry)
  const plan::Plan seven = planned(edge("corner = 7"));
  CHECK(trail_of(seven).stitches.size() == 184);
  std::set<cloth::Hole> ends;
  for (const trail::Worked& w : trail_of(seven).stitches)
    if (w.down == cloth::Hole{40, 0}) ends.insert(w.up - w.down);
  CHECK(ends == std::set<cloth::Hole>{{0, -4}, {1, -4}, {2, -4}, {3, -3}, {4, -2}, {4, -1}, {4, 0}});
  for (const int over : {4, 5, 6, 7, 8}) {
    const plan::Plan plan = planned(edge("corner = 7\nover = " + std::to_string(over)));
    std::map<cloth::Hole, std::set<cloth::Hole>> corner;
    for (const trail::Worked& w : trail_of(plan).stitches) corner[w.down].insert(w.up);
    CHECK(std::count_if(corner.begin(), corner.end(), [](const auto& c) { return c.second.size() == 7; }) == 4);
    CHECK(trail_of(plan).stitches.size() == 184);
  }
}

TEST_CASE("edge before the cutting or after it") {
  const std::string heart = "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n";
  const std::string hem = part_text("hem", "edge", "[-20, -60]", "path = \"E 100, S 100, W 100, N 100\"");
  const auto edge_first = [&](const std::string& habits) {
    const plan::Plan plan = planned(ring() + hem + heart, habits);
    const guide::Section& section = plan.trails.at(1).sections.at(0);
    return std::pair(section.lesson, section.item) < std::pair(plan.cuttings.at(0).lesson, plan.cuttings.at(0).item);
  };
  CHECK(edge_first(""));
  CHECK(edge_first("edge = \"before cutting\""));
  CHECK_FALSE(edge_first("edge = \"after\""));
}

TEST_CASE("bars woven or wrapped, and how many weaves") {
  const auto items = [&](const std::string& more) {
    const plan::Plan plan =
        planned(ring() + "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"heavy\"\nwithin = [\"ring\"]\n" + more);
    REQUIRE(!plan.routes.empty());
    return plan.routes[0].items;
  };
  const auto woven = items(""), wrapped = items("bars = \"wrapped\"\n"), five = items("weaves = 5\n");
  CHECK(woven.size() == wrapped.size());
  CHECK(std::all_of(five.begin(), five.end(), [](const cutwork::RouteItem& item) { return item.weaves == 5; }));
  CHECK(woven[0].weaves != 5);
}

TEST_CASE("eyelets: down in the middle or up in it") {
  const std::string eye = "[[part]]\nname = \"eye\"\nkind = \"eyelet\"\nthread = \"heavy\"\ncentres = [[3, 5]]\nsize = 8\n";
  for (const auto& [habit, down] :
       {std::pair("", true), {"eyelet_needle = \"down in the middle\"", true}, {"eyelet_needle = \"up\"", false}}) {
    const plan::Plan plan = planned(eye, habit);
    for (const trail::Worked& w : trail_of(plan).stitches) CHECK((down ? w.down : w.up) == cloth::Hole{3, 5});
  }
}

TEST_CASE("working length, also by kind, and tails; the pace of the class and speeds of one's own") {
  const auto threads = [&](const std::string& habits) { return trail_of(planned(octagon(), habits)).ends.size(); };
  CHECK(threads("working_length_cm = 50") == threads(""));
  CHECK(threads("working_length_cm = 100") < threads(""));
  CHECK(threads("cable_length_cm = 100") == threads("working_length_cm = 100"));
  CHECK(threads("edge_length_cm = 100") == threads(""));
  CHECK(threads("tail_cm = 16") > threads(""));
  const auto minutes = [&](const std::string& habits) { return planned(ring(), habits).lessons.at(0).minutes; };
  CHECK(minutes("stitches_a_minute = { blocks = 6 }") == doctest::Approx(minutes("")));
  CHECK(minutes("stitches_a_minute = { blocks = 3 }") == doctest::Approx(2 * minutes("")));
  CHECK(minutes("pace = \"beginner\"") > minutes(""));
}
