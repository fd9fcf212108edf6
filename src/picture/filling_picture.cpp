// A filling in four pictures: each shows what is laid by then, with the needle's points.
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "picture/bar_picture.h"
#include "picture/ink.h"

namespace picture {
namespace {

using stitch::Filling;

constexpr int around = 4;   // threads round the opening: a bar
constexpr double gap = 3;   // mm between the pictures

struct Place {
  double x = 0, y = 0;
};
Place plus(Place a, Place b, double k) { return {a.x + k * b.x, a.y + k * b.y}; }
Place unit(Place a) {
  const double all = std::hypot(a.x, a.y);
  return all > 0 ? Place{a.x / all, a.y / all} : a;
}

/// Where a loop is caught: at the opening's rim, the way out of the opening there and the way round.
struct Catch {
  Place rim, out, round;
  double deep = 1;  ///< threads that the needle goes into the bar, the block or the corner
};

class Filler {
 public:
  Filler(const Sheet& sheet, const BarWork& work, int i, int f)
      : sheet_(sheet), work_(work), item_(work.item(i)), filling_(item_.fillings[static_cast<std::size_t>(f)]),
        box_(work.opening(filling_.opening).box), style_(sheet.styles.number) {
    style_.weight = list::Weight::bold;
    centre_ = {(box_.x0 + box_.x1) / 2.0, (box_.y0 + box_.y1) / 2.0};
  }

  Picture draw(double width) {
    const cloth::Box window = box_.widened(around);
    const double scale = std::min(4.4 * times_larger(sheet_.styles), (width - gap) / 2 / (window.width() + 1));
    const View view = view_of(window, scale, sheet_.voice.hand);
    picture_.width = 2 * view.width() + gap;
    picture_.height = 2 * view.height() + gap;
    picture_.scale = scale;
    picture_.window = window;
    for (int step = 0; step < 4; ++step) {
      const BarCloth cloth(sheet_, work_, view, {step % 2 * (view.width() + gap), step / 2 * (view.height() + gap)});
      cloth_ = &cloth;
      cloth.draw(picture_);
      draw_bars(step);
      filling_.kind == Filling::wheel ? draw_wheel(step) : draw_loops(step);
      cloth.close(picture_);
      draw_step(step, view);
    }
    return std::move(picture_);
  }

 private:
  Point at(Place p) const { return cloth_->at(p.x, p.y); }

  void draw_step(int step, const View& view) {
    const double larger = times_larger(sheet_.styles), inset = 3.4 * larger;
    const Point corner{cloth_->rect().x + inset, cloth_->rect().y + view.height() - inset};
    draw_letter(picture_.list, corner, 2.6 * larger, std::to_string(step + 1), style_, sheet_.measure);
  }

  /// Bars round the opening are done; the one from which it is worked half, and whole in the last picture.
  void draw_bars(int step) {
    const auto& bars = work_.cut->cutting.bars;
    for (int b = 0; b < static_cast<int>(bars.size()); ++b) {
      const auto& beside = bars[static_cast<std::size_t>(b)].openings;
      if (beside[0] != filling_.opening && beside[1] != filling_.opening) continue;
      const bool half = b == item_.bar && step < 3;
      cloth_->draw_done_bar(picture_.list, b, half && !item_.from_low ? 0.5 : 0, half && item_.from_low ? 0.5 : 1);
    }
  }

  void seen(const std::vector<Place>& places) {
    std::vector<Point> points;
    for (const Place& p : places) points.push_back(at(p));
    draw_worked(picture_.list, points, cloth_->unit());
    picture_.uses.marks.insert(Mark::worked_thread);
  }
  void hidden(const std::vector<Place>& places) {
    std::vector<Point> points;
    for (const Place& p : places) points.push_back(at(p));
    draw_hidden(picture_.list, points, cloth_->unit());
    picture_.uses.marks.insert(Mark::hidden_thread);
  }
  void point(Place p, int number) {
    draw_point(picture_.list, at(p), number, style_, sheet_.measure);
    picture_.uses.marks.insert(number % 2 != 0 ? Mark::point_up : Mark::point_down);
  }

  Catch catch_at(std::size_t i) const {
    const cloth::Hole h = filling_.points[i];
    Catch c;
    const Place p{static_cast<double>(h.x), static_cast<double>(h.y)};
    c.rim = {std::clamp(p.x, double(box_.x0), double(box_.x1)), std::clamp(p.y, double(box_.y0), double(box_.y1))};
    c.out = unit({c.rim.x - centre_.x, c.rim.y - centre_.y});
    if (filling_.kind == Filling::doves_eye) c.out = std::abs(c.out.x) > std::abs(c.out.y) ? Place{c.out.x > 0 ? 1.0 : -1.0, 0} : Place{0, c.out.y > 0 ? 1.0 : -1.0};
    c.round = {-c.out.y, c.out.x};  // clockwise where y goes down
    c.deep = filling_.kind == Filling::doves_eye ? std::max(1.0, std::hypot(p.x - c.rim.x, p.y - c.rim.y)) : 1.6;
    return c;
  }

