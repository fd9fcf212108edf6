// Supplies against thread paths worked out by geometry alone (kloster blocks: five stitches over four threads; Archer, Needlecraft, 1911,
// ch. XVII, pp. 190-197) and against the arithmetic of tex (ISO 1144: grams of 1000 m).
#include "plan/supplies.h"

#include <algorithm>
#include <cmath>

#include "course_text.h"

namespace {

plan::Plan planned(const course::Course& course) {
  auto plan = plan::make_plan(course);
  REQUIRE(plan);
  return std::move(*plan);
}

std::string blocks(const std::string& path, const std::string& first = "upright") {
  return part_text("ring", "blocks", "[0, 0]", "first = \"" + first + "\"\npath = \"" + path + "\"");
}

/// One thread from beginning to end: a working length that nothing exceeds.
const std::string one_thread = "working_length_cm = 300\n";

double path_threads(const plan::Supplies::Thread& thread) { return (thread.front_mm + thread.back_mm) / (25.4 / 22); }

course::Course with_thread(const std::string& keys) {
  return course_from(
      "format = 1\n[course]\ntitle = \"T\"\nstudents = 12\nspares = 1\n[cloth]\ncount = 22\nprice = \"12.25\"\ncurrency = \"NOK\"\n"
      "[thread.heavy]\n" +
      keys + "\n[habits]\n" + one_thread + blocks("NE 8, SE 7, SW 7, NW 6", "across"));
}

}  // namespace

TEST_CASE("one block is 36.49 threads, two with the step between them 40.49 more; at 22 threads an inch 42.1 and 46.8 mm") {
  const double one = path_threads(planned(course_of(blocks("E 1"))).supplies.threads.at(0));
  CHECK(one == doctest::Approx(20 + 4 * std::sqrt(17.0)));
  CHECK(std::abs(one - 36.49) < 0.005);
  const double two = path_threads(planned(course_of(blocks("NE 2"))).supplies.threads.at(0));
  CHECK(std::abs(two - one - 40.49) < 0.005);
  CHECK(std::abs(one * 25.4 / 22 - 42.1) < 0.05);
  CHECK(std::abs((two - one) * 25.4 / 22 - 46.8) < 0.05);
}

TEST_CASE("closed diamonds of 4, 6 and 8 blocks a side: 481.91, 805.85, 1129.79 threads; the last 1304.4 mm at 22") {
  const std::pair<const char*, double> rings[] = {
      {"NE 4, SE 3, SW 3, NW 2", 481.91}, {"NE 6, SE 5, SW 5, NW 4", 805.85}, {"NE 8, SE 7, SW 7, NW 6", 1129.79}};
  for (const auto& [path, threads] : rings) {
    CAPTURE(path);
    const auto plan = planned(course_of(blocks(path, "across"), one_thread));
    REQUIRE(plan.supplies.threads.size() == 1);
    CHECK(plan.supplies.threads[0].lengths == 1);
    CHECK(std::abs(path_threads(plan.supplies.threads[0]) - threads) < 0.005);
  }
  const auto ring = planned(course_of(blocks("NE 8, SE 7, SW 7, NW 6", "across"), one_thread)).supplies.threads[0];
  CHECK(std::abs(ring.front_mm + ring.back_mm - 1304.4) < 0.05);
}

TEST_CASE("take-up, tails, waste: each its own setting, and they add up") {
  const auto plan = planned(
      course_of(blocks("NE 8, SE 7, SW 7, NW 6", "across"), one_thread + "take_up = 0.25\ntail_cm = 10\nfirst_tail_cm = 15\nwaste = 0.5"));
  const auto thread = plan.supplies.threads.at(0);
  const double path = 1129.79 * 25.4 / 22;
  CHECK(std::abs(thread.take_up_mm - path * 0.25) < 0.05);
  CHECK(thread.tails_mm == doctest::Approx(150 + 100));  // nothing is stitched where it begins
  CHECK(thread.cut_mm == doctest::Approx(3000));
  CHECK(std::abs(thread.metres() - (path * 1.25 + 250) * 1.5 / 1000) < 0.001);
  CHECK(thread.metres_to_buy() == doctest::Approx(4.5));  // one whole length of 3 m, and half as much for waste
}

TEST_CASE("a length that ends counts its own tails; lengths are those of the trails") {
  const auto plan =
      planned(course_of(blocks("NE 8, SE 7, SW 7, NW 6", "across"), "working_length_cm = 50\ntail_cm = 8\nfirst_tail_cm = 12"));
  const auto thread = plan.supplies.threads.at(0);
  CHECK(thread.lengths == static_cast<int>(plan.trails[0].trail.ends.size()));
  CHECK(thread.lengths > 3);
  CHECK(thread.cut_mm == doctest::Approx(500 * thread.lengths));
  CHECK(thread.tails_mm == doctest::Approx(160 * thread.lengths + 40));
}

