// The sheet of a lesson put together: close-ups with their words, counts and threads, notes, corners to be marked.
#include "picture/handout.h"

#include <algorithm>

#include "picture/bar_pages.h"
#include "picture/cut_out.h"
#include "picture/cut_pages.h"
#include "picture/foot.h"
#include "picture/overview.h"
#include "picture/pages.h"
#include "picture/places.h"
#include "picture/remembered.h"
#include "picture/sections.h"
#include "picture/table.h"
#include "picture/tell.h"

namespace picture {
namespace {

class Handout {
 public:
  explicit Handout(const Sheet& sheet) : sheet_(sheet), pages_(sheet), sections_(sheet, pages_.room(false)) {}

  std::vector<list::List> make() {
    const bool marks_first = sheet_.styles.key_aside;  // large type has no room for a picture under the title
    if (marks_first) add_notes_and_marks();
    for (const guide::CloseUp& close_up : sheet_.plan.close_ups)
      if (close_up.lesson == sheet_.lesson.number) add_close_up(close_up), ++letters_;
    const bool cuts = !sheet_.lesson.cuttings.empty();  // what is stitched in the lesson is told to its end before anything is cut
    if (cuts) add_counts_and_threads();
    if (cuts) add_cuttings();
    add_bars();
    add_other_work();
    if (!cuts) add_counts_and_threads();
    if (!marks_first) add_notes_and_marks();
    return pages_.finish();
  }

 private:
  /// The first picture goes under the title; a further one has a page to itself if it needs it.
  Room room() const {
    const double k = sheet_.styles.body.size_pt / 12, height = pages_.room(pages_.empty() && !sheet_.styles.key_aside);
    const double words = 8 * line_height(sheet_.styles.body);
    return {sections_.widest_beside(), sections_.widest(), std::clamp(height - letter_inset, 60.0, 140.0),
            std::clamp(height - letter_inset - words, 60.0 * k, sheet_.styles.key_aside ? 92.0 : 120.0)};
  }

  void add_close_up(const guide::CloseUp& close_up) {
    constexpr double least = 60, step = 6;  // mm
    Room most = room();
    std::vector<Block> blocks = close_up_blocks(close_up, most);
    while (pages_.empty() && blocks.size() == 1 && pages_.over_first(blocks.front()) > 0 && most.whole_height - step > least) {
      most.whole_height -= step;  // a smaller picture rather than an empty page
      blocks = close_up_blocks(close_up, most);
    }
    pages_.add(std::move(blocks));
  }

  std::vector<Block> close_up_blocks(const guide::CloseUp& close_up, const Room& most) {
    CloseUpPicture made = close_up_picture(sheet_, close_up, most);
    Telling telling;
    if (close_up.shows == guide::Shows::start && made.count_in && !made.counts_inside) {
      add_overview(close_up, made);
      tell_from_one(sheet_, close_up, telling);
    } else {
      telling = tell_close_up(sheet_, close_up, made);
    }
    Block block;
    block.frames = {map_frame(sheet_, close_up, made.picture.window)};
    block.scales = {{close_up.letter, made.picture.scale}};
    block.gridded = true;
    made.picture.list.places = {{close_up.letter, close_up_title(close_up, made), {0, 0, made.picture.width, made.picture.height}}};
    return sections_.picture(std::move(made.picture), telling, std::move(block));
  }

  /// "A: Start here": the letter and the heading of its words.
  std::string close_up_title(const guide::CloseUp& close_up, const CloseUpPicture& made) const {
    const Telling telling = tell_close_up(sheet_, close_up, made);
    const std::string heading = telling.empty() ? std::string{} : telling.pieces().front().text;
    return sheet_.say("page.close-up.title", {{"letter", close_up.letter}, {"title", heading}});
  }

  void add_overview(const guide::CloseUp& close_up, const CloseUpPicture& made) {
    Telling telling;
    tell_count_in(sheet_, close_up, made, telling);
    const Room most = room();
    Picture picture = draw_overview(sheet_, close_up, made.count_in->count, most.beside > 0 ? std::min(90.0, most.beside) : most.whole,
                                    std::min(72.0, most.height));
    pages_.add(sections_.picture(std::move(picture), telling, Block{}));
  }