  /// From one place at the rim to the next, bowed towards the corner between two bars, or towards the middle between two corners.
  std::vector<Place> arc(Place a, Place b) const {
    const double bow = filling_.kind == Filling::doves_eye ? 0.55 : -0.45;
    const Place middle{(a.x + b.x) / 2, (a.y + b.y) / 2}, out = unit({middle.x - centre_.x, middle.y - centre_.y});
    std::vector<Place> way;
    constexpr int steps = 12;
    for (int k = 0; k <= steps; ++k) {
      const double t = double(k) / steps;
      way.push_back(plus({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)}, out, bow * 4 * t * (1 - t)));
    }
    return way;
  }

  /// Loop k runs from catch k to catch k + 1; the last comes back to the first, under the first loop.
  void draw_loops(int step) {
    constexpr double beside = 0.42;  // threads: a loop comes in on one side of the catch and goes out on the other, over itself
    const Catch first = catch_at(0);
    for (int k = 0; k <= step; ++k) {
      const Catch from = catch_at(static_cast<std::size_t>(k)), to = catch_at(static_cast<std::size_t>(k + 1) % 4);
      const bool last = k == 3;
      if (k > 0) hidden({plus(from.rim, from.out, from.deep), plus(from.rim, from.round, -beside)});
      const Place begin = k == 0 ? from.rim : plus(from.rim, from.round, -beside), end = plus(to.rim, to.round, last ? -beside : beside);
      hidden({end, plus(to.rim, to.out, to.deep)});
      seen(arc(begin, end));
      if (last) seen(arc(first.rim, plus(catch_at(1).rim, catch_at(1).round, beside)));  // the first loop lies over the last
    }
    hidden({plus(first.rim, first.out, first.deep), first.rim});
    for (int k = step; k <= step; ++k) {  // the points of the loop that is new
      const Catch from = catch_at(static_cast<std::size_t>(k)), to = catch_at(static_cast<std::size_t>(k + 1) % 4);
      point(k == 0 ? plus(from.rim, from.out, from.deep) : plus(from.rim, from.out, -0.75), 2 * k + 1);
      point(plus(to.rim, to.out, to.deep), 2 * k + 2);
    }
  }

  void draw_wheel(int step) {
    const auto corner = [&](std::size_t i) { return Place{double(filling_.points[i].x), double(filling_.points[i].y)}; };
    const Place a = corner(0), c = corner(1), b = corner(3), d = corner(5);
    const auto beyond = [&](Place p) { return plus(p, unit({p.x - centre_.x, p.y - centre_.y}), 1.2); };
    seen({a, c});
    if (step > 0) seen({centre_, b});
    if (step > 2) seen({centre_, d});
    if (step > 1) draw_rounds({a, c, b});
    const auto before = [&](Place p) { return plus(p, unit({p.x - centre_.x, p.y - centre_.y}), -1); };
    if (step == 0) {
      point(beyond(a), 1);
      point(beyond(c), 2);
    } else if (step == 1) {
      point(before(c), 3);
      point(beyond(b), 4);
    } else {
      step == 2 ? point(before(b), 5) : point(beyond(d), 6);
    }
  }

  /// A spiral over and under the three legs by turns.
  void draw_rounds(const std::array<Place, 3>& legs) {
    std::vector<Place> way;
    constexpr int steps = 72;
    const double most = std::min(box_.width(), box_.height()) * 0.3;
    for (int k = 0; k <= steps; ++k) {
      const double turn = 2 * std::numbers::pi * 3 * k / steps, r = 0.25 + (most - 0.25) * k / steps;
      way.push_back({centre_.x + r * std::cos(turn), centre_.y + r * std::sin(turn)});
    }
    seen(way);
    int crossed = 0;
    for (int k = 0; k < steps; ++k)
      for (const Place& leg : legs) {
        const Place out = unit({leg.x - centre_.x, leg.y - centre_.y}), p = way[static_cast<std::size_t>(k)], q = way[static_cast<std::size_t>(k + 1)];
        const auto aside = [&](Place s) { return (s.x - centre_.x) * out.y - (s.y - centre_.y) * out.x; };
        const double r = (p.x - centre_.x) * out.x + (p.y - centre_.y) * out.y;
        if (r <= 0 || aside(p) * aside(q) > 0 || aside(q) == 0) continue;
        if (crossed++ % 2 == 0) seen({plus(centre_, out, r - 0.22), plus(centre_, out, r + 0.22)});
      }
  }

  const Sheet& sheet_;
  const BarWork& work_;
  const cutwork::RouteItem& item_;
  const cutwork::FillingWork& filling_;
  cloth::Box box_;
  list::TypeStyle style_;
  Place centre_;
  const BarCloth* cloth_ = nullptr;
  Picture picture_;
};

}  // namespace

Picture filling_picture(const Sheet& sheet, const BarWork& work, int item, int filling, double width) {
  return Filler(sheet, work, item, filling).draw(width);
}

}  // namespace picture