TEST_CASE("balls: the table's, the teacher's own metres, or her grams by tex") {
  // pearl cotton 3, 5, 8, 12: 333, 200, 125, 83 tex, from makers' labels by memory (ISO 1144)
  for (const auto& [pearl, wanted] : {std::pair("pearl = 3", 333), {"pearl = 5", 200}, {"pearl = 8", 125}, {"pearl = 12", 83}})
    CHECK(std::round(*course::tex(with_thread(pearl).threads[0])) == wanted);
  const auto metres = [](const char* keys) { return course::ball_metres(with_thread(keys).threads[0]); };
  CHECK(metres("pearl = 5") == 25);
  CHECK(metres("pearl = 5\nball_m = 42") == 42);
  CHECK(*metres("pearl = 5\nball_g = 50") == doctest::Approx(250));
  CHECK(*metres("tex = 125\nball_g = 10") == doctest::Approx(80));
  CHECK_FALSE(metres("tex = 125"));
  CHECK_FALSE(metres("pearl = 10"));
}

TEST_CASE("the class shares balls, spare sets among them, and prices are exact") {
  const course::Course course = with_thread("pearl = 5\nprice = \"3.335\"\ncurrency = \"EUR\"");
  const auto plan = planned(course);
  const auto& thread = plan.supplies.threads.at(0);
  CHECK(plan.supplies.sets == 13);
  CHECK(thread.metres_to_buy() == doctest::Approx(3.3));
  CHECK(plan::balls(course, thread, 1) == 1);
  CHECK(plan::balls(course, thread, 13) == 2);  // 42.9 m of 25 m
  const auto costs = plan::costs(course, plan, 13);
  CHECK(costs.at("EUR").text() == "6.670");
  CHECK(costs.at("NOK").text() == "159.25");
}

TEST_CASE("a sum of whole balls is not one ball more") {
  course::Course course = with_thread("pearl = 5\nball_m = 3.3");
  CHECK(plan::balls(course, planned(course).supplies.threads.at(0), 13) == 13);
}

TEST_CASE("two names of one thread are bought together, another colour by itself") {
  const std::string second = part_text("more", "blocks", "[40, 0]", "path = \"E 1\"");
  const auto course_with = [&](const std::string& colour) {
    std::string part = second;
    part.replace(part.find("heavy"), 5, "edge");
    return course_from(
        "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n[thread.edge]\npearl = 5\ncolour = \"" +
        colour + "\"\n" + blocks("E 1") + part);
  };
  const auto same = planned(course_with("#FFFFFF")).supplies.threads;
  REQUIRE(same.size() == 1);
  CHECK(same[0].names == std::vector<std::string>{"heavy", "edge"});
  CHECK(same[0].front_mm == doctest::Approx(40 * 25.4 / 22));
  CHECK(planned(course_with("#EEEEEE")).supplies.threads.size() == 2);
}

TEST_CASE("cloth of two counts: a block's thread, its size and its bars by the millimetres of each way") {
  const double across = 25.4 / 22, down = 25.4 / 28;
  const std::string head = "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = [22, 28]\nmargin_mm = 50\n[thread.heavy]\npearl = 5\n[habits]\n" + one_thread;
  const auto plan = planned(course_from(head + blocks("E 1")));
  const auto& block = plan.supplies.threads.at(0);
  CHECK(block.front_mm == doctest::Approx(5 * 4 * down));
  CHECK(block.back_mm == doctest::Approx(4 * std::hypot(across, 4 * down)));
  const course::Course lying = course_from(head + blocks("S 1", "across"));
  CHECK(planned(lying).supplies.threads.at(0).front_mm == doctest::Approx(5 * 4 * across));
  CHECK(course::size_threads(lying) == cloth::Hole{4 + static_cast<int>(std::ceil(100 / across)), 4 + static_cast<int>(std::ceil(100 / down))});
}

TEST_CASE("bars on cloth of two counts: each weave goes over and under four threads of the other way") {
  const double across = 25.4 / 22, down = 25.4 / 28;
  const auto course = course_from(
      "format = 1\n[course]\ntitle = \"T\"\n[cloth]\ncount = [22, 28]\n[thread.heavy]\npearl = 5\n[thread.fine]\npearl = 8\n[habits]\n"
      "working_length_cm = 300\ntake_up = 0\n" + blocks("NE 8, SE 7, SW 7, NW 6", "across") +
      "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"fine\"\nwithin = [\"ring\"]\nweaves = 6\n");
  const auto plan = planned(course);
  const auto route = std::find_if(plan.routes.begin(), plan.routes.end(), [](const auto& r) { return r.stage == course::Stage::bars; });
  REQUIRE(route != plan.routes.end());
  REQUIRE(route->items.size() > 20);
  const auto way = [&](cloth::Hole a, cloth::Hole b) { return std::hypot((a.x - b.x) * across, (a.y - b.y) * down); };
  double mm = 0;
  for (std::size_t i = 0; i < route->items.size(); ++i) {
    const auto& item = route->items[i];
    const bool lies = item.from.y == item.to.y;
    mm += 6 * 2 * 4 * (lies ? down : across);
    if (i > 0 && item.behind >= 0) mm += way(route->items[i - 1].to, item.from);
  }
  const auto fine = std::find_if(plan.supplies.threads.begin(), plan.supplies.threads.end(), [](const auto& t) { return t.names[0] == "fine"; });
  REQUIRE(fine != plan.supplies.threads.end());
  CHECK(fine->front_mm == doctest::Approx(mm));
}
