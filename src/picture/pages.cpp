#include "picture/pages.h"

#include <algorithm>
#include <iterator>

#include "picture/column.h"
#include "picture/foot.h"
#include "picture/ink.h"
#include "picture/tell.h"

namespace picture {
namespace {

constexpr double head_top = 11;  // mm from the paper's edge

/// The running head: one line where both sides fit, else two or more.
class Head {
 public:
  explicit Head(const Sheet& sheet) : sheet_(sheet), right_(wrapped(lesson_line(sheet), sheet.styles.head, sheet.width(), sheet.measure)) {
    left_style_ = sheet.styles.head;
    left_style_.weight = list::Weight::semibold;
    const double right = sheet.measure.measure(right_.front(), sheet.styles.head).width;
    const double left = sheet.measure.measure(sheet.course.title, left_style_).width;
    beside_ = right_.size() == 1 && left + right + 6 <= sheet.width();
    left_ = wrapped(sheet.course.title, left_style_, sheet.width(), sheet.measure);
  }

  double height() const { return static_cast<double>(beside_ ? 1 : left_.size() + right_.size()) * line_height(sheet_.styles.head) + 1.6; }

  void draw(list::List& list) const {
    const double left = sheet_.margin(), right = left + sheet_.width();
    double base = head_top + line_height(sheet_.styles.head) - 0.36 * em(sheet_.styles.head);
    for (const std::string& line : left_) {
      add_text(list, list::Role::text, {left, base}, line, left_style_, colour::ink);
      if (!beside_) base += line_height(sheet_.styles.head);
    }
    for (const std::string& line : right_) {
      add_text(list, list::Role::text, {beside_ ? right : left, base}, line, sheet_.styles.head, colour::ink,
               beside_ ? list::Align::right : list::Align::left);
      base += line_height(sheet_.styles.head);
    }
    add_line(list, list::Role::rule_line, {left, head_top + height()}, {right, head_top + height()}, 0.4, colour::ink, list::Cap::flat);
  }

