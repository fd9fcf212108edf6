// Stills for a film: type that can be read, safe edges, nothing on anything else, points that come one after another as the plan has them.
#include "picture/film.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <set>

#include "list/bounds.h"
#include "pages_of.h"
#include "picture/overlaps.h"
#include "picture/shown.h"

namespace {

const words::Phrases& norwegian() {
  static const words::Phrases phrases = [] {
    auto read = words::Phrases::read(assets::table("phrases/nb.toml"), "assets/phrases/nb.toml");
    REQUIRE_MESSAGE(read.has_value(), read.error().what);
    return *std::move(read);
  }();
  return phrases;
}

const std::string hem =
    "[thread.edge]\npearl = 5\n[[part]]\nname = \"hem\"\nkind = \"edge\"\nthread = \"edge\"\nstart = [0, 0]\n"
    "path = \"E 40, S 12, E 12, S 40, W 52, N 52\"\nout = \"left\"\n";

std::vector<std::pair<std::string, std::string>> designs_with_hem() {
  auto all = test::all_designs();
  all.emplace_back("hem", "format = 1\n[course]\ntitle = \"Hem\"\n[cloth]\ncount = 22\n" + hem);
  return all;
}

/// All numbers on a still, rising.
std::vector<int> numbers_in(const list::List& list) {
  std::vector<int> numbers;
  for (const list::Item& item : list.items)
    if (const auto* text = std::get_if<list::Text>(&item.what); text && item.role == list::Role::number)
      for (const char* at = text->text.c_str(); *at;) {  // "2, 5"
        char* end = nullptr;
        if (const long n = std::strtol(at, &end, 10); end != at) numbers.push_back(static_cast<int>(n));
        at = end == at ? at + 1 : end;
      }
  std::sort(numbers.begin(), numbers.end());
  return numbers;
}

/// 1/22 of the height, and a twentieth of each side left free: 1080 dots of height give 49 dots of type.
void readable(const picture::Still& still) {
  for (const list::Item& item : still.list.items) {
    const auto* text = std::get_if<list::Text>(&item.what);
    if (!text) continue;
    CAPTURE(text->text);
    const list::Rect room = list::bounds(item, test::type());
    CHECK(text->style.size_pt * list::mm_per_pt * 22 >= still.list.height - 0.01);
    CHECK(room.x >= still.list.width / 20 - 0.1);
    CHECK(room.y >= still.list.height / 20 - 0.1);
    CHECK(room.x + room.w <= still.list.width * 19 / 20 + 0.1);
    CHECK(room.y + room.h <= still.list.height * 19 / 20 + 0.1);
  }
}

void walk(const std::string& course_text, const words::Phrases& phrases, say::Hand hand) {
  const course::Course course = course_from(course_text);
  const plan::Plan plan = test::planned(course);
  for (const plan::LessonPlan& lesson : plan.lessons)
    for (const picture::Still& still : picture::film(course, plan, lesson.number, say::Voice{phrases, hand, course}, test::type())) {
      CAPTURE(lesson.number);
      CAPTURE(still.title);
      CAPTURE(still.number);
      readable(still);
      for (const std::string& fault : picture::overlaps(still.list, test::type())) FAIL_CHECK(fault);
      CHECK(still.seconds >= 1);
      if (!still.needle) continue;
      const std::vector<int> numbers = numbers_in(still.list);
      CHECK(!numbers.empty());
      if (!numbers.empty()) CHECK(numbers.back() == still.number);  // its own is there, and none that comes later
      CHECK(still.seconds >= 1);
    }
}

}  // namespace

TEST_CASE("every still of every design: type of a 22nd, safe edges, nothing on anything else, no number too early") {
  for (const auto& [name, text] : designs_with_hem()) {
    CAPTURE(name);
    walk(text, test::english(), say::Hand::right);
    if (name != "hem" && !std::getenv("TELLEKANT_LONG")) continue;
    walk(text, test::english(), say::Hand::left);
    walk(text, norwegian(), say::Hand::right);
    walk(text, norwegian(), say::Hand::left);
  }
}

