#include "picture/chart.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "picture/cut_chart.h"
#include "picture/far_cells.h"

namespace picture {

namespace {

class Chart {
 public:
  Chart(const ChartView& view, const ChartColours& colours) : view_(view), colours_(colours) {
    list_.width = view.width;
    list_.height = view.height;
  }

  void grid() {
    constexpr double finest = 4;  // pixels between two lines, below which only every fourth is drawn
    const double shift = view_.line == course::Line::thread ? 0.5 : 0;
    for (int n = static_cast<int>(std::floor(view_.x)) - 1; n <= view_.x + view_.width + 1; ++n) grid_line(n, shift, true, finest);
    for (int n = static_cast<int>(std::floor(view_.y)) - 1; n <= view_.y + view_.height + 1; ++n) grid_line(n, shift, false, finest);
  }

  /// A closed line round the cloth; the folds in dashes far longer than those of the thread on the back.
  void folds(const ChartIndex& index) {
    const cloth::Box& c = index.cloth();
    const list::Point top = at({c.x0, c.y0}), bottom = at({c.x1, c.y1}), middle = at(index.middle());
    const double left = std::min(top.x, bottom.x), right = std::max(top.x, bottom.x);
    for (const double y : {top.y, bottom.y}) long_line({left, y}, {right, y}, 0);
    for (const double x : {left, right}) long_line({x, top.y}, {x, bottom.y}, 0);
    constexpr double dash = 18;  // pixels, half of it free
    long_line({left, middle.y}, {right, middle.y}, dash / view_.pixels);
    long_line({middle.x, top.y}, {middle.x, bottom.y}, dash / view_.pixels);
  }

  /// Later work lies undermost, this lesson's uppermost.
  void stitches(const ChartIndex& index, cloth::Box box) {
    std::array<std::vector<ChartIndex::Lying>, 3> layers;
    index.each_in(box, [&](const ChartIndex::Lying& s) {
      const int layer = layer_of(s);
      if (shown(s, layer)) layers[static_cast<std::size_t>(layer)].push_back(s);
    });
    for (const int layer : {2, 1, 0})
      for (const ChartIndex::Lying& s : layers[static_cast<std::size_t>(layer)]) stitch(s, layer);
  }

  /// Where single stitches are too fine to see: which squares of the cloth have any, the uppermost layer of each, in level runs.
  void far_stitches(const ChartIndex& index, cloth::Box box) {
    FarCells cells(view_);
    index.each_in(box, [&](const ChartIndex::Lying& s) {
      const int layer = layer_of(s);
      if (shown(s, layer)) cells.mark(at(s.stitch.a), at(s.stitch.b), s.part == view_.picked ? FarCells::picked : static_cast<std::uint8_t>(3 - layer));
    });
    cells.each_run([&](list::Rect rect, std::uint8_t rank) {
      const int layer = rank == FarCells::picked ? 0 : 3 - rank;
      list_.add(role_of(layer), list::Panel{rect, 0, true, rank == FarCells::picked ? colours_.accent : colour_of(layer), 0, {}});
    });
  }

  void needle(const guide::PlacedTrail& trail, int stitch_number) {
    const auto& stitches = trail.trail.stitches;
    const int from = std::max(0, stitch_number - 3);
    const bool looped = trail.trail.order == stitch::Order::looped;
    if (looped)
      for (int k = std::max(1, from); k <= stitch_number; ++k) ridge(stitches[k - 1].up, stitches[k].up);
    if (view_.back && !looped)
      for (int k = std::max(1, from); k <= stitch_number; ++k) back(stitches[k - 1].down, stitches[k].up);
    const trail::Worked& w = stitches[static_cast<std::size_t>(stitch_number)];
    stroke(list::Role::stitch_now, at(w.up), at(w.down), 0.34, colours_.accent);
    constexpr double around = 2;  // threads: the mark and its number
    if (!sees(at(w.up), at(w.down), around)) return;
    list_.add(list::Role::hole_up, list::Disc{at(w.up), 0.32, colours_.accent, 0, colours_.accent});
    list_.add(list::Role::hole_down, list::Disc{at(w.down), 0.32, colours_.ground, 0.12, colours_.accent});
    number(w.up, 2 * stitch_number + (looped ? 3 : 1));
    number(w.down, 2 * stitch_number + 2);
  }

  void cut_ground() { draw_cut_ground(list_, view_, colours_); }
  void snip_at_hand() { draw_snip_at_hand(list_, view_, colours_); }

  list::List take() { return std::move(list_); }

 private:
  list::Point at(cloth::Hole h) const {
    return {(view_.mirror ? -h.x : h.x) - view_.x, h.y - view_.y};
  }

  int layer_of(const ChartIndex::Lying& s) const { return s.lesson == view_.lesson ? 0 : s.lesson != 0 && s.lesson < view_.lesson ? 1 : 2; }

  bool shown(const ChartIndex::Lying& s, int layer) const { return layer < 2 || view_.later || s.part == view_.picked; }
  list::Colour colour_of(int layer) const { return layer == 0 ? colours_.now : layer == 1 ? colours_.before : colours_.later; }
  static list::Role role_of(int layer) { return layer == 0 ? list::Role::stitch_now : layer == 1 ? list::Role::stitch_before : list::Role::stitch_later; }

