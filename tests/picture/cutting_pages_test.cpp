// Pages of lessons that cut. Nothing is drawn as cut that the plan does not cut, every cutting is on the map once, no page that shows
// cutting is without the cautions. Counts are held against geometry: a closed staircase diamond of n blocks a side (n even) has 4n - 4
// blocks, as many cuttings, 16n - 16 snips and 8n - 8 threads that come out.
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "pages_of.h"
#include "picture/cut_map.h"
#include "picture/cut_pages.h"
#include "picture/overlaps.h"
#include "picture/shown.h"
#include "picture/view.h"

namespace {

struct Course {
  explicit Course(const std::string& text, say::Hand hand = say::Hand::right, picture::Print print = picture::Print::normal)
      : course(course_from(text)),
        plan(test::planned(course)),
        voice{test::english(), hand, course},
        sheet{course, plan, plan.lessons.back(), voice, test::type(), picture::styles_for(print), picture::page_size(course::Paper::a4)} {}
  course::Course course;
  plan::Plan plan;
  say::Voice voice;
  picture::Sheet sheet;
};

std::string diamond(int n) {
  return test::head("Diamond") +
         part_text("ring", "blocks", "[0, 0]",
                   "first = \"across\"\npath = \"NE " + std::to_string(n) + ", SE " + std::to_string(n - 1) + ", SW " +
                       std::to_string(n - 1) + (n > 2 ? ", NW " + std::to_string(n - 2) : "") + "\"") +
         "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"fine\"\nwithin = [\"ring\"]\n" +
         "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n";
}

/// The short thick strokes across one thread each.
std::vector<list::Stroke> snips(const picture::Picture& picture) {
  std::vector<list::Stroke> found;
  for (const list::Item& item : picture.list.items)
    if (const auto* stroke = std::get_if<list::Stroke>(&item.what);
        stroke && item.role == list::Role::caution && std::abs(stroke->width - 0.26 * picture.scale) < 1e-9)
      found.push_back(*stroke);
  return found;
}

/// In threads of the cloth; for the right hand.
std::pair<double, double> on_cloth(const picture::Picture& picture, list::Point p) {
  return {p.x / picture.scale - 0.5 + picture.window.x0, p.y / picture.scale - 0.5 + picture.window.y0};
}

std::string every_word(const std::vector<list::List>& pages) {
  std::string all;
  for (const list::List& page : pages) all += test::text_of_page(page);
  return all;
}

}  // namespace

TEST_CASE("every snip that a close-up draws is one of the plan's, at the hole where its thread is held") {
  for (const int n : {2, 4, 8}) {
    CAPTURE(n);
    const Course made(diamond(n));
    const auto work = picture::cut_work(made.sheet);
    REQUIRE(work.size() == 1);
    for (const picture::CutEnd& end : work[0].ends) {
      const auto drawn = picture::cut_picture(made.sheet, work[0], end.number, "A", {97, 130});
      std::set<std::pair<int, int>> told;  // thread, cutting
      for (const list::Stroke& stroke : snips(drawn.picture)) {
        const auto [ax, ay] = on_cloth(drawn.picture, stroke.points[0]);
        const auto [bx, by] = on_cloth(drawn.picture, stroke.points[1]);
        const bool upright = std::abs(ay - by) < 1e-6;  // a level stroke crosses an upright thread
        const double across = upright ? (ax + bx) / 2 : (ay + by) / 2, along = upright ? ay : ax;
        const auto& cuts = work[0].cut->cutting.cuts;
        const auto cut = std::find_if(cuts.begin(), cuts.end(), [&](const cutwork::Cut& c) {
          return (c.axis == cutwork::Axis::v) == upright && std::abs(c.thread + 0.5 - across) < 0.01 &&
                 std::abs((upright ? c.at.y : c.at.x) - along) < 0.5;
        });
        REQUIRE(cut != cuts.end());
        CHECK(std::find(drawn.numbers.begin(), drawn.numbers.end(), cut->cutting) != drawn.numbers.end());
        told.insert({cut->thread, cut->cutting});
      }
      CHECK(told.size() == 4 * drawn.numbers.size());
    }
  }
}

TEST_CASE("each cutting is on one of the maps, once, whatever the size of the design") {
  for (const int n : {2, 8, 22, 40}) {
    CAPTURE(n);
    const Course made(diamond(n));
    const auto work = picture::cut_work(made.sheet);
    REQUIRE(work.size() == 1);
    CHECK(work[0].ends.size() == 4 * n - 4);
    std::map<int, int> seen;
    for (const picture::CutMap& map : picture::cut_maps(made.sheet, work[0], 178, 138)) {
      CHECK(map.picture.width <= 178.01);
      CHECK(map.picture.height <= 138.01);
      std::set<std::string> numbers;
      for (const list::Item& item : map.picture.list.items)
        if (const auto* text = std::get_if<list::Text>(&item.what)) numbers.insert(text->text);
      CHECK(numbers.size() == map.numbers.size());
      for (const int number : map.numbers) ++seen[number], CHECK(numbers.count(std::to_string(number)) == 1);
    }
    CHECK(seen.size() == 4 * n - 4);
    CHECK(std::all_of(seen.begin(), seen.end(), [](const auto& one) { return one.second == 1; }));
  }
}