TEST_CASE("an edge gone on with at any stitch: nothing lies on anything else where it goes on") {
  const int step = std::getenv("TELLEKANT_LONG") ? 1 : 12;
  for (int first = 5; first < 220; first += step) {
    CAPTURE(first);
    const std::string lessons = "[[lesson]]\nwork = [\"hem / 1.." + std::to_string(first) + "\"]\n[[lesson]]\nwork = [\"hem / " + std::to_string(first + 1) + "..221\"]\n";
    const course::Course course = course_from(designs_with_hem().back().second + lessons);
    const plan::Plan plan = test::planned(course);
    for (const picture::Still& still : picture::film(course, plan, 2, say::Voice{test::english(), say::Hand::right, course}, test::type())) {
      CAPTURE(still.title);
      CAPTURE(still.number);
      for (const std::string& fault : picture::overlaps(still.list, test::type())) FAIL_CHECK(fault);
    }
  }
}

TEST_CASE("a still for each point of each close-up: two a stitch, of looped stitches the first and the last besides (geometry)") {
  for (const auto& [name, text] : {std::pair{std::string("frost"), text_of("lessons/frost.course.toml")}, designs_with_hem().back()}) {
    CAPTURE(name);
    const course::Course course = course_from(text);
    const plan::Plan plan = test::planned(course);
    for (const plan::LessonPlan& lesson : plan.lessons) {
      std::map<std::string, int> expected, made;
      for (const guide::CloseUp& c : plan.close_ups) {
        if (c.lesson != lesson.number || c.trail < 0) continue;
        const trail::Trail& trail = plan.trails[static_cast<std::size_t>(c.trail)].trail;
        int& points = expected[c.letter];
        points = 2 * (c.last - c.first + 1);
        if (trail.order != stitch::Order::looped) continue;
        for (const int k : trail.ends) points += c.first < k && k <= c.last ? 2 : 0;
        points += (c.shows == guide::Shows::join || c.shows == guide::Shows::end) && c.last + 1 == static_cast<int>(trail.stitches.size())
                      ? 2
                      : 1;
      }
      for (const picture::Still& still :
           picture::film(course, plan, lesson.number, say::Voice{test::english(), say::Hand::right, course}, test::type()))
        made[still.letter] += still.needle ? 1 : 0;
      CHECK(made == expected);
    }
  }
}

TEST_CASE("lessons that cut, weave and fill: every picture of the page has stills, none of cutting is without a caution") {
  const std::string text = test::head("Wild") + part_text("ring", "blocks", "[0, -24]", "path = \"SE 6, SW 5, NW 5, NE 4\"") +
                           "[[part]]\nname = \"heart\"\nkind = \"cutwork\"\nthread = \"fine\"\nwithin = [\"ring\"]\npicots = true\n"
                           "fillings = [{ kind = \"dove's eye\", where = \"every second\" }, { kind = \"wheel\", where = [[2, 2]] }]\n"
                           "[[lesson]]\nwork = [\"ring\"]\n[[lesson]]\nwork = [\"heart / cut\"]\n[[lesson]]\nwork = [\"heart / bars\", \"heart / fillings\"]\n";
  walk(text, test::english(), say::Hand::left);
  walk(text, norwegian(), say::Hand::right);
  const course::Course course = course_from(text);
  const plan::Plan plan = test::planned(course);
  const say::Voice voice{test::english(), say::Hand::right, course};
  const std::string caution = test::english().say("film.caution");
  for (const int lesson : {2, 3}) {
    std::set<std::string> seen;
    for (const picture::Still& still : picture::film(course, plan, lesson, voice, test::type())) {
      seen.insert(still.letter);
      CHECK(!still.words.empty());
      CHECK((still.words.find(caution) != std::string::npos) == (lesson == 2));
    }
    std::set<std::string> shown;
    for (const picture::Shown& picture : picture::show_lesson(course, plan, lesson, voice, test::type(), {}).pictures)
      if (!picture.letter.empty()) shown.insert(picture.letter);
    CHECK(shown.size() >= 2);
    CHECK(seen.size() >= shown.size());
  }
}
