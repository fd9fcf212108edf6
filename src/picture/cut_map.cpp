#include "picture/cut_map.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "picture/cut_marks.h"
#include "picture/ink.h"
#include "picture/map.h"
#include "picture/view.h"

namespace picture {
namespace {

constexpr double most_scale = 3.2, least_scale = 1.7;  // mm a thread
constexpr double inset = 0.22;                         // threads from a block's box to its outermost stitches
constexpr double cap_height = 0.727;                   // of the type's size, by Inter's own measures
constexpr int margin = 3;                              // threads round the blocks

struct Tile {
  cloth::Box window;
  std::vector<int> numbers;
};

class Maps {
 public:
  Maps(const Sheet& sheet, const CutWork& work, double width, double height)
      : sheet_(sheet), work_(work), width_(width), height_(height), style_(sheet.styles.number) {
    style_.weight = list::Weight::bold;
    std::set<int> blocks;
    for (const CutEnd& end : work.ends) twice_ = !blocks.insert(end.block).second || twice_;
    const double text = sheet.measure.measure(std::to_string(work.ends.size()), style_).width;
    least_ = std::max(least_scale, (twice_ ? 2 * text + 1.4 : text + 1) / 4);
  }

  std::vector<CutMap> draw() {
    std::vector<CutMap> maps;
    for (const Tile& tile : tiles()) maps.push_back({draw_tile(tile), tile.numbers});
    return maps;
  }

 private:
  cloth::Box box_of_end(const CutEnd& end) const {
    cloth::Box box = end.around(0, 4, 0);
    if (end.block >= 0) {
      const cloth::Box block = box_of(work_.cut->blocks[static_cast<std::size_t>(end.block)]);
      box.grow({block.x0, block.y0});
      box.grow({block.x1, block.y1});
    }
    return box;
  }

  bool fits(const cloth::Box& box) const { return (box.width() + 1) * least_ <= width_ && (box.height() + 1) * least_ <= height_; }

  Tile tile_of(const std::vector<int>& numbers) const {
    cloth::Box box = box_of_end(work_.end(numbers.front()));
    for (const int n : numbers) {
      const cloth::Box end = box_of_end(work_.end(n));
      box.grow({end.x0, end.y0});
      box.grow({end.x1, end.y1});
    }
    return {box.widened(margin), numbers};
  }

  std::vector<Tile> tiles() const {
    std::vector<int> all;
    for (const CutEnd& end : work_.ends) all.push_back(end.number);
    if (Tile tile = tile_of(all); fits(tile.window)) return {std::move(tile)};
    std::vector<Tile> tiles;
    for (int area = 0; area < work_.areas(); ++area) {
      std::vector<int> numbers;
      for (const CutEnd& end : work_.ends)
        if (end.area == area) numbers.push_back(end.number);
      Tile tile = tile_of(numbers);
      if (fits(tile.window))
        tiles.push_back(std::move(tile));
      else
        part(tile, tiles);
    }
    return tiles;
  }

  /// Pieces as large as fit, side by side; each holds the cuttings whose blocks begin in it.
  void part(const Tile& tile, std::vector<Tile>& tiles) const {
    const int wide = static_cast<int>(width_ / least_) - 12, high = static_cast<int>(height_ / least_) - 12;
    const int columns = tile.window.width() / wide + 1, rows = tile.window.height() / high + 1;
    std::vector<std::vector<int>> pieces(static_cast<std::size_t>(columns * rows));
    for (const int n : tile.numbers) {
      const cloth::Box box = box_of_end(work_.end(n));
      const int column = (box.x0 - tile.window.x0) * columns / (tile.window.width() + 1),
                row = (box.y0 - tile.window.y0) * rows / (tile.window.height() + 1);
      pieces[static_cast<std::size_t>(row * columns + column)].push_back(n);
    }
    std::sort(pieces.begin(), pieces.end());  // the one with the first number first
    for (const auto& numbers : pieces)
      if (!numbers.empty()) tiles.push_back(tile_of(numbers));
  }

