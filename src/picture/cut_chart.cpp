#include "picture/cut_chart.h"

#include <cmath>
#include <string>

#include "picture/ink.h"
#include "picture/scissors.h"

namespace picture {
namespace {

using cutwork::Axis;

constexpr double too_fine = 2.5;      // pixels of a thread below which threads are not told apart
constexpr double thread_wide = 0.66;  // of a thread left, in threads
constexpr std::uint8_t upright_out = 1, across_out = 2, both_out = 3;

Point at(const ChartView& view, double x, double y) { return {(view.mirror ? -x : x) - view.x, y - view.y}; }

Rect rect(const ChartView& view, const cloth::Box& box) {
  const Point a = at(view, box.x0, box.y0), b = at(view, box.x1, box.y1);
  return {std::min(a.x, b.x), a.y, std::abs(b.x - a.x), b.y - a.y};
}

/// Squares of the cloth within the view, and which of their two threads are out.
class OutSquares {
 public:
  explicit OutSquares(const ChartView& view) {
    const cloth::Box seen = seen_box(view);
    const auto out = [&](const Strand& s) { return lies(s, {view.lesson, view.snips}) == Lies::out; };
    bool any = false;
    view.cuts->each_in(seen, [&](const Strand& s) {
      if (!out(s)) return;
      const cloth::Box box = cut_to(seen, s);
      if (!any) box_ = box;
      any = true;
      box_.grow({box.x0, box.y0}), box_.grow({box.x1, box.y1});
    });
    if (!any) return;
    columns_ = box_.width();
    squares_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(box_.height()), 0);
    view.cuts->each_in(seen, [&](const Strand& s) {
      if (out(s)) mark(cut_to(seen, s), s.span.axis == Axis::v ? upright_out : across_out);
    });
  }

  /// Rectangles of squares of that sort: runs of a row, grown down while the next row has the same run.
  template <class Tell>
  void each(std::uint8_t sort, const Tell& tell) {
    for (int y = box_.y0; y < box_.y1; ++y)
      for (int x = box_.x0; x < box_.x1; ++x) {
        if (square(x, y) != sort) continue;
        cloth::Box run{x, y, x + 1, y + 1};
        while (run.x1 < box_.x1 && square(run.x1, y) == sort) ++run.x1;
        while (run.y1 < box_.y1 && full(run, run.y1, sort)) ++run.y1;
        for (int row = run.y0; row < run.y1; ++row) std::fill_n(&square(run.x0, row), run.width(), std::uint8_t{0});
        tell(run);
      }
  }

 private:
  static cloth::Box cut_to(const cloth::Box& seen, const Strand& s) {
    const cutwork::Span& span = s.span;
    const cloth::Box all = span.axis == Axis::v ? cloth::Box{span.thread, span.from, span.thread + 1, span.to}
                                                : cloth::Box{span.from, span.thread, span.to, span.thread + 1};
    return {std::max(all.x0, seen.x0), std::max(all.y0, seen.y0), std::min(all.x1, seen.x1 + 1), std::min(all.y1, seen.y1 + 1)};
  }
  void mark(const cloth::Box& box, std::uint8_t bit) {
    for (int y = box.y0; y < box.y1; ++y)
      for (int x = box.x0; x < box.x1; ++x) square(x, y) = static_cast<std::uint8_t>(square(x, y) | bit);
  }
  bool full(const cloth::Box& run, int y, std::uint8_t sort) {
    for (int x = run.x0; x < run.x1; ++x)
      if (square(x, y) != sort) return false;
    return true;
  }
  std::uint8_t& square(int x, int y) {
    return squares_[static_cast<std::size_t>(y - box_.y0) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(x - box_.x0)];
  }

  cloth::Box box_;
  int columns_ = 0;
  std::vector<std::uint8_t> squares_;
};

/// Threads of one way, left where those of the other way are out.
void draw_left(list::List& list, const ChartView& view, const ChartColours& colours, const cloth::Box& box, Axis left) {
  add_panel(list, list::Role::cut_out, rect(view, box), 0, colours.gone, 0, {});
  const bool v = left == Axis::v;
  for (int n = v ? box.x0 : box.y0; n < (v ? box.x1 : box.y1); ++n) {
    const double middle = n + 0.5;
    const Point a = v ? at(view, middle, box.y0) : at(view, box.x0, middle), b = v ? at(view, middle, box.y1) : at(view, box.x1, middle);
    add_line(list, list::Role::thread_left, a, b, thread_wide, colours.thread, list::Cap::flat);
  }
}

}  // namespace