  /// Tables one beside another, then the words on threads; two columns where there is room. Counts on the way are wide and low.
  void add_counts_and_threads() {
    const Telling threads = tell_threads(sheet_);
    const std::vector<Table> tables = count_tables(sheet_);
    const double wide_half = sheet_.width() * 0.51, half = sheet_.width() - wide_half - 9;
    const bool two = half >= sheet_.styles.text_least_mm;
    const double wide = two ? wide_half : std::min(sheet_.width(), sheet_.styles.text_most_mm);
    for (std::size_t i = 0; i < tables.size(); ++i) {
      const auto table = std::make_shared<SetTable>(sheet_, tables[i], wide);
      const bool with_words = two && i + 1 == tables.size() && !threads.empty();
      const auto column = with_words ? std::make_shared<Column>(sections_.column(threads, half)) : nullptr;
      Block block;
      block.before = 7;
      block.height = std::max(table->height(), column ? column->height() : 0.0);
      block.draw = [table, column, wide_half](list::List& list, Point at) {
        table->draw(list, at);
        if (column) draw_column(list, *column, {at.x + wide_half + 9, at.y});
      };
      pages_.add({std::move(block)});
    }
    if (!two || tables.empty()) pages_.add(sections_.text(threads, 6, Sections::Keep::as_text));
    for (const Table& table : check_tables(sheet_)) pages_.add(table_blocks(table, pages_.room(false)));
  }

  void add_notes_and_marks() {
    for (const Telling& telling : {tell_notes(sheet_), tell_missed(sheet_)}) {
      std::vector<Block> notes = sections_.text(telling, 4, Sections::Keep::together);
      if (!sheet_.lesson.cuttings.empty()) mark_cutting(notes);  // they speak of the cutting, and may come on a page of their own
      pages_.add(std::move(notes));
    }
    std::vector<Block> marks = sections_.text(tell_marks(sheet_), 6, Sections::Keep::together);
    for (Block& block : marks) block.corners = true;
    pages_.add(std::move(marks));
  }

  void add_cuttings() {
    const double k = sheet_.styles.body.size_pt / 12, cautions = Foot::cautions_height(sheet_);
    const double height = pages_.room(false) - cautions + 14 * k, most = sections_.widest_beside() > 0 ? sections_.widest_beside() : sections_.widest();
    const Sections sections(sheet_, height);
    constexpr double narrow = 78;  // mm: the words need the rest
    const double words = sheet_.styles.key_aside ? 4 * line_height(sheet_.styles.body) : 0;
    CutRooms rooms{{sheet_.styles.key_aside ? most : std::min(most, narrow), std::clamp(height - letter_inset - words, 60 * k, 124.0)}, {}, sections_.widest(), std::clamp(height - 26 * k, 70.0, 138.0)};
    rooms.mend = {std::min(rooms.close_up.width, sheet_.styles.key_aside ? most : 66.0), rooms.close_up.height};
    for (CutPiece& piece : cut_pieces(sheet_, rooms)) {
      if (!piece.letter.empty()) ++letters_;
      std::vector<Block> blocks = cut_blocks(sections, piece, height);
      mark_cutting(blocks);
      pages_.add(std::move(blocks));
    }
  }

  void add_bars() {
    const double k = sheet_.styles.body.size_pt / 12, height = pages_.room(false);
    const double most = sections_.widest_beside() > 0 ? sections_.widest_beside() : sections_.widest();
    const Sections sections(sheet_, height);
    const BarRooms rooms{std::min(most, sheet_.styles.key_aside ? 92.0 : 88.0), sections_.widest(), std::clamp(room_for_bars() - 6 * k, 70.0, 130.0)};
    for (CutPiece& piece : bar_pieces(sheet_, rooms, letters_)) pages_.add(cut_blocks(sections, piece, height));
  }

  /// Beside the words of a map, which stand under it: on the first page, where nothing comes before.
  double room_for_bars() const {
    const std::vector<BarWork> all = bar_work(sheet_);
    if (all.empty()) return 0;
    const Telling words = tell_bar_map(sheet_, all.front(), all.size() > 1);
    return pages_.room(sheet_.lesson.sections.empty() && sheet_.lesson.cuttings.empty()) -
           set(words, std::min(sheet_.width(), sheet_.styles.text_most_mm), sheet_.styles, sheet_.measure).height();
  }

