#include "picture/cut_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "guide/close_ups_window.h"
#include "picture/cut_map.h"
#include "picture/marks.h"

namespace picture {
namespace {

std::string small(std::string letters) {
  std::transform(letters.begin(), letters.end(), letters.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return letters;
}

class CutPages {
 public:
  CutPages(const Sheet& sheet, const CutRooms& rooms) : sheet_(sheet), rooms_(rooms), work_(cut_work(sheet)) {
    for (const guide::CloseUp& close_up : sheet.plan.close_ups) letters_ += close_up.lesson == sheet.lesson.number ? 1 : 0;
  }

  std::vector<CutPiece> make() {
    if (work_.empty()) return {};
    on_cloth_.emplace(sheet_.course, sheet_.plan.trails);
    for (const CutWork& work : work_) {
      add_before(work);
      add_maps(work);
      add_close_ups(work);
    }
    for (const CutWork& work : work_) add_mending(work);
    return std::move(pieces_);
  }

 private:
  bool several() const { return work_.size() > 1; }

  void add_table(Table table) {
    pieces_.emplace_back();
    pieces_.back().table = std::move(table);
  }

  void add_before(const CutWork& work) {
    pieces_.emplace_back();
    pieces_.back().telling = tell_before_cutting(sheet_, work, several());
    if (work.areas() > 1) add_table(table_of_areas(sheet_, work));
    add_table(table_of_order(sheet_, work));
    for (Telling& ready : tell_ready(sheet_, work)) {
      pieces_.emplace_back();
      pieces_.back().telling = std::move(ready);
    }
  }

  /// Where there are several, each has a letter and its frame on the small picture.
  void add_maps(const CutWork& work) {
    std::vector<CutMap> maps = cut_maps(sheet_, work, rooms_.map_width, rooms_.map_height);
    for (CutMap& map : maps) {
      CutPiece& piece = pieces_.emplace_back();
      piece.name = fmt::format("cut-map-{}", ++maps_);
      piece.telling = tell_cut_map(sheet_, work, map.numbers, several());
      piece.picture = std::move(map.picture);
      if (maps.size() == 1) continue;
      piece.part_of_area = true;
      piece.letter = guide::letter(letters_++);
      piece.frames = {{piece.letter, piece.picture->window, {}}};
      draw_letter(piece.picture->list, {0, 0}, 3.3 * sheet_.styles.letter.size_pt / 13, piece.letter, sheet_.styles.letter, sheet_.measure);
    }
  }

  /// One picture for each sort of place, and none for what an earlier one shows already.
  void add_close_ups(const CutWork& work) {
    const std::vector<int> alike = cut_alike(sheet_, work);
    std::set<int> told;
    std::string first_letter;
    for (const CutEnd& end : work.ends) {
      if (told.count(alike[static_cast<std::size_t>(end.number - 1)]) != 0) continue;
      CutPiece& piece = pieces_.emplace_back();
      piece.letter = guide::letter(letters_++);
      piece.name = small(piece.letter);
      CutPicture made = cut_picture(sheet_, work, end.number, piece.letter, rooms_.close_up);
      CutTold telling;
      telling.shown = made.numbers;
      telling.first = told.empty();
      if (told.empty()) first_letter = piece.letter;
      telling.first_letter = first_letter;
      for (const int n : made.numbers) told.insert(alike[static_cast<std::size_t>(n - 1)]);
      telling.alike = like(work, alike, made.numbers);
      if (telling.first) telling.count = count_to(work, end);
      piece.telling = tell_cutting(sheet_, work, telling);
      piece.frames = {{piece.letter, made.picture.window, places(work, telling.alike)}};
      piece.picture = std::move(made.picture);
      piece.gridded = true;
    }
  }

  static std::vector<int> like(const CutWork& work, const std::vector<int>& alike, const std::vector<int>& shown) {
    std::vector<int> numbers;
    for (const CutEnd& end : work.ends) {
      const auto sort = [&](int n) { return alike[static_cast<std::size_t>(n - 1)]; };
      const bool there = std::find(shown.begin(), shown.end(), end.number) != shown.end();
      if (!there && std::any_of(shown.begin(), shown.end(), [&](int n) { return sort(n) == sort(end.number); }))
        numbers.push_back(end.number);
    }
    return numbers;
  }

  static std::vector<cloth::Hole> places(const CutWork& work, const std::vector<int>& numbers) {
    std::vector<cloth::Hole> holes;
    for (const int n : numbers) {
      const CutEnd& end = work.end(n);
      const CutEnd::Place place = end.place(end.snips() / 2, 0);
      holes.push_back({static_cast<int>(place.x), static_cast<int>(place.y)});
    }
    return holes;
  }

  /// How the hole is found at which the first thread leaves the block.
  std::optional<guide::Count> count_to(const CutWork& work, const CutEnd& end) const {
    return on_cloth_->find(end.hole(), {sheet_.lesson.number, work.cut->item, 0}).count;
  }

  void add_mending(const CutWork& work) {
    CutPiece& piece = pieces_.emplace_back();
    piece.name = fmt::format("mend-{}", ++mends_);
    MendPicture made = mend_picture(sheet_, work, rooms_.mend);
    piece.telling = tell_mending(sheet_, work, made.number);
    piece.picture = std::move(made.picture);
    piece.gridded = true;
    add_table(table_of_new_threads(sheet_, work));
  }

  const Sheet& sheet_;
  const CutRooms& rooms_;
  std::vector<CutWork> work_;
  std::optional<guide::OnCloth> on_cloth_;
  std::vector<CutPiece> pieces_;
  int letters_ = 0, maps_ = 0, mends_ = 0;
};

}  // namespace

std::vector<CutPiece> cut_pieces(const Sheet& sheet, const CutRooms& rooms) { return CutPages(sheet, rooms).make(); }

}  // namespace picture
