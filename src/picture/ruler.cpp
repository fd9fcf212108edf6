#include "picture/ruler.h"

#include <algorithm>
#include <cmath>

#include "list/bounds.h"
#include "list/measure.h"
#include "picture/ink.h"
#include "picture/labels.h"
#include "picture/styles.h"

namespace picture {
namespace {

constexpr double line_half = 0.19;    // mm, half of the ruler's line
constexpr double room = 0.35;         // mm kept free on each side of the line
constexpr double turn_radius = 0.32;  // mm: small enough for the gap between two stitches

struct Way {
  cloth::Hole from, to;
  int threads = 0;
  Point along, aside;  ///< unit steps of one thread in the picture, mm
};

struct Piece {
  std::vector<Capsule> lines;
  std::vector<Ruler::Number> numbers;
  Point start, end;
  double cost = 0;
  bool clear = true;
};

class Maker {
 public:
  Maker(const View& view, const RulerGround& ground, list::TypeStyle style, const list::Measure& measure)
      : view_(view), ground_(ground), style_(style), measure_(measure) {}

  /// From a hole to the ruler's end beside it, as far as the way is free.
  void join(Ruler& ruler, Point a, Point b) const {
    if (length(minus(a, b)) < 0.05) return;
    const Capsule joint = trimmed({a, b, line_half * 0.8});
    const bool on_number =
        std::any_of(ruler.numbers.begin(), ruler.numbers.end(), [&](const Ruler::Number& n) { return meet(grown(n.box, 0.15), joint); });
    if (!on_number && length(minus(joint.a, joint.b)) > 0.3 && free({joint.a, joint.b, joint.radius - room + 0.1}))
      ruler.lines.push_back(joint);
  }

  /// Is there room for the mark of a turn?
  bool free_at(Point at) const {
    return std::none_of(ground_.stitched.begin(), ground_.stitched.end(), [&](const Capsule& s) { return meet({at, at, turn_radius}, s); });
  }

  Way way(cloth::Hole from, const guide::Leg& leg) const {
    const cloth::Hole step = cloth::step(leg.way);
    Way way{from, from + leg.threads * step, leg.threads, {}, {}};
    way.along = minus(view_.at(from + step), view_.at(from));
    way.aside = {-way.along.y, way.along.x};
    return way;
  }

  /// The best of all distances from the counted way, numbers on either side. `outward`: the side away from the other leg, or 0.
  Piece best(const Way& way, double outward, const Ruler& before) const {
    Piece best;
    best.cost = 1e9;
    for (const double off : {0.0, 1.0, -1.0, 0.6, -0.6, 1.5, -1.5, 2.0, -2.0, 3.0, -3.0, 4.0, -4.0, 5.0, -5.0})
      for (const double side : {-1.0, 1.0}) {
        Piece piece = build(way, off, side);
        keep_clear_of(before, piece);
        piece.cost += (off == std::round(off) ? std::abs(off) : std::abs(off) + 0.6) + (off * outward < 0 ? 2.5 : 0) +
                      (side * outward < 0 ? 1.5 : 0) + (side > 0 ? 0.1 : 0);
        if (off * side < 0) piece.cost += step_between(way) > 1 ? 20 : 0.4;  // the joint to the hole runs on that side
        if (piece.cost < best.cost - 1e-9) best = std::move(piece);
      }
    return best;
  }

 private:
  Piece build(const Way& way, double off, double side) const {
    Piece piece;
    piece.start = plus(view_.at(way.from), times(off, way.aside));
    piece.end = plus(view_.at(way.to), times(off, way.aside));
    piece.lines.push_back(trimmed({piece.start, piece.end, line_half}));
    const int step = step_between(way);
    for (int j = 0; j <= way.threads; ++j) {
      const bool long_tick = j == 0 || j == way.threads || (step > 1 && j % step == 0);
      if (long_tick || view_.scale > 1.2) tick(piece, way, j, long_tick);
    }
    for (int j = 1; j <= way.threads; ++j)
      if (step == 1 || j % step == 0 || j == way.threads) number(piece, way, j, step, side);
    if (step > 1) thin_out(piece, way, step);
    judge(piece);
    return piece;
  }

  /// Is the line free of all that is stitched?
  bool free(const Capsule& line) const {
    const Capsule with_room{line.a, line.b, line.radius + room};
    return std::none_of(ground_.stitched.begin(), ground_.stitched.end(), [&](const Capsule& s) { return meet(with_room, s); });
  }

  /// The line with its ends drawn back from what lies at them, by less than a thread each.
  Capsule trimmed(Capsule line) const {
    const double all = length(minus(line.b, line.a)), most = std::min(0.8 * view_.scale, 0.45 * all);
    const Point along = times(1 / all, minus(line.b, line.a));
    const Capsule whole = line;
    for (double by = 0; by <= most && !free({line.a, plus(line.a, times(0.1, along)), line_half}); by += 0.15)
      line.a = plus(whole.a, times(by, along));
    for (double by = 0; by <= most && !free({line.b, minus(line.b, times(0.1, along)), line_half}); by += 0.15)
      line.b = minus(whole.b, times(by, along));
    return line;
  }

  bool flat(const Way& way) const { return std::abs(way.along.x) > std::abs(way.along.y); }

  /// Every thread is numbered where the largest number fits between two ticks.
  int step_between(const Way& way) const {
    const Rect largest = number_room(std::to_string(way.threads), style_, measure_, {0, 0});
    const double needed = (flat(way) ? largest.w : largest.h) + 0.45;
    for (const int step : {1, 2, 5, 10, 20, 50})
      if (step * view_.scale >= needed) return step;
    return 100;
  }