  /// Also the smaller pieces that a block may be parted into: no page of them is without the cautions.
  static void mark_cutting(std::vector<Block>& blocks) {
    for (Block& block : blocks) {
      block.cutting = true;
      if (block.parts) mark_cutting(*block.parts);
    }
  }

  /// In pieces no higher than a page has room for, each under the title.
  std::vector<Block> table_blocks(const Table& whole, double most) const {
    const auto table = std::make_shared<SetTable>(sheet_, whole, std::min(sheet_.width(), sheet_.styles.text_most_mm));
    if (table->height() > most && whole.rows.size() > 1) {
      Table first = whole, second = whole;
      const auto half = static_cast<std::ptrdiff_t>(whole.rows.size() / 2);
      first.rows.erase(first.rows.begin() + half, first.rows.end());
      first.note.clear();
      second.rows.erase(second.rows.begin(), second.rows.begin() + half);
      std::vector<Block> blocks = table_blocks(first, most), rest = table_blocks(second, most);
      blocks.insert(blocks.end(), std::make_move_iterator(rest.begin()), std::make_move_iterator(rest.end()));
      return blocks;
    }
    Block block;
    block.before = 5;
    block.height = table->height();
    block.draw = [table](list::List& list, Point at) { table->draw(list, at); };
    return {std::move(block)};
  }

  std::vector<Block> cut_blocks(const Sections& sections, CutPiece& piece, double height) const {
    if (piece.table) return table_blocks(*piece.table, height);
    if (!piece.picture) return sections.text(piece.telling, 6, Sections::Keep::together);
    Block block;
    // In large type the cautions take the small picture's room, but where it tells which part of the cloth is shown.
    if (!sheet_.styles.key_aside || sheet_.lesson.cuttings.empty() || piece.part_of_area) block.frames = piece.frames;
    block.gridded = piece.gridded;
    if (!piece.letter.empty()) {
      if (piece.gridded) block.scales = {{piece.letter, piece.picture->scale}};
      const std::string title = sheet_.say("page.close-up.title", {{"letter", piece.letter}, {"title", piece.telling.pieces().front().text}});
      piece.picture->list.places = {{piece.letter, title, {0, 0, piece.picture->width, piece.picture->height}}};
    }
    return sections.picture(std::move(*piece.picture), piece.telling, std::move(block));
  }

  void add_other_work() {
    for (const std::string& work : sheet_.lesson.work) {
      if (work == "wash") add_wash();
      if (work == "cut out") add_cutting_out();
    }
  }

  void add_wash() {
    Telling telling;
    telling.heading(sheet_.say("page.work.wash.title"));
    telling.paragraph(sheet_.say("page.work.wash"));
    pages_.add(sections_.text(telling, 6, Sections::Keep::as_text));
  }

  /// What to do and the cautions; where there is an edge, pictures of the line that the scissors follow.
  void add_cutting_out() {
    Telling telling;
    telling.heading(sheet_.say("page.work.cut-out.title"));
    telling.paragraph(sheet_.say("page.work.cut-out"));
    telling.strong(sheet_.say("page.caution.title"));
    telling.paragraph(sheet_.say("page.caution.scissors"));
    std::vector<CutOutPicture> pictures = cut_out_pictures(sheet_);
    if (!pictures.empty()) telling.paragraph(sheet_.say("page.work.cut-out.mend"));
    pages_.add(sections_.text(telling, 6, Sections::Keep::as_text));
    for (CutOutPicture& made : pictures) {
      Telling beside;
      if (&made == &pictures.front()) beside.paragraph(sheet_.say("page.work.cut-out.how"));
      beside.paragraph(sheet_.say(made.inner ? "page.work.cut-out.inner" : "page.work.cut-out.outer"));
      Block block;
      block.gridded = true;
      pages_.add(sections_.picture(std::move(made.picture), beside, std::move(block)));
    }
  }

  const Sheet& sheet_;
  Pages pages_;
  Sections sections_;
  int letters_ = 0;  ///< of pictures so far
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
