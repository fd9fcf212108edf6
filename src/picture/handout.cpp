// The sheet of a lesson put together: close-ups with their words, counts and threads, notes, corners to be marked.
#include "picture/handout.h"

#include <algorithm>
#include <memory>

#include "picture/ink.h"
#include "picture/overview.h"
#include "picture/pages.h"
#include "picture/remembered.h"
#include "picture/table.h"
#include "picture/tell.h"

namespace picture {
namespace {

constexpr double gap = 7;      // mm between a picture and its words
constexpr double inset = 3.6;  // mm: the letter's disc stands out of the frame

class Handout {
 public:
  explicit Handout(const Sheet& sheet) : sheet_(sheet), pages_(sheet) {
    room_.whole = sheet.width() - inset;
    room_.beside = sheet.width() - inset - gap - sheet.styles.text_least_mm;
  }

  std::vector<list::List> make() {
    for (const guide::CloseUp& close_up : sheet_.plan.close_ups)
      if (close_up.lesson == sheet_.lesson.number) add_close_up(close_up);
    add_other_work();
    add_counts_and_threads();
    add_lines(tell_notes(sheet_), 4, false);
    add_lines(tell_marks(sheet_), 6, true);
    return pages_.finish();
  }

 private:
  Column set_in(const Telling& telling, double width) const { return set(telling, std::min(width, sheet_.styles.text_most_mm), sheet_.styles, sheet_.measure); }

  /// The first picture goes under the title; a further one has a page to itself if it needs it.
  void make_room() {
    const double height = pages_.room(pages_.empty()), words = 9 * line_height(sheet_.styles.body);
    room_.height = std::clamp(height - inset, 60.0, 140.0);
    room_.whole_height = std::clamp(height - inset - words, 50.0, 120.0);
  }

  void add_close_up(const guide::CloseUp& close_up) {
    make_room();
    CloseUpPicture made = close_up_picture(sheet_, close_up, room_);
    Telling telling;
    if (close_up.shows == guide::Shows::start && made.count_in && !made.counts_inside) {
      add_overview(close_up, made);
      tell_rhythm(sheet_, close_up, telling);
    } else {
      telling = tell_close_up(sheet_, close_up, made);
    }
    Block frame;
    frame.frames = {{close_up.letter, made.picture.window, close_up.shows == guide::Shows::start ? std::vector<cloth::Hole>{} : close_up.stands_for}};
    frame.scales = {{close_up.letter, made.picture.scale}};
    frame.gridded = true;
    add_picture(std::move(made.picture), telling, std::move(frame));
  }

  void add_overview(const guide::CloseUp& close_up, const CloseUpPicture& made) {
    Telling telling;
    tell_count_in(sheet_, close_up, made, telling);
    add_picture(draw_overview(sheet_, close_up, made.count_in->count, std::min(90.0, room_.beside), std::min(72.0, room_.height)), telling, Block{});
  }

  /// Words beside the picture where both fit so on a page; else under it, in two columns if that is narrow enough, else as running text.
  void add_picture(Picture picture, const Telling& telling, Block block) {
    block.uses = picture.uses;
    block.before = 7;
    const auto shared = std::make_shared<Picture>(std::move(picture));
    if (beside(shared, telling, block) || in_two_columns(shared, telling, block)) return;
    block.height = inset + shared->height;
    block.keep = true;
    block.draw = [shared](list::List& list, Point at) { put(list, shared->list, {at.x + inset, at.y + inset}); };
    pages_.add(std::move(block));
    add_lines(telling, 3, false);
  }

  bool beside(const std::shared_ptr<Picture>& picture, const Telling& telling, Block& block) {
    const double aside = sheet_.width() - inset - picture->width - gap;
    if (aside < sheet_.styles.text_least_mm - 0.01) return false;
    const auto column = std::make_shared<Column>(set_in(telling, aside));
    if (column->height() > std::max(room_.height, picture->height)) return false;
    block.height = std::max(inset + picture->height, inset + column->height() - 2);
    block.draw = [picture, column](list::List& list, Point at) {
      put(list, picture->list, {at.x + inset, at.y + inset});
      draw_column(list, *column, {at.x + inset + picture->width + gap, at.y + inset - 2});
    };
    pages_.add(std::move(block));
    return true;
  }