  void tick(Piece& piece, const Way& way, int j, bool is_long) const {
    const Point at = plus(piece.start, times(j, way.along));
    const Point half = times((is_long ? 0.95 : 0.65) / view_.scale, way.aside);
    const Capsule line{minus(at, half), plus(at, half), line_half * 0.8};
    if (free({line.a, line.b, line.radius - room + 0.15})) piece.lines.push_back(line);
  }

  /// Between its ticks where every thread has one, else at its tick.
  void number(Piece& piece, const Way& way, int j, int step, double side) const {
    const std::string text = std::to_string(j);
    const Rect size = number_room(text, style_, measure_, {0, 0});
    const Point middle = plus(piece.start, times(step == 1 ? j - 0.5 : j, way.along));
    const double away = 1.35 + (flat(way) ? size.h : size.w) / 2;
    const Point centre = plus(middle, times(side * away / view_.scale, way.aside));
    const Rect box{centre.x - size.w / 2, centre.y - size.h / 2, size.w, size.h};
    piece.numbers.push_back({{box.x - size.x, box.y - size.y}, box, text});
  }

  /// The last number always stands; the one before it only where it leaves it room.
  static void thin_out(Piece& piece, const Way& way, int step) {
    const std::size_t n = piece.numbers.size();
    if (n >= 2 && way.threads % step != 0 && 2 * (way.threads % step) < step + 1) piece.numbers.erase(piece.numbers.end() - 2);
  }

  void judge(Piece& piece) const {
    const Rect frame = grown(view_.rect(), -0.6);
    const Capsule& line = piece.lines.front();
    for (const Capsule& s : ground_.stitched)
      if (meet({line.a, line.b, line_half + room}, s)) piece.clear = false, piece.cost += 20;
    for (const Capsule& s : ground_.later)
      if (meet({line.a, line.b, line_half + 0.1}, s)) piece.cost += 0.4;
    for (const Ruler::Number& number : piece.numbers) judge(number, frame, piece);
    if (!list::contains(frame, line.a) || !list::contains(frame, line.b)) piece.clear = false, piece.cost += 100;
  }

  void judge(const Ruler::Number& number, const Rect& frame, Piece& piece) const {
    if (!within(number.box, frame)) piece.clear = false, piece.cost += 50;
    for (const auto* stitches : {&ground_.stitched, &ground_.landmark})
      for (const Capsule& s : *stitches)
        if (meet(grown(number.box, 0.25), s)) piece.clear = false, piece.cost += 10;
    for (const Capsule& s : ground_.later)
      if (meet(grown(number.box, 0.2), s)) piece.cost += 0.6;
  }

  /// Of the leg before: numbers and lines never lie on one another.
  static void keep_clear_of(const Ruler& before, Piece& piece) {
    for (const Ruler::Number& number : piece.numbers) {
      for (const Ruler::Number& other : before.numbers)
        if (list::overlap(grown(number.box, 0.25), grown(other.box, 0.25))) piece.clear = false, piece.cost += 10;
      for (const Capsule& line : before.lines)
        if (meet(grown(number.box, 0.2), line)) piece.clear = false, piece.cost += 10;
    }
    for (const Capsule& line : piece.lines)
      for (const Ruler::Number& other : before.numbers)
        if (meet(grown(other.box, 0.2), line)) piece.clear = false, piece.cost += 10;
  }

  const View& view_;
  const RulerGround& ground_;
  list::TypeStyle style_;
  const list::Measure& measure_;
};

double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }

void take(Ruler& ruler, const Piece& piece) {
  ruler.lines.insert(ruler.lines.end(), piece.lines.begin(), piece.lines.end());
  ruler.numbers.insert(ruler.numbers.end(), piece.numbers.begin(), piece.numbers.end());
  ruler.clear = ruler.clear && piece.clear;
}

}  // namespace

Ruler make_ruler(cloth::Hole from, const std::vector<guide::Leg>& legs, const View& view, const RulerGround& ground, list::TypeStyle style,
                 const list::Measure& measure) {
  Ruler ruler;
  const Maker maker(view, ground, style, measure);
  std::vector<Way> ways;
  for (const guide::Leg& leg : legs) ways.push_back(maker.way(ways.empty() ? from : ways.back().to, leg));
  for (std::size_t i = 0; i < ways.size(); ++i) {
    double outward = 0;
    if (ways.size() == 2) outward = i == 0 ? -dot(ways[0].aside, ways[1].along) : dot(ways[1].aside, ways[0].along);
    const Piece piece = maker.best(ways[i], outward, ruler);
    take(ruler, piece);
    maker.join(ruler, view.at(ways[i].from), piece.start);
    maker.join(ruler, piece.end, view.at(ways[i].to));
    if (i + 1 < ways.size() && maker.free_at(view.at(ways[i].to)))
      ruler.turns.push_back({view.at(ways[i].to), view.at(ways[i].to), turn_radius});
  }
  return ruler;
}

void draw_ruler(list::List& list, const Ruler& ruler, list::TypeStyle style) {
  for (const Capsule& line : ruler.lines) add_line(list, list::Role::ruler, line.a, line.b, 2 * line.radius, colour::accent);
  for (const Capsule& turn : ruler.turns) add_disc(list, list::Role::ruler, turn.a, turn.radius, colour::accent);
  for (const Ruler::Number& number : ruler.numbers)
    add_text(list, list::Role::ruler_number, number.base, number.text, style, colour::accent);
}

}  // namespace picture