  Picture draw_tile(const Tile& tile) {
    const double scale = std::min({most_scale, width_ / (tile.window.width() + 1), height_ / (tile.window.height() + 1)});
    view_ = view_of(tile.window, scale, sheet_.voice.hand);
    picture_ = {};
    picture_.width = view_.width();
    picture_.height = view_.height();
    picture_.scale = scale;
    picture_.window = tile.window;
    add_panel(picture_.list, list::Role::ground, view_.rect(), 1.6, colour::white, 0, {});
    clip_in(picture_.list, view_.rect(), 1.6);
    draw_bands();
    draw_other_stitches();
    draw_blocks();
    for (const int n : tile.numbers) draw_number(work_.end(n));
    clip_out(picture_.list);
    add_frame(picture_.list, list::Role::frame, view_.rect(), 1.6, 0.35, colour::ink);
    return std::move(picture_);
  }

  Point at(const CutEnd& end, double side, double along) const {
    const CutEnd::Place place = end.place(side, along);
    return view_.at(place.x, place.y);
  }
  static Rect rect(Point a, Point b) { return {std::min(a.x, b.x), std::min(a.y, b.y), std::abs(a.x - b.x), std::abs(a.y - b.y)}; }
  void use(Mark mark) { picture_.uses.marks.insert(mark); }

  void draw_bands() {
    for (const CutEnd& end : work_.ends) {
      if (!end.opposite.empty() && end.opposite.front() < end.number) continue;
      draw_gone(picture_.list, rect(at(end, 0, 0), at(end, end.snips(), end.length())));
      use(Mark::cut_band);
    }
  }

  bool holds(int part) const {
    const auto& blocks = work_.cut->blocks;
    return std::any_of(blocks.begin(), blocks.end(), [&](const cutwork::Bundle& b) { return b.part == part; });
  }

  void draw_other_stitches() {
    const plan::PartCutting& cut = *work_.cut;
    for (const Seen& s : run_together(stitches_in(sheet_.course, sheet_.plan, view_.window, {sheet_.lesson.number, cut.item, -1, 0}))) {
      if (holds(s.part)) continue;
      const double width = s.stage == Stage::later ? 0.13 : std::clamp(0.5 * view_.scale, 0.2, 0.7);
      draw_stitch(picture_.list, view_.at(s.stitch.a), view_.at(s.stitch.b), width, 0.05, s.stage, false);
      use(s.stage == Stage::later ? Mark::later : s.stage == Stage::before ? Mark::before : Mark::now);
    }
  }

  void draw_blocks() {
    for (const cutwork::Bundle& block : work_.cut->blocks) {
      if (block.stitches.empty()) continue;
      const cloth::Box box = box_of(block);
      draw_block_box(picture_.list, rect(view_.at(box.x0 + inset, box.y0 + inset), view_.at(box.x1 - inset, box.y1 - inset)));
      use(Mark::block_number);
    }
  }

  /// The bar at the cut end, the number in the block behind it.
  void draw_number(const CutEnd& end) {
    draw_cut_end(picture_.list, at(end, 0.25, 0.1), at(end, end.snips() - 0.25, 0.1));
    const Point middle = at(end, end.middle(), twice_ ? -1.15 : -2);
    const std::string text = std::to_string(end.number);
    const double width = sheet_.measure.measure(text, style_).width;
    add_text(picture_.list, list::Role::number, {middle.x - width / 2, middle.y + cap_height / 2 * em(style_)}, text, style_, colour::ink);
  }

  const Sheet& sheet_;
  const CutWork& work_;
  double width_, height_;
  list::TypeStyle style_;
  bool twice_ = false;  ///< some block is cut at both ends
  double least_ = least_scale;
  View view_;
  Picture picture_;
};

}  // namespace

std::vector<CutMap> cut_maps(const Sheet& sheet, const CutWork& work, double width, double height) {
  return Maps(sheet, work, width, height).draw();
}

}  // namespace picture