TEST_CASE("the table adds up to what geometry says, and cuttings across from each other stand together") {
  for (const int n : {2, 4, 8, 12}) {
    CAPTURE(n);
    const Course made(diamond(n));
    const auto work = picture::cut_work(made.sheet);
    const picture::Table table = picture::table_of_order(made.sheet, work[0]);
    int snips = 0, threads = 0;
    for (const auto& row : table.rows) snips += row.numbers[1], threads += row.numbers[2];
    CHECK(snips == 16 * n - 16);
    CHECK(threads == 8 * n - 8);
    for (const picture::CutTogether& set : picture::cut_together(work[0])) {
      REQUIRE(set.numbers.size() == 2);
      CHECK(set.numbers[1] == set.numbers[0] + 1);
      CHECK(work[0].end(set.numbers[0]).opposite == std::vector<int>{set.numbers[1]});
    }
  }
}

TEST_CASE("a diamond has two sorts of places: the four apexes, and all others; turned and mirrored it is the same") {
  const Course made(diamond(8));
  const auto work = picture::cut_work(made.sheet);
  std::map<int, int> sorts;
  for (const int sort : picture::cut_alike(made.sheet, work[0])) ++sorts[sort];
  REQUIRE(sorts.size() == 2);
  CHECK(std::min(sorts.begin()->second, sorts.rbegin()->second) == 4);
  CHECK(std::max(sorts.begin()->second, sorts.rbegin()->second) == 24);
}

TEST_CASE("every page that shows cutting has the cautions, in both hands, in large type and for any size of design") {
  const std::string sharp = "Fine scissors are sharp", pairs = "woven in pairs", first = "Take care!";
  for (const int n : {2, 8, 22})
    for (const test::Order& order : {test::Order{}, test::Order{say::Hand::left}, test::Order{say::Hand::right, picture::Print::large},
                                     test::Order{say::Hand::right, picture::Print::normal, course::Paper::letter}}) {
      CAPTURE(n);
      const course::Course course = course_from(diamond(n));
      const plan::Plan plan = test::planned(course);
      const say::Voice voice{test::english(), order.hand, course};
      const auto pages = picture::handout(course, plan, 2, voice, test::type(), picture::page_size(order.paper), order.print);
      REQUIRE(pages.size() >= 4);
      for (const list::List& page : pages) {
        std::string text = test::text_of_page(page);
        std::replace(text.begin(), text.end(), '\n', ' ');
        for (const std::string& words : {sharp, pairs, first}) CHECK(text.find(words) != std::string::npos);
        const auto faults = picture::overlaps(page, test::type());
        CHECK_MESSAGE(faults.empty(), (faults.empty() ? "" : faults.front()));
      }
    }
}

TEST_CASE("what is said: the first cutting by a landmark, the check, the opposite end, what is left alone, mending") {
  const auto pages = test::pages(diamond(8));
  std::string text = every_word(pages);
  std::replace(text.begin(), text.end(), '\n', ' ');
  for (const char* words :
       {"Cut here first: 1", "leftmost block", "Before each snip", "Then the opposite end", "52 threads", "Leave alone",
        "If a snip goes wrong", "Practise on a scrap", "Turn the work over", "Show your work to your teacher", "28 cuttings, 112 snips"})
    CHECK_MESSAGE(text.find(words) != std::string::npos, words);
}

TEST_CASE("in pieces, as a screen shows them: the look over comes before the first picture that shows cutting, cautions with every one") {
  for (const say::Hand hand : {say::Hand::right, say::Hand::left}) {
    const Course c(diamond(6), hand);
    const auto lesson = picture::show_lesson(c.course, c.plan, 2, c.voice, test::type(), {});
    REQUIRE(!lesson.pictures.empty());
    CHECK(picture::plain(lesson.pictures.front().before).find(c.voice.phrases.say("page.cut.before")) != std::string::npos);
    const std::string caution = c.voice.phrases.say("page.caution.scissors");
    for (std::size_t i = 0; i < lesson.pictures.size(); ++i) {
      CHECK(lesson.pictures[i].before.empty() == (i > 0));
      if (lesson.pictures[i].name != "map") CHECK(picture::plain(lesson.pictures[i].telling).find(caution) != std::string::npos);
    }
  }
}

TEST_CASE("two areas: numbers of one come before those of the other, and each is told by itself") {
  const Course made(test::head("Ponds") + part_text("left", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
                    part_text("right", "blocks", "[36, 0]", "first = \"across\"\npath = \"NE 4, SE 3, SW 3, NW 2\"") +
                    "[[part]]\nname = \"ponds\"\nkind = \"cutwork\"\nthread = \"fine\"\nwithin = [\"left\", \"right\"]\n"
                    "[[lesson]]\nwork = [\"left\", \"right\"]\n[[lesson]]\nwork = [\"ponds / cut\"]\n");
  const auto work = picture::cut_work(made.sheet);
  REQUIRE(work.size() == 1);
  REQUIRE(work[0].ends.size() == 24);
  for (const picture::CutEnd& end : work[0].ends) CHECK(end.area == (end.number > 12 ? 1 : 0));
  const picture::Table table = picture::table_of_areas(made.sheet, work[0]);
  REQUIRE(table.rows.size() == 3);
  CHECK(table.rows[0].numbers == std::vector<int>{12, 12, 48, 24});
  CHECK(table.rows[2].numbers == std::vector<int>{24, 24, 96, 48});
}
