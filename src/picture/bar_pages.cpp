#include "picture/bar_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>

#include "guide/close_ups_window.h"
#include "picture/bar_picture.h"

namespace picture {
namespace {

std::string small(std::string letters) {
  std::transform(letters.begin(), letters.end(), letters.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return letters;
}

/// What looks alike: the same filling with as many sides at blocks.
using Sort = std::pair<int, int>;
Sort sort_of(const cutwork::FillingWork& filling) {
  const auto blocks = filling.sides.empty() ? 0 : std::count(filling.sides.begin(), filling.sides.end() - 1, -1);
  return {static_cast<int>(filling.kind), static_cast<int>(std::min<std::ptrdiff_t>(blocks, 1))};
}

class BarPages {
 public:
  BarPages(const Sheet& sheet, const BarRooms& rooms, int letters) : sheet_(sheet), rooms_(rooms), letters_(letters) {}

  std::vector<CutPiece> make() {
    const std::vector<BarWork> all = bar_work(sheet_);
    for (const BarWork& work : all) {
      add_maps(work, all.size() > 1);
      if (work.bars()) add_bar(work);
      add_fillings(work);
      add_picot(work);
      CutPiece& ends = pieces_.emplace_back();
      ends.telling = tell_bar_ends(sheet_, work);
    }
    return std::move(pieces_);
  }

 private:
  void add_maps(const BarWork& work, bool several) {
    bool first = true;
    for (Picture& picture : bar_maps(sheet_, work, rooms_.map_width, rooms_.map_height)) {
      CutPiece& piece = pieces_.emplace_back();
      piece.name = fmt::format("route-{}", ++maps_);
      if (first) piece.telling = tell_bar_map(sheet_, work, several);
      else piece.telling.heading(sheet_.say("page.bars.map.on"));
      first = false;
      piece.frames = {{"", picture.window, {}}};
      piece.part_of_area = true;
      piece.picture = std::move(picture);
      piece.gridded = true;
    }
  }

  void add_close_up(Picture picture, Telling telling) {
    CutPiece& piece = pieces_.emplace_back();
    piece.letter = guide::letter(letters_++);
    piece.name = small(piece.letter);
    piece.telling = std::move(telling);
    piece.frames = {{piece.letter, picture.window, {}}};
    draw_letter(picture.list, {0, 0}, 3.3 * sheet_.styles.letter.size_pt / 13, piece.letter, sheet_.styles.letter, sheet_.measure);
    piece.picture = std::move(picture);
    piece.gridded = true;
  }

  void add_bar(const BarWork& work) { add_close_up(bar_picture(sheet_, work, work.first, rooms_.width), tell_bar(sheet_, work, work.first)); }

  /// One of each sort, the first there is.
  void add_fillings(const BarWork& work) {
    std::map<Sort, int> alike;
    for (int i = work.first; i <= work.last; ++i)
      for (const auto& filling : work.item(i).fillings) ++alike[sort_of(filling)];
    for (int i = work.first; i <= work.last; ++i)
      for (std::size_t f = 0; f < work.item(i).fillings.size(); ++f) {
        const auto found = alike.find(sort_of(work.item(i).fillings[f]));
        if (found == alike.end()) continue;
        add_close_up(filling_picture(sheet_, work, i, static_cast<int>(f), rooms_.width), tell_filling(sheet_, work, i, static_cast<int>(f), found->second));
        alike.erase(found);
      }
  }

  void add_picot(const BarWork& work) {
    for (int i = work.first; i <= work.last; ++i)
      if (work.item(i).picots[0] || work.item(i).picots[1])
        return add_close_up(picot_picture(sheet_, work, i, rooms_.width), tell_picot(sheet_, work, i));
  }

  const Sheet& sheet_;
  const BarRooms& rooms_;
  int letters_, maps_ = 0;
  std::vector<CutPiece> pieces_;
};

}  // namespace

std::vector<CutPiece> bar_pieces(const Sheet& sheet, const BarRooms& rooms, int letters) { return BarPages(sheet, rooms, letters).make(); }

}  // namespace picture
