// Buttonhole edges on pages: numbers of loops, changes of thread and ends; the cutting line keeps off every stitch (geometry).
#include <doctest/doctest.h>

#include <cmath>

#include "pages_of.h"
#include "picture/cut_out.h"
#include "picture/numbering.h"
#include "picture/overlaps.h"
#include "plan/plan.h"

namespace {

trail::Trail edge(const std::string& path, const std::string& more = "") {
  const auto plan = plan::make_plan(course_of(part_text("hem", "edge", "[0, 0]", "path = \"" + path + "\"\n" + more)));
  REQUIRE(plan);
  return plan->trails.at(0).trail;
}

std::string text_at(const std::vector<picture::HoleNumbers>& holes, cloth::Hole hole) {
  for (const picture::HoleNumbers& one : holes)
    if (one.hole == hole) return one.text();
  return "";
}

double distance(const picture::CutPoint& p, const cloth::Stitch& s) {
  const double dx = s.b.x - s.a.x, dy = s.b.y - s.a.y;
  const double t = std::clamp(((p.x - s.a.x) * dx + (p.y - s.a.y) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
  return std::hypot(p.x - s.a.x - t * dx, p.y - s.a.y - t * dy);
}

}  // namespace

TEST_CASE("odd numbers come up on the ridge, even ones go down inside; 1 and 3 are one hole at a start") {
  const trail::Trail trail = edge("E 30");
  const auto& s = trail.stitches;
  const auto holes = picture::numbers_of(trail, 0, 2);
  CHECK(text_at(holes, s[0].up) == "1, 3");
  CHECK(text_at(holes, s[0].down) == "2");
  CHECK(text_at(holes, s[1].down) == "4");
  CHECK(text_at(holes, s[1].up) == "5");
  const auto later = picture::numbers_of(trail, 5, 6);  // 1 is where the needle came up last
  CHECK(text_at(later, s[4].up) == "1");
  CHECK(text_at(later, s[5].down) == "2");
  CHECK(text_at(later, s[5].up) == "3");
}

TEST_CASE("an outer corner: five even numbers in the corner hole; an inner one: two odd ones on the ridge") {
  const trail::Trail outer = edge("E 10, S 10", "out = \"left\"");
  CHECK(text_at(picture::numbers_of(outer, 8, 16), {10, 0}) == "6, 8 … 14");
  const trail::Trail inner = edge("E 10, N 10", "out = \"left\"");
  CHECK(text_at(picture::numbers_of(inner, 4, 9), {6, -4}) == "7, 9");
}

TEST_CASE("where the thread changes the old one goes down and the new one comes up in the next hole of the ridge") {
  const trail::Trail trail = edge("E 90");
  REQUIRE(trail.ends.size() > 1);
  const int k = trail.ends[1];
  const auto holes = picture::numbers_of(trail, k - 2, k + 1);
  CHECK(text_at(holes, trail.stitches[static_cast<std::size_t>(k - 1)].up) == "5");
  CHECK(text_at(holes, trail.stitches[static_cast<std::size_t>(k)].up) == "6, 7, 9");
  CHECK(text_at(holes, trail.stitches[static_cast<std::size_t>(k)].down) == "8");
  CHECK(picture::loop_up_number(trail, k + 1, k - 2) == 11);
}

TEST_CASE("the end goes down in the first stitch's hole, of an open edge over its last loop") {
  const trail::Trail round = edge("E 20, S 20, W 20, N 20");
  const int last = static_cast<int>(round.stitches.size()) - 1;
  CHECK(text_at(picture::numbers_of(round, last - 1, last, picture::Ending::numbered), round.stitches[0].up) == "6");
  const trail::Trail open = edge("E 6");
  CHECK(text_at(picture::numbers_of(open, 5, 6, picture::Ending::numbered), open.stitches[6].up) == "5, 6");
}

TEST_CASE("the cutting line lies outside the ridge and keeps off every stitch") {
  for (const char* path :
       {"E 40, S 40, W 40, N 40", "E 20, 3 x (S 9, E 9), S 20, W 47, N 47", "E 30, N 12, E 12, S 12, E 30", "E 12, N 20, W 30"})
    for (const char* out : {"left", "right"}) {
      CAPTURE(path);
      CAPTURE(out);
      const auto plan =
          plan::make_plan(course_of(part_text("hem", "edge", "[0, 0]", "path = \"" + std::string(path) + "\"\nout = \"" + out + "\"")));
      REQUIRE(plan);
      if (plan->trails.empty()) continue;  // an edge that meets itself
      const trail::Trail& trail = plan->trails[0].trail;
      const auto line = picture::cut_line(trail);
      CHECK(line.size() > trail.stitches.size() / 2);
      for (const picture::CutPoint& p : line)
        for (const trail::Worked& w : trail.stitches) CHECK(distance(p, {w.up, w.down}) > 0.5);
    }
}

TEST_CASE("pages of edges have nothing on anything, either hand, either type, the cutting out too") {
  const std::string ring = part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8, SE 7, SW 7, NW 6\"");
  const std::string square = part_text("hem", "edge", "[-20, -50]", "path = \"E 90, S 90, W 90, N 90\"");
  const std::string steps = part_text("hem", "edge", "[-12, 8]",
                                      "path = \"N 12, 5 x (E 8, N 8), E 28, 5 x (S 8, E 8), S 28, 5 x (W 8, S 8), W 28, 5 x (N 8, W 8), N 16\"");
  const std::string open = part_text("hem", "edge", "[-20, 40]", "path = \"E 60, N 30, E 20, N 40\"\nout = \"right\"\nover = 5");
  const std::string lessons = "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"hem\"]\n[[lesson]]\nwork = [\"wash\", \"cut out\"]\n";
  for (const std::string& hem : {square, steps, open}) {
    const course::Course course = course_of(ring + hem + lessons);
    const plan::Plan plan = test::planned(course);
    for (const say::Hand hand : {say::Hand::right, say::Hand::left})
      for (const picture::Print print : {picture::Print::normal, picture::Print::large})
        for (const list::List& page : test::pages(course, plan, {hand, print}))
          for (const std::string& fault : picture::overlaps(page, test::type())) {
            CAPTURE(hem);
            CHECK(fault == "");
          }
  }
}
