#include "picture/overview.h"

#include <algorithm>
#include <cmath>

#include "picture/fold.h"
#include "picture/ink.h"
#include "picture/labels.h"
#include "picture/map.h"
#include "picture/view.h"

namespace picture {
namespace {

using guide::LandmarkKind;

class Overview {
 public:
  /// How lengths are written beside the lines.
  enum class Lengths { words, figures, none };

  /// `wider`: so many tenths of cloth more on every side.
  Overview(const Sheet& sheet, const guide::CloseUp& close_up, const guide::Count& count, double width, double height, int wider,
           Lengths lengths)
      : sheet_(sheet), close_up_(close_up), count_(count), lengths_(lengths) {
    cloth::Box box = shown();
    box = box.widened(wider * std::max(box.width(), box.height()) / 10);
    const double scale = std::min({width / (box.width() + 1), height / (box.height() + 1), 3.0});
    const double k = sheet.styles.body.size_pt / 12;  // lengths are written beside the lines: never too narrow or too low for that
    widen(box.x0, box.x1, static_cast<int>(std::min(width, 56 * k) / scale));
    widen(box.y0, box.y1, static_cast<int>(std::min(height, 36 * k) / scale));
    view_ = view_of(box, scale, sheet.voice.hand);
    picture_.width = view_.width();
    picture_.height = view_.height();
    picture_.scale = scale;
    style_ = sheet.styles.number;
    if (lengths != Lengths::words) style_.size_pt = sheet.styles.number_least_pt;
  }

  Picture draw() {
    clip_in(list(), view_.rect(), 1.6);
    draw_stitches();
    draw_ground();
    draw_close_up();
    draw_count();
    draw_labels();
    clip_out(list());
    add_frame(list(), list::Role::frame, view_.rect(), 1.6, 0.35, colour::ink);
    return std::move(picture_);
  }

 private:
  static void widen(int& low, int& high, int least) {
    const int lacking = std::max(0, least - (high - low) - 1);
    low -= lacking / 2;
    high += lacking - lacking / 2;
  }

  list::List& list() { return picture_.list; }
  void use(Mark mark) { picture_.uses.marks.insert(mark); }
  bool from_edges() const { return count_.landmark.kind == LandmarkKind::cloth_edges; }
  bool from_middle() const { return count_.landmark.kind == LandmarkKind::cloth_middle; }

  cloth::Box cloth_box() const {
    const cloth::Hole corner = course::corner(sheet_.course), size = course::size_threads(sheet_.course);
    return {corner.x, corner.y, corner.x + size.x, corner.y + size.y};
  }

  /// The way that is counted with the close-up at its end, and some cloth round it.
  cloth::Box shown() const {
    cloth::Box box = close_up_.window;
    box.grow(count_.landmark.hole);
    if (from_edges()) {
      const cloth::Box cloth = cloth_box();
      box.grow({cloth.x0, cloth.y0});
      box.grow({cloth.x1, cloth.y1});
    }
    return box.widened(std::max(3, std::max(box.width(), box.height()) / 10));
  }

  void draw_stitches() {
    Moment moment = moment_of(sheet_, close_up_);
    moment.last = close_up_.first - 1;
    for (const Seen& s : run_together(stitches_in(sheet_.course, sheet_.plan, view_.window, moment))) {
      const double width = s.stage == Stage::later ? 0.13 : std::clamp(s.width * view_.scale, 0.18, 1.6);
      draw_stitch(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), width, 0.08, s.stage, false);
      (s.stage == Stage::later ? around_.thin : around_.pale)
          .push_back(drawn_stitch(view_.at(s.stitch.a), view_.at(s.stitch.b), width, 0.08));
      use(s.stage == Stage::now ? Mark::now : s.stage == Stage::before ? Mark::before : Mark::later);
    }
  }

  /// A frame's sides are not written on.
  void add_sides(const Rect& rect, double half) {
    const Point a{rect.x, rect.y}, b{rect.x + rect.w, rect.y}, c{b.x, rect.y + rect.h}, d{rect.x, c.y};
    for (const auto& [from, to] : {std::pair{a, b}, std::pair{b, c}, std::pair{c, d}, std::pair{d, a}})
      around_.solid.push_back({from, to, half});
  }

  /// The cut edge, or the folds.
  void draw_ground() {
    if (from_edges()) {
      const cloth::Box cloth = cloth_box();
      const Point a = view_.at({cloth.x0, cloth.y0}), b = view_.at({cloth.x1, cloth.y1});
      const Rect rect{std::min(a.x, b.x), a.y, std::abs(b.x - a.x), b.y - a.y};
      add_frame(list(), list::Role::map_mark, rect, 0, 0.5, colour::ink);
      add_sides(rect, 0.3);
      use(Mark::cloth_edge);
    }
    if (!from_middle()) return;
    draw_folds(list(), view_.at(count_.landmark.hole), view_.rect());
    const auto folds = fold_lines(view_.at(count_.landmark.hole), view_.rect());
    around_.thin.insert(around_.thin.end(), folds.begin(), folds.end());
    around_.solid.push_back({view_.at(count_.landmark.hole), view_.at(count_.landmark.hole), fold_radius});
    use(Mark::fold);
  }