 private:
  const Sheet& sheet_;
  list::TypeStyle left_style_;
  std::vector<std::string> left_, right_;
  bool beside_ = true;
};

/// Title and what to have ready, on the first page.
Column title_column(const Sheet& sheet) {
  Styles styles = sheet.styles;
  styles.heading = sheet.styles.title;
  Column column(sheet.width(), styles, sheet.measure);
  column.heading(say::lesson_title(sheet.voice, sheet.plan, sheet.lesson.number));
  column.paragraph(have_ready(sheet));
  if (const std::string first = prepare_first(sheet); !first.empty()) column.paragraph(first);
  if (const std::string first = marks_first(sheet); !first.empty()) column.strong(first);
  return column;
}

}  // namespace

std::string lesson_line(const Sheet& sheet) {
  const auto joined = [&](const std::string& first, const std::string& second) {
    return sheet.say("page.dot", {{"first", first}, {"second", second}});
  };
  std::string line = sheet.say("page.head.lesson",
                               {{"n", std::int64_t{sheet.lesson.number}}, {"of", static_cast<std::int64_t>(sheet.plan.lessons.size())}});
  if (sheet.lesson.date) line = joined(line, say::date(sheet.voice, *sheet.lesson.date));
  if (!sheet.lesson.start.empty()) line = joined(line, sheet.lesson.start);
  return joined(line, sheet.say("page.head.minutes", {{"n", std::int64_t{sheet.lesson.minutes_given}}}));
}

Pages::Pages(const Sheet& sheet) : sheet_(sheet), map_(sheet) {
  const double head = head_top + Head(sheet).height() + 5;
  first_top_ = head + 2 + title_column(sheet).height() + 3;
  further_top_ = head + 2;
}

void Pages::add(std::vector<Block> blocks) {
  blocks_.insert(blocks_.end(), std::make_move_iterator(blocks.begin()), std::make_move_iterator(blocks.end()));
}

double Pages::room(bool first_page) const {
  const double k = sheet_.styles.body.size_pt / 12, foot = sheet_.styles.key_aside ? 56 * k : 84 * k;
  return sheet_.page.height - 11 - top(first_page) - foot;
}

double Pages::over_first(const Block& block) const {
  const Foot foot(sheet_, map_, &block, &block + 1);
  return top(true) + block.height + 4 + foot.height() - (sheet_.page.height - 11);
}

/// Height of these blocks, one under the other.
double Pages::needed(std::size_t first, std::size_t last) const {
  double sum = 0;
  for (std::size_t i = first; i < last; ++i) sum += blocks_[i].height + (i == first ? 0 : blocks_[i].before);
  return sum;
}

bool Pages::fits(std::size_t first, std::size_t last, bool first_page) const {
  const Foot foot(sheet_, map_, blocks_.data() + first, blocks_.data() + last);
  return top(first_page) + needed(first, last) + 4 + foot.height() <= sheet_.page.height - 11;
}

std::vector<Pages::Page> Pages::divide() {
  std::vector<Page> pages;
  std::size_t first = 0;
  while (first < blocks_.size() || pages.empty()) {
    const bool first_page = pages.empty();
    std::size_t last = first, good = first, possible = first;  // possible: where nothing but the wish to keep it together is broken
    while (last < blocks_.size() && fits(first, last + 1, first_page)) {
      ++last;
      if (!blocks_[last - 1].keep || last == blocks_.size()) good = last;
      if (!blocks_[last - 1].bound || last == blocks_.size()) possible = last;
    }
    if (good == first && first < blocks_.size() && last == first && blocks_[first].parts) {  // no page holds it whole
      const std::vector<Block> parts = *blocks_[first].parts;
      const auto at = blocks_.erase(blocks_.begin() + static_cast<std::ptrdiff_t>(first));
      blocks_.insert(at, parts.begin(), parts.end());
      continue;
    }
    if (good == first && first_page) good = possible;  // parted rather than a page with nothing but its title
    if (good == first && first < blocks_.size() && !first_page) good = possible > first ? possible : std::max(first + 1, last);
    pages.push_back({first, good});
    first = good;
  }
  return pages;
}

/// Less room between the blocks, where that spares a page.
std::vector<Pages::Page> Pages::divide_well() {
  constexpr double closer = 0.6;
  std::vector<Block> wide = blocks_;
  std::vector<Page> pages = divide();
  if (pages.size() < 2) return pages;
  wide.swap(blocks_);
  for (Block& block : blocks_) block.before *= closer;
  std::vector<Page> fewer = divide();
  if (fewer.size() < pages.size()) return fewer;
  wide.swap(blocks_);
  return pages;
}

Point Pages::place_of(const Page& page, std::size_t number, std::size_t block) const {
  Point at{sheet_.margin(), top(number == 1)};
  for (std::size_t i = page.first; i < block; ++i) at.y += blocks_[i].height + blocks_[i + 1].before;
  return at;
}

list::List Pages::draw(const Page& page, std::size_t number, std::size_t of) const {
  list::List list;
  list.width = sheet_.page.width;
  list.height = sheet_.page.height;
  list.title = say::lesson_title(sheet_.voice, sheet_.plan, sheet_.lesson.number);
  Head(sheet_).draw(list);
  if (number == 1) {
    const Column title = title_column(sheet_);
    draw_column(list, title, {sheet_.margin(), top(true) - 3 - title.height()});
  }
  for (std::size_t i = page.first; i < page.last; ++i) blocks_[i].draw(list, place_of(page, number, i));
  const Foot foot(sheet_, map_, blocks_.data() + page.first, blocks_.data() + page.last);
  foot.draw(list, number, of);
  if (foot.aside()) {
    const std::size_t block = page.first + foot.aside()->first;
    foot.draw_key(list, plus(place_of(page, number, block), {foot.aside()->second.x, foot.aside()->second.y}));
  }
  return list;
}

std::vector<list::List> Pages::finish() {
  const std::vector<Page> pages = divide_well();
  std::vector<list::List> lists;
  for (std::size_t i = 0; i < pages.size(); ++i) lists.push_back(draw(pages[i], i + 1, pages.size()));
  return lists;
}

}  // namespace picture
