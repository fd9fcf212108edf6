#include "picture/chart.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace picture {

ChartIndex::ChartIndex(const course::Course& course, const plan::Plan& plan) {
  std::map<std::pair<int, cloth::Stitch>, int> first;
  for (const guide::PlacedTrail& trail : plan.trails)
    for (const guide::Section& section : trail.sections)
      for (int k = section.first; k <= section.last; ++k) {
        const trail::Worked& w = trail.trail.stitches[static_cast<std::size_t>(k)];
        int& lesson = first[{trail.part, cloth::Stitch{w.up, w.down}.normal()}];
        lesson = lesson == 0 ? section.lesson : std::min(lesson, section.lesson);
      }
  for (std::size_t p = 0; p < course.parts.size(); ++p)
    for (const cloth::Stitch& stitch : course.parts[p].work.stitches) {
      const auto found = first.find({static_cast<int>(p), stitch.normal()});
      index_.add(stitch, static_cast<int>(part_.size()));
      part_.push_back(static_cast<int>(p));
      lesson_.push_back(found == first.end() ? 0 : found->second);
    }
}

std::vector<ChartIndex::Lying> ChartIndex::in(cloth::Box box) const {
  std::vector<Lying> lying;
  for (const int n : index_.in(box)) lying.push_back({index_.stitch(n), part_[static_cast<std::size_t>(n)], lesson_[static_cast<std::size_t>(n)]});
  return lying;
}

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

  void stitches(const std::vector<ChartIndex::Lying>& lying) {
    for (const int layer : {2, 1, 0})  // later work lies undermost, this lesson's uppermost
      for (const ChartIndex::Lying& s : lying)
        if (layer_of(s) == layer && (layer < 2 || view_.later || s.part == view_.picked)) stitch(s, layer);
  }

  void needle(const guide::PlacedTrail& trail, int stitch_number) {
    const auto& stitches = trail.trail.stitches;
    const int from = std::max(0, stitch_number - 3);
    if (view_.back)
      for (int k = std::max(1, from); k <= stitch_number; ++k) back(stitches[k - 1].down, stitches[k].up);
    const trail::Worked& w = stitches[static_cast<std::size_t>(stitch_number)];
    stroke(list::Role::stitch_now, at(w.up), at(w.down), 0.34, colours_.accent);
    list_.add(list::Role::hole_up, list::Disc{at(w.up), 0.32, colours_.accent, 0, colours_.accent});
    list_.add(list::Role::hole_down, list::Disc{at(w.down), 0.32, colours_.ground, 0.12, colours_.accent});
    number(w.up, 2 * stitch_number + 1);
    number(w.down, 2 * stitch_number + 2);
  }

  list::List take() { return std::move(list_); }

 private:
  list::Point at(cloth::Hole h) const {
    return {(view_.mirror ? -h.x : h.x) - view_.x, h.y - view_.y};
  }

  int layer_of(const ChartIndex::Lying& s) const { return s.lesson == view_.lesson ? 0 : s.lesson != 0 && s.lesson < view_.lesson ? 1 : 2; }

  void stitch(const ChartIndex::Lying& s, int layer) {
    const list::Colour colour = s.part == view_.picked ? colours_.accent : layer == 0 ? colours_.now : layer == 1 ? colours_.before : colours_.later;
    const list::Role role = layer == 0 ? list::Role::stitch_now : layer == 1 ? list::Role::stitch_before : list::Role::stitch_later;
    const double width = layer == 2 ? 0.18 : 0.34, gap = 0.22;
    list::Point a = at(s.stitch.a), b = at(s.stitch.b);
    const double length = std::hypot(b.x - a.x, b.y - a.y), dx = (b.x - a.x) / length * gap, dy = (b.y - a.y) / length * gap;
    stroke(role, {a.x + dx, a.y + dy}, {b.x - dx, b.y - dy}, width, colour);
  }

  void back(cloth::Hole from, cloth::Hole to) {
    stroke(list::Role::back_thread, at(from), at(to), 0.12, colours_.accent, list::Dash::back);
  }

  void stroke(list::Role role, list::Point a, list::Point b, double width, list::Colour colour, list::Dash dash = list::Dash::none,
              list::Cap cap = list::Cap::round) {
    list::Item& item = list_.items.emplace_back();
    item.role = role;
    list::Stroke& line = item.what.emplace<list::Stroke>();
    line.points = {a, b};
    line.width = width;
    line.colour = colour;
    line.dash = dash;
    line.cap = cap;
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
    upright ? stroke(list::Role::grid, {v, 0}, {v, view_.height}, hairline, colour, list::Dash::none, list::Cap::flat)
            : stroke(list::Role::grid, {0, v}, {view_.width, v}, hairline, colour, list::Dash::none, list::Cap::flat);
  }

  const ChartView& view_;
  const ChartColours& colours_;
  list::List list_;
};

cloth::Box seen(const ChartView& view) {
  const int x0 = static_cast<int>(std::floor(view.x)) - 1, x1 = static_cast<int>(std::ceil(view.x + view.width)) + 1;
  const cloth::Box box{x0, static_cast<int>(std::floor(view.y)) - 1, x1, static_cast<int>(std::ceil(view.y + view.height)) + 1};
  return view.mirror ? cloth::Box{-box.x1, box.y0, -box.x0, box.y1} : box;
}

}  // namespace

list::List chart(const course::Course&, const plan::Plan& plan, const ChartIndex& index, const ChartView& view, const ChartColours& colours) {
  Chart chart(view, colours);
  chart.grid();
  chart.stitches(index.in(seen(view)));
  if (view.needle) chart.needle(plan.trails[static_cast<std::size_t>(view.needle->trail)], view.needle->stitch);
  return chart.take();
}

}  // namespace picture