  bool in_two_columns(const std::shared_ptr<Picture>& picture, const Telling& telling, Block& block) {
    const double half = (sheet_.width() - 10) / 2;
    if (half < sheet_.styles.text_least_mm) return false;
    const auto [first, second] = halves(telling, half);
    const auto left = std::make_shared<Column>(set_in(first, half)), right = std::make_shared<Column>(set_in(second, half));
    block.height = inset + picture->height + 3 + std::max(left->height(), right->height());
    if (block.height > pages_.room(false)) return false;
    block.draw = [picture, left, right, half](list::List& list, Point at) {
      put(list, picture->list, {at.x + inset, at.y + inset});
      const double top = at.y + inset + picture->height + 3;
      draw_column(list, *left, {at.x, top});
      draw_column(list, *right, {at.x + half + 10, top});
    };
    pages_.add(std::move(block));
    return true;
  }

  /// Parted before the piece at which both columns come out most alike.
  std::pair<Telling, Telling> halves(const Telling& telling, double width) const {
    std::pair<Telling, Telling> best{telling, {}};
    double least = set_in(telling, width).height();
    for (std::size_t at = 1; at < telling.pieces().size(); ++at) {
      if (telling.pieces()[at - 1].how != Telling::How::paragraph) continue;
      std::pair<Telling, Telling> parted = telling.parted(at);
      const double height = std::max(set_in(parted.first, width).height(), set_in(parted.second, width).height());
      if (height < least - 0.01) least = height, best = std::move(parted);
    }
    return best;
  }

  /// Text by itself, line by line, so that it can go on on the next page.
  void add_lines(const Telling& telling, double before, bool corners) {
    if (telling.empty()) return;
    const auto column = std::make_shared<Column>(set_in(telling, sheet_.width()));
    const bool together = corners && column->height() < 0.5 * sheet_.page.height;  // a list that goes with the map beside it
    for (std::size_t i = 0; i < column->lines().size(); ++i) {
      const SetLine& line = column->lines()[i];
      Block block;
      block.height = line.height;
      block.before = i == 0 ? before : 0;
      block.keep = (together || line.keep) && i + 1 < column->lines().size();
      block.corners = corners;
      block.draw = [column, i](list::List& list, Point at) { draw_line_of_type(list, column->lines()[i], at); };
      pages_.add(std::move(block));
    }
  }

  /// Tables one beside another, then the words on threads; two columns where there is room.
  void add_counts_and_threads() {
    const Telling threads = tell_threads(sheet_);
    const std::vector<Table> tables = count_tables(sheet_);
    const double wide_half = sheet_.width() * 0.51, half = sheet_.width() - wide_half - 9;
    const bool two = half >= sheet_.styles.text_least_mm;
    const double wide = two ? wide_half : std::min(sheet_.width(), sheet_.styles.text_most_mm);
    for (std::size_t i = 0; i < tables.size(); ++i) {
      const auto table = std::make_shared<SetTable>(sheet_, tables[i], wide);
      const bool with_words = two && i + 1 == tables.size() && !threads.empty();
      const auto column = with_words ? std::make_shared<Column>(set_in(threads, half)) : nullptr;
      Block block;
      block.before = 7;
      block.height = std::max(table->height(), column ? column->height() : 0.0);
      block.draw = [table, column, wide_half](list::List& list, Point at) {
        table->draw(list, at);
        if (column) draw_column(list, *column, {at.x + wide_half + 9, at.y});
      };
      pages_.add(std::move(block));
    }
    if (!two || tables.empty()) add_lines(threads, 6, false);
  }

  /// Washing and cutting out have no pictures, but words and cautions.
  void add_other_work() {
    Telling telling;
    for (const std::string& work : sheet_.lesson.work) {
      const std::string key = work == "wash" ? "page.work.wash" : work == "cut out" ? "page.work.cut-out" : "";
      if (key.empty()) continue;
      telling.heading(sheet_.say(key + ".title"));
      telling.paragraph(sheet_.say(key));
      if (work == "cut out") telling.strong(sheet_.say("page.caution.title")), telling.paragraph(sheet_.say("page.caution.scissors"));
    }
    add_lines(telling, 6, false);
  }

  const Sheet& sheet_;
  Pages pages_;
  Room room_;
};

}  // namespace

PageSize page_size(course::Paper paper) {
  if (paper == course::Paper::letter) return {8.5 * 25.4, 11 * 25.4};
  return {210, 297};
}

std::vector<list::List> handout(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                                const list::Measure& measure, PageSize page, Print print) {
  const Remembered remembered(measure);
  const Sheet sheet{course, plan, plan.lessons[number - 1], voice, remembered, styles_for(print), page};
  return Handout(sheet).make();
}

}  // namespace picture