void draw_cut_ground(list::List& list, const ChartView& view, const ChartColours& colours) {
  OutSquares out(view);
  out.each(both_out, [&](const cloth::Box& box) { add_panel(list, list::Role::cut_out, rect(view, box), 0, colours.gone, 0, {}); });
  if (view.pixels < too_fine) return;  // bars look whole from so far
  out.each(upright_out, [&](const cloth::Box& box) { draw_left(list, view, colours, box, Axis::h); });
  out.each(across_out, [&](const cloth::Box& box) { draw_left(list, view, colours, box, Axis::v); });
}

// ---- the snip at hand ----

namespace {

class AtHand {
 public:
  AtHand(list::List& list, const ChartView& view, const ChartColours& colours)
      : list_(list), view_(view), colours_(colours), next_(view.cuts->snip(view.lesson, view.snips)) {}

  void draw() {
    const int snips = view_.cuts->snips(view_.lesson);
    int first = view_.snips, last = view_.snips;
    while (first > 0 && together(first - 1)) --first;
    while (last + 1 < snips && together(last + 1)) ++last;
    for (int n = first; n <= last; ++n) draw_thread(view_.cuts->snip(view_.lesson, n));
    for (int n = first; n <= last; ++n) draw_snip(view_.cuts->snip(view_.lesson, n), n == view_.snips);
    draw_number(first, last);
    draw_blades();
  }

 private:
  bool together(int number) const {
    const CutIndex::Snip snip = view_.cuts->snip(view_.lesson, number);
    return snip.strand->cutting == next_.strand->cutting && snip.cut().cutting == next_.cut().cutting;
  }
  /// `along` threads into the cloth from the snipped end, `aside` from the thread's own near side.
  Point place(const CutIndex::Snip& snip, double aside, double along) const {
    const cutwork::Span& span = snip.strand->span;
    const double a = snip.end == 0 ? span.from + along : span.to - along, b = span.thread + aside;
    return span.axis == Axis::v ? at(view_, b, a) : at(view_, a, b);
  }
  void draw_thread(const CutIndex::Snip& snip) {
    const cutwork::Span& span = snip.strand->span;
    const Lies now = lies(*snip.strand, {view_.lesson, view_.snips});
    if (now == Lies::out) return;
    add_stroke(list_, list::Role::caution, {place(snip, 0.5, 0), place(snip, 0.5, span.to - span.from)}, 0.16, colours_.accent,
               now == Lies::whole ? list::Dash::none : list::Dash::back, list::Cap::flat);
  }
  void draw_snip(const CutIndex::Snip& snip, bool now) {
    add_line(list_, list::Role::caution, place(snip, 0.08, off_end), place(snip, 0.92, off_end), now ? 0.34 : 0.18, colours_.accent,
             list::Cap::flat);
  }
  /// On the block, behind the end that is cut.
  void draw_number(int first, int last) {
    const CutIndex::Snip a = view_.cuts->snip(view_.lesson, first), b = view_.cuts->snip(view_.lesson, last);
    const Point middle = between(place(a, 0.5, behind), place(b, 0.5, behind), 0.5);
    const std::string number = std::to_string(next_.cut().cutting);
    constexpr double size_pt = 4.4;
    add_disc(list_, list::Role::caution, middle, 0.75 + 0.45 * static_cast<double>(number.size()), colours_.ground, 0.12, colours_.accent);
    add_text(list_, list::Role::number, {middle.x, middle.y + 0.56}, number, {size_pt, list::Weight::bold}, colours_.ink,
             list::Align::centre);
  }
  /// From within the area, its points about the thread.
  void draw_blades() {
    const Point tip = place(next_, 0.5, off_end - 0.1), from = place(next_, 2.5, 3.4), way = minus(tip, from);
    const double unit = std::max(1.0, least_blades / view_.pixels);
    draw_scissors(list_, tip, times(1 / length(way), way), unit, {2.6, 0.3}, {colours_.accent, colours_.ground});
  }

  static constexpr double off_end = 0.42, behind = -2.1, least_blades = 7;  // threads; pixels
  list::List& list_;
  const ChartView& view_;
  const ChartColours& colours_;
  CutIndex::Snip next_;
};

}  // namespace

void draw_snip_at_hand(list::List& list, const ChartView& view, const ChartColours& colours) {
  if (view.snips < view.cuts->snips(view.lesson)) AtHand(list, view, colours).draw();
}

}  // namespace picture