  void draw_close_up() {
    const cloth::Box& w = close_up_.window;
    const Point a = view_.at(w.x0 - 0.5, w.y0 - 0.5), b = view_.at(w.x1 + 0.5, w.y1 + 0.5);
    const Rect rect{std::min(a.x, b.x), a.y, std::abs(b.x - a.x), b.y - a.y};
    add_frame(list(), list::Role::map_mark, rect, 0.6, 0.3, colour::ink);
    use(Mark::frame);
    add_sides(rect, 0.2);
    if (std::max(rect.w, rect.h) < 3) {  // no larger than the mark in it
      labels_.push_back({plus({rect.x, rect.y}, {rect.w / 2, rect.h / 2}), 1.7, close_up_.letter});
      letters_ = 1;
      return;
    }
    const double right = rect.x + rect.w, bottom = rect.y + rect.h;
    labels_.push_back({{right, rect.y}, 0.3, close_up_.letter, {{rect.x, rect.y}, {right, bottom}, {rect.x, bottom}}});
    letters_ = 1;
  }

  /// Leg by leg: the line, a bar across at its ends, its length in the middle.
  void draw_count() {
    cloth::Hole at = count_.landmark.hole;
    for (const guide::Leg& leg : count_.legs) {
      const cloth::Hole to = at + leg.threads * cloth::step(leg.way);
      const Point a = view_.at(at), b = view_.at(to);
      add_line(list(), list::Role::map_mark, a, b, 0.45, colour::accent);
      around_.solid.push_back({a, b, 0.25});
      for (const Point end : {a, b}) draw_bar(end, minus(b, a));
      at = to;
      if (lengths_ == Lengths::none) continue;
      const bool tiny = length(minus(a, b)) < 4;  // beside the mark at its end, which covers it
      labels_.push_back({tiny ? b : between(a, b, 0.5), tiny ? 1.3 : 0.4, length_words(leg)});
    }
    if (!count_.legs.empty()) use(Mark::ruler);
    for (const cloth::Stitch& s : landmark_stitches(sheet_.course, count_.landmark)) {
      draw_landmark(list(), view_.at(s.a), view_.at(s.b), std::clamp(0.6 * view_.scale, 0.5, 1.8), 0.05);
      use(Mark::landmark);
    }
    add_disc(list(), list::Role::hole_up, view_.at(at), std::clamp(ratio::dot * view_.scale, 0.55, 1.2), colour::ink);
    around_.solid.push_back({view_.at(at), view_.at(at), 1.3});
    use(Mark::up);
  }

  void draw_bar(Point at, Point way) {
    const double all = length(way);
    if (all <= 0) return;
    const Point half{0.9 * way.y / all, -0.9 * way.x / all};
    add_line(list(), list::Role::map_mark, minus(at, half), plus(at, half), 0.35, colour::accent);
    around_.solid.push_back({minus(at, half), plus(at, half), 0.2});
  }

  double cm(const guide::Leg& leg) const {
    const cloth::Count count = sheet_.course.cloth.count;
    return (cloth::step(leg.way).x == 0 ? cloth::mm_down(leg.threads, count) : cloth::mm(leg.threads, count)) / 10;
  }

  std::string length_words(const guide::Leg& leg) const {
    if (!from_edges() && lengths_ == Lengths::figures) return std::to_string(leg.threads);
    if (!from_edges()) return sheet_.say("page.overview.threads", {{"n", std::int64_t{leg.threads}}});
    return sheet_.say("page.overview.cm", {{"cm", words::Decimal{cm(leg), 1}}});
  }

  void draw_labels() {
    around_.frame = grown(view_.rect(), -0.4);
    const Placement placement = place_labels(labels_, around_, style_, sheet_.measure);
    picture_.clean = placement.clean;
    for (std::size_t i = 0; i < labels_.size(); ++i) {
      const PlacedLabel& label = placement.labels[i];
      const bool letter = i < letters_;
      if (label.led)
        add_line(list(), list::Role::leader, label.from, label.to, 0.16, letter ? colour::ink : colour::accent, list::Cap::flat);
      add_text(list(), list::Role::map_mark, label.base, labels_[i].text, style_, letter ? colour::ink : colour::accent);
    }
  }

  const Sheet& sheet_;
  const guide::CloseUp& close_up_;
  const guide::Count& count_;
  Lengths lengths_;
  View view_;
  list::TypeStyle style_;
  std::vector<Label> labels_;
  std::size_t letters_ = 0;
  Surroundings around_;
  Picture picture_;
};

}  // namespace

Picture draw_overview(const Sheet& sheet, const guide::CloseUp& close_up, const guide::Count& count, double width, double height) {
  Picture best;
  for (const Overview::Lengths lengths :
       {Overview::Lengths::words, Overview::Lengths::figures, Overview::Lengths::none})  // the sentence tells them too
    for (int wider = 0; wider < 4; ++wider) {
      best = Overview(sheet, close_up, count, width, height, wider, lengths).draw();
      if (best.clean) return best;
    }
  return best;
}

}  // namespace picture
