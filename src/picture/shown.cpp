#include "picture/shown.h"

#include <algorithm>
#include <cctype>
#include <utility>

#include "picture/bar_pages.h"
#include "picture/cut_pages.h"
#include "picture/ink.h"
#include "picture/map.h"
#include "picture/overview.h"
#include "picture/pages.h"
#include "picture/places.h"
#include "picture/remembered.h"
#include "picture/sections.h"
#include "picture/tell.h"

namespace picture {
namespace {

constexpr double round_picture = 5;  // mm: a letter stands out of its frame

std::string small(std::string letters) {
  std::transform(letters.begin(), letters.end(), letters.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return letters;
}

class Lesson {
 public:
  Lesson(const Sheet& sheet, const ShownSize& size) : sheet_(sheet), size_(size) {}

  ShownLesson show() {
    shown_.title = say::lesson_title(sheet_.voice, sheet_.plan, sheet_.lesson.number);
    shown_.line = lesson_line(sheet_);
    shown_.ready = have_ready(sheet_);
    for (const guide::CloseUp& close_up : sheet_.plan.close_ups)
      if (close_up.lesson == sheet_.lesson.number) add(close_up);
    add_cuttings();
    add_bars();
    add_map();
    for (Telling telling : {tell_other_work(sheet_), tell_threads(sheet_), tell_marks(sheet_), tell_notes(sheet_), tell_missed(sheet_)})
      if (!telling.empty()) shown_.rest.push_back(std::move(telling));
    return std::move(shown_);
  }

 private:
  void add(const guide::CloseUp& close_up) {
    CloseUpPicture made = close_up_picture(sheet_, close_up, {size_.width, size_.width, size_.height, size_.height});
    frames_.push_back(map_frame(sheet_, close_up, made.picture.window));
    if (close_up.shows == guide::Shows::start && made.count_in && !made.counts_inside) add_overview(close_up, made);
    Shown shown;
    shown.letter = close_up.letter;
    shown.name = small(close_up.letter);
    shown.telling = tell_close_up(sheet_, close_up, made);
    shown.trail = close_up.trail;
    shown.first = close_up.first;
    shown.last = close_up.last;
    finish(std::move(shown), made.picture);
  }

  /// The way from a landmark that is too far off for the close-up.
  void add_overview(const guide::CloseUp& close_up, const CloseUpPicture& made) {
    Shown shown;
    shown.letter = close_up.letter;
    shown.name = small(close_up.letter) + "-count";
    tell_count_in(sheet_, close_up, made, shown.telling);
    finish(std::move(shown), draw_overview(sheet_, close_up, made.count_in->count, size_.width, size_.height));
  }

  /// Each picture with the cautions; words that have none stand before the next.
  void add_cuttings() {
    Telling before;
    for (CutPiece& piece : cut_pieces(sheet_, {{size_.width, size_.height}, {size_.width, size_.height}, size_.width, size_.height})) {
      if (piece.table) continue;  // tables are shown by themselves
      if (!piece.picture) {
        before.append(piece.telling);
        continue;
      }
      frames_.insert(frames_.end(), piece.frames.begin(), piece.frames.end());
      add_cautions(piece.telling);
      Shown shown;
      shown.letter = piece.letter;
      shown.name = piece.name;
      if (!before.empty()) add_cautions(before);
      shown.before = std::exchange(before, {});
      shown.telling = std::move(piece.telling);
      finish(std::move(shown), *piece.picture);
    }
    if (before.empty()) return;
    add_cautions(before);
    shown_.rest.push_back(std::move(before));
  }

  void add_cautions(Telling& telling) const {
    telling.strong(sheet_.say("page.caution.title"));
    for (const std::string& caution : say::cutting_cautions(sheet_.voice)) telling.paragraph(caution);
  }

  void add_bars() {
    for (CutPiece& piece : bar_pieces(sheet_, {size_.width, size_.width, size_.height}, static_cast<int>(frames_.size()))) {
      if (!piece.picture) {
        shown_.rest.push_back(std::move(piece.telling));
        continue;
      }
      frames_.insert(frames_.end(), piece.frames.begin(), piece.frames.end());
      Shown shown;
      shown.letter = piece.letter;
      shown.name = piece.name;
      shown.telling = std::move(piece.telling);
      finish(std::move(shown), *piece.picture);
    }
  }

  void add_map() {
    Shown shown;
    shown.name = "map";
    shown.telling.heading(sheet_.say("shown.map"));
    MapOrder order;
    order.width = size_.width;
    order.height = size_.height;
    order.frames = frames_;
    for (const guide::Mark& mark : sheet_.plan.marks)
      if (mark.lesson == sheet_.lesson.number) order.corners.push_back(mark.hole);
    finish(std::move(shown), DesignMap(sheet_).draw(order));
  }

  void finish(Shown shown, const Picture& picture) {
    const std::string heading = shown.telling.empty() ? "" : shown.telling.pieces().front().text;
    shown.title = shown.letter.empty() ? heading : sheet_.say("page.close-up.title", {{"letter", shown.letter}, {"title", heading}});
    shown.list.width = picture.width + 2 * round_picture;
    shown.list.height = picture.height + 2 * round_picture;
    shown.list.title = shown.title;
    put(shown.list, picture.list, {round_picture, round_picture});
    shown_.pictures.push_back(std::move(shown));
  }

  const Sheet& sheet_;
  const ShownSize& size_;
  std::vector<MapFrame> frames_;
  ShownLesson shown_;
};

}  // namespace

ShownLesson show_lesson(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                        const list::Measure& measure, const ShownSize& size) {
  const Remembered remembered(measure);
  const Sheet sheet{course,    plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, remembered, styles_for(size.print),
                    {210, 297}};
  return Lesson(sheet, size).show();
}

std::string ready_for(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice,
                      const list::Measure& measure) {
  return have_ready({course, plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, measure, styles_for(Print::normal), {210, 297}});
}

std::string plain(const Telling& telling) {
  std::string text;
  for (const Telling::Piece& piece : telling.pieces()) text += (text.empty() ? "" : "\n") + piece.text;
  return text;
}

}  // namespace picture
