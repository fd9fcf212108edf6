// Every page of many designs, for both hands, both sizes of type and both papers: nothing lies on anything, nothing is too small, the key
// names just the marks that are used.
#include <algorithm>
#include <optional>
#include <set>

#include "pages_of.h"
#include "picture/geometry.h"
#include "picture/overlaps.h"

namespace {

using list::Role;

std::vector<test::Order> orders() {
  std::vector<test::Order> all;
  for (const auto hand : {say::Hand::right, say::Hand::left})
    for (const auto print : {picture::Print::normal, picture::Print::large})
      for (const auto paper : {course::Paper::a4, course::Paper::letter}) all.push_back({hand, print, paper});
  return all;
}

/// The marks in a page's pictures, by the key's phrase, seen from the outside: roles, shapes, what is inside the frame.
class Marks {
 public:
  explicit Marks(const list::List& page) {
    for (const list::Item& item : page.items) {
      if (const auto* clip = std::get_if<list::ClipIn>(&item.what)) {
        frame_ = clip->rect;
        inside_ = true;
      }
      if (std::holds_alternative<list::ClipOut>(item.what)) inside_ = false;
      if (inside_) look_at(item);
    }
    commit();
  }
  const std::set<std::string>& found() const { return found_; }

 private:
  void look_at(const list::Item& item) {
    const bool disc = std::holds_alternative<list::Disc>(item.what), panel = std::holds_alternative<list::Panel>(item.what);
    switch (item.role) {
      case Role::hole_up:
        found_.insert(panel ? "page.key.twice-up" : "page.key.up");
        return;
      case Role::hole_down:
        found_.insert(panel ? "page.key.twice-down" : "page.key.down");
        return;
      case Role::hole_both:
        found_.insert("page.key.both");
        return;
      case Role::stitch_now:
        stitch(item, "page.key.now");
        return;
      case Role::stitch_before:
        stitch(item, "page.key.before");
        return;
      case Role::stitch_later:
        stitch(item, "page.key.later");
        return;
      case Role::back_thread:
        found_.insert("page.key.back");
        return;
      case Role::ruler:
        if (!disc) found_.insert("page.key.ruler");
        return;
      case Role::landmark:
        if (std::holds_alternative<list::Fill>(item.what)) found_.insert("page.key.proof");
        return;
      default:
        return;
    }
  }

  /// A white line on a stitch makes it double: it is told only once the next item is seen.
  void stitch(const list::Item& item, const std::string& key) {
    const auto& line = std::get<list::Stroke>(item.what);
    if (line.colour == list::Colour{0xFF, 0xFF, 0xFF}) {
      if (pending_) found_.insert(*pending_ + "-double");
      pending_.reset();
      return;
    }
    commit();
    if (picture::meet(picture::grown(frame_, -0.4), {line.points[0], line.points[1], line.width / 2})) pending_ = key;
  }

  void commit() {
    if (pending_) found_.insert(*pending_);
    pending_.reset();
  }

  std::set<std::string> found_;
  std::optional<std::string> pending_;
  list::Rect frame_;
  bool inside_ = false;
};

const std::vector<std::string> plain_marks{"up",     "down",          "twice-up", "twice-down", "now",  "now-double",
                                           "before", "before-double", "later",    "back",       "proof"};

/// The smallest type on a page: running text, or numbers.
double smallest(const list::List& page, bool running) {
  double least = 100;
  for (const list::Item& item : page.items) {
    const auto* line = std::get_if<list::Text>(&item.what);
    if (line && running == (item.role == Role::text || item.role == Role::heading || item.role == Role::letter))
      least = std::min(least, line->style.size_pt);
  }
  return least;
}

bool has_line(const list::List& page, const std::string& text) {
  return std::any_of(page.items.begin(), page.items.end(), [&](const list::Item& item) {
    const auto* line = std::get_if<list::Text>(&item.what);
    return line && line->text == text;
  });
}

}  // namespace

TEST_CASE(
    "nothing lies on anything; text is 12 pt or more, in large print 18, numbers never below 7 (RNIB clear print guidance; UKAAF G003)") {
  for (const auto& [name, text] : test::all_designs()) {
    const course::Course course = course_from(text);
    const plan::Plan plan = test::planned(course);
    for (const test::Order& order : orders()) {
      int number = 0;
      for (const list::List& page : test::pages(course, plan, order)) {
        ++number;
        CAPTURE(name);
        CAPTURE(number);
        CAPTURE(static_cast<int>(order.hand));
        CAPTURE(static_cast<int>(order.print));
        CAPTURE(static_cast<int>(order.paper));
        const std::vector<std::string> faults = picture::overlaps(page, test::type());
        CHECK_MESSAGE(faults.empty(), (faults.empty() ? std::string() : faults.front()));
        CHECK(smallest(page, true) >= (order.print == picture::Print::large ? 18 : 12));
        CHECK(smallest(page, false) >= 7);
      }
    }
  }
}

TEST_CASE("the key of each page names every mark of its pictures and no other") {
  for (const auto& [name, text] : test::designs())
    for (const list::List& page : test::pages(text)) {
      const std::set<std::string> found = Marks(page).found();
      for (const std::string& mark : plain_marks) {
        CAPTURE(name);
        CAPTURE(mark);
        CAPTURE(test::text_of_page(page));
        CHECK(has_line(page, test::english().say("page.key." + mark)) == found.contains("page.key." + mark));
      }
    }
}

TEST_CASE("a page says which convention its lines follow, the hand, the count and its number") {
  const auto& designs = test::designs();
  const std::vector<list::List> thread = test::pages(designs[0].second), hole = test::pages(designs[2].second, {say::Hand::left});
  std::string one_lesson = designs[1].second;
  one_lesson.replace(one_lesson.find("[course]\n"), 9, "[course]\nhome_minutes = 1000\n");
  int number = 0;
  const std::vector<list::List> all = test::pages(one_lesson);
  for (const list::List& page : all) {
    CHECK(has_line(page, std::to_string(++number) + " / " + std::to_string(all.size())));
    CHECK(test::text_of_page(page).find("25 threads an inch") != std::string::npos);
  }
  CHECK(test::text_of_page(thread[0]).find("Each line of the grid is one thread") != std::string::npos);
  CHECK(test::text_of_page(hole[0]).find("Left-handed.") != std::string::npos);
  const bool told = std::any_of(hole.begin(), hole.end(), [](const list::List& page) {
    return test::text_of_page(page).find("each square is one thread") != std::string::npos;
  });
  CHECK(told);
}

TEST_CASE("the same course gives the same pages") {
  const std::string text = test::designs()[0].second;
  const std::vector<list::List> one = test::pages(text), other = test::pages(text);
  REQUIRE(one.size() == other.size());
  for (std::size_t i = 0; i < one.size(); ++i) {
    CHECK(one[i].items.size() == other[i].items.size());
    CHECK(test::text_of_page(one[i]) == test::text_of_page(other[i]));
  }
}