  void stitch(const ChartIndex::Lying& s, int layer) {
    const list::Colour colour = s.part == view_.picked ? colours_.accent : colour_of(layer);
    const double width = layer == 2 ? 0.18 : 0.34, gap = 0.22;
    list::Point a = at(s.stitch.a), b = at(s.stitch.b);
    const double length = std::hypot(b.x - a.x, b.y - a.y), dx = (b.x - a.x) / length * gap, dy = (b.y - a.y) / length * gap;
    stroke(role_of(layer), {a.x + dx, a.y + dy}, {b.x - dx, b.y - dy}, width, colour);
  }

  void ridge(cloth::Hole from, cloth::Hole to) {
    if (from != to) stroke(list::Role::stitch_now, at(from), at(to), 0.28, colours_.accent);
  }

  void back(cloth::Hole from, cloth::Hole to) {
    stroke(list::Role::back_thread, at(from), at(to), 0.12, colours_.accent, list::Dash::back);
  }

  /// Is any of the rectangle round both points, widened, within the view?
  bool sees(list::Point a, list::Point b, double by) const {
    return std::max(a.x, b.x) + by > 0 && std::min(a.x, b.x) - by < view_.width && std::max(a.y, b.y) + by > 0 && std::min(a.y, b.y) - by < view_.height;
  }

  void stroke(list::Role role, list::Point a, list::Point b, double width, list::Colour colour, list::Dash dash = list::Dash::none,
              list::Cap cap = list::Cap::round) {
    if (!sees(a, b, width / 2)) return;
    list::Item& item = list_.items.emplace_back();
    item.role = role;
    list::Stroke& line = item.what.emplace<list::Stroke>();
    line.points = {a, b};
    line.width = width;
    line.colour = colour;
    line.dash = dash;
    line.cap = cap;
  }

  /// Level or upright, in dashes so long (threads; 0: unbroken); only what is seen of it is listed.
  void long_line(list::Point a, list::Point b, double dash) {
    const bool level = a.y == b.y;
    const double width = 1.4 / view_.pixels, from = std::max(level ? a.x : a.y, -dash), to = std::min(level ? b.x : b.y, (level ? view_.width : view_.height) + dash);
    const auto piece = [&](double begin, double end) {
      stroke(list::Role::landmark, {level ? begin : a.x, level ? a.y : begin}, {level ? end : a.x, level ? a.y : end}, width, colours_.before, list::Dash::none, list::Cap::flat);
    };
    if (dash == 0) return piece(from, to);
    const double first = level ? a.x : a.y;  // a dash begins there, wherever the view begins
    for (double at = first + std::floor((from - first) / (1.5 * dash)) * 1.5 * dash; at < to; at += 1.5 * dash) piece(std::max(at, from), std::min(at + dash, to));
  }

  void number(cloth::Hole h, int n) {
    constexpr double size_pt = 2.6;  // one thread is one unit: about 0.9 threads high
    const list::Point p = at(h);
    list_.add(list::Role::number, list::Text{{p.x + 0.5, p.y - 0.5}, std::to_string(n), {size_pt, list::Weight::bold}, list::Align::left, colours_.ink});
  }

  void grid_line(int n, double shift, bool upright, double finest) {
    const bool fourth = ((n % 4) + 4) % 4 == 0;
    if (!fourth && view_.pixels < finest) return;
    if (fourth && view_.pixels * 4 < finest && ((n % 40) + 40) % 40 != 0) return;
    const double hairline = std::max(0.02, 1 / std::max(1.0, view_.pixels));
    const list::Colour colour = fourth ? colours_.grid_fourth : colours_.grid;
    const double v = n + shift - (upright ? view_.x : view_.y);
    if (v < 0 || v > (upright ? view_.width : view_.height)) return;
    upright ? stroke(list::Role::grid, {v, 0}, {v, view_.height}, hairline, colour, list::Dash::none, list::Cap::flat)
            : stroke(list::Role::grid, {0, v}, {view_.width, v}, hairline, colour, list::Dash::none, list::Cap::flat);
  }

  const ChartView& view_;
  const ChartColours& colours_;
  list::List list_;
};

}  // namespace

cloth::Box seen_box(const ChartView& view) {
  const int x0 = static_cast<int>(std::floor(view.x)) - 1, x1 = static_cast<int>(std::ceil(view.x + view.width)) + 1;
  const cloth::Box box{x0, static_cast<int>(std::floor(view.y)) - 1, x1, static_cast<int>(std::ceil(view.y + view.height)) + 1};
  return view.mirror ? cloth::Box{-box.x1, box.y0, -box.x0, box.y1} : box;
}

list::List chart(const course::Course&, const plan::Plan& plan, const ChartIndex& index, const ChartView& view, const ChartColours& colours) {
  Chart chart(view, colours);
  chart.grid();
  if (view.folds) chart.folds(index);
  if (view.cuts) chart.cut_ground();
  constexpr double too_fine = 2.5;  // pixels of a thread
  view.pixels < too_fine ? chart.far_stitches(index, seen_box(view)) : chart.stitches(index, seen_box(view));
  if (view.needle) chart.needle(plan.trails[static_cast<std::size_t>(view.needle->trail)], view.needle->stitch);
  if (view.cuts && view.at_hand) chart.snip_at_hand();
  return chart.take();
}

}  // namespace picture
