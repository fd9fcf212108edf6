// The folds on the screen's chart: they cross in the middle of the cloth, whichever hand's picture it is and however much of it is seen.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "course_text.h"
#include "picture/chart.h"
#include "plan/plan.h"

namespace {

struct Lines {
  std::vector<list::Stroke> level, upright;
};
Lines long_lines(const course::Course& course, picture::ChartView view) {
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  const picture::ChartIndex index(course, *plan);
  view.folds = true;
  Lines lines;
  for (const list::Item& item : picture::chart(course, *plan, index, view, {}).items)
    if (item.role == list::Role::landmark)
      if (const auto* stroke = std::get_if<list::Stroke>(&item.what)) (stroke->points[0].y == stroke->points[1].y ? lines.level : lines.upright).push_back(*stroke);
  return lines;
}

/// The places across the lines that there are of a way, each once.
std::vector<double> places(const std::vector<list::Stroke>& lines, bool level) {
  std::vector<double> all;
  for (const list::Stroke& line : lines) {
    const double at = level ? line.points[0].y : line.points[0].x;
    if (std::find(all.begin(), all.end(), at) == all.end()) all.push_back(at);
  }
  std::sort(all.begin(), all.end());
  return all;
}

course::Course sample() {
  return course_from(
    "format = 1\n[course]\ntitle = \"Test\"\n[cloth]\ncount = 22\nsize_threads = [100, 80]\nmiddle = [7, -3]\n[thread.heavy]\npearl = 5\n" +
    part_text("ring", "blocks", "[0, 0]", "path = \"NE 4, SE 3, SW 3, NW 2\""));
}

}  // namespace

TEST_CASE("the cut edges and the folds lie as far from one another as the cloth is wide and high") {
  picture::ChartView view;
  view.x = -100, view.y = -100, view.width = 200, view.height = 200;
  const Lines lines = long_lines(sample(), view);
  CHECK(places(lines.upright, false) == std::vector<double>{107 - 50, 107, 107 + 50});
  CHECK(places(lines.level, true) == std::vector<double>{97 - 40, 97, 97 + 40});
  view.mirror = true;
  CHECK(places(long_lines(sample(), view).upright, false) == std::vector<double>{93 - 50, 93, 93 + 50});
}

TEST_CASE("near by, only what is seen of a fold is listed, and its dashes do not wander") {
  picture::ChartView view;
  view.x = -20, view.y = -20, view.width = 40, view.height = 30, view.pixels = 24;
  const auto dashes = [&] {
    std::vector<double> begins;
    for (const list::Stroke& line : long_lines(sample(), view).level)
      if (line.points[0].x > 1) begins.push_back(line.points[0].x + view.x);
    return begins;
  };
  const auto before = dashes();
  REQUIRE(before.size() > 10);
  CHECK(before.size() < 60);
  view.x += 0.37;
  const auto after = dashes();
  for (const double begin : after)
    CHECK(std::any_of(before.begin(), before.end(), [&](double b) { return std::abs(b - begin) < 1e-9 || begin > view.x + view.width - 2; }));
}
