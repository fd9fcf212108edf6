#include "picture/map.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <set>
#include <tuple>

#include "picture/ink.h"
#include "picture/labels.h"
#include "picture/view.h"

namespace picture {
namespace {

constexpr double place_radius = 1.25;   // mm
constexpr double jump_half = 2;         // mm: what leads on is larger than the ring, to be hit by a finger
constexpr std::size_t many_places = 8;  // of one letter: more are marked with dots, without letters of their own

bool continues(const Seen& line, const Seen& next) {
  if (line.stage != next.stage || line.doubled != next.doubled || line.part != next.part) return false;
  const cloth::Hole a = line.stitch.b - line.stitch.a, b = next.stitch.b - next.stitch.a;
  return static_cast<std::int64_t>(a.x) * b.y == static_cast<std::int64_t>(a.y) * b.x;
}

/// Puts the next stitch on to the line where it goes on from one of its ends.
bool put_on(Seen& line, const Seen& next) {
  if (!continues(line, next)) return false;
  if (line.stitch.b == next.stitch.a)
    line.stitch.b = next.stitch.b;
  else if (next.stitch.b == line.stitch.a)
    line.stitch.a = next.stitch.a;
  else
    return false;
  return true;
}

Mark mark_of(Stage stage) { return stage == Stage::now ? Mark::now : stage == Stage::before ? Mark::before : Mark::later; }

/// Two stages of one line do not hide each other: later first.
constexpr std::array stages{Stage::later, Stage::before, Stage::now};

class Map {
 public:
  Map(const Sheet& sheet, const std::vector<Seen>& lines, const cloth::Box& extent, const MapOrder& order)
      : sheet_(sheet), lines_(lines), order_(order) {
    const cloth::Box box = room_for(extent);
    const double scale = std::min({order.width / (box.width() + 1), order.height / (box.height() + 1), 1.6});
    view_ = view_of(box, scale, sheet.voice.hand);
    picture_.width = view_.width();
    picture_.height = view_.height();
    picture_.scale = scale;
    style_ = sheet.styles.number;
    style_.weight = list::Weight::bold;
  }

  /// Size and marks alone.
  Picture outline() {
    for (const Seen& line : lines_) use(mark_of(line.stage));
    if (!order_.frames.empty()) use(Mark::frame);
    for (const MapFrame& frame : order_.frames) {
      if (many(frame)) picture_.uses.many.push_back(frame.letter);
      if (!frame.places.empty()) use(many(frame) ? Mark::many : Mark::place);
    }
    if (!order_.corners.empty()) use(Mark::corner);
    return std::move(picture_);
  }

  Picture draw() {
    clip_in(picture_.list, view_.rect(), 0);
    for (const Stage stage : stages) draw_stage(stage);
    for (const MapFrame& frame : order_.frames) draw_frame(frame);
    draw_places();
    draw_corners();
    draw_labels();
    clip_out(picture_.list);
    return std::move(picture_);
  }

 private:
  void use(Mark mark) { picture_.uses.marks.insert(mark); }

  /// Letters need room round the outermost places: about 5 mm on every side.
  cloth::Box room_for(const cloth::Box& extent) const {
    cloth::Box box = extent;
    for (const MapFrame& frame : order_.frames) box.grow({frame.window.x0, frame.window.y0}), box.grow({frame.window.x1, frame.window.y1});
    const double threads_a_mm = std::max((box.width() + 1) / (order_.width - 11), (box.height() + 1) / (order_.height - 11));
    return box.widened(std::max(2, static_cast<int>(std::ceil(5.5 * threads_a_mm))));
  }

  /// Lines that fall on one another at this size are drawn once.
  void draw_stage(Stage stage) {
    std::set<std::tuple<int, int, int, int>> drawn;
    const auto snap = [](double mm) { return static_cast<int>(std::lround(mm * 6)); };
    for (const Seen& line : lines_) {
      if (line.stage != stage) continue;
      const Point a = view_.at(line.stitch.a), b = view_.at(line.stitch.b);
      if (!drawn.insert({snap(a.x), snap(a.y), snap(b.x), snap(b.y)}).second) continue;
      const double width = stage == Stage::later ? 0.13 : std::clamp(0.75 * view_.scale, 0.15, 0.5);
      const Capsule shape = drawn_stitch(a, b, width, 0.05);
      draw_stitch(picture_.list, a, b, width, 0.05, stage, false);
      (stage == Stage::later ? around_.thin : around_.pale).push_back(shape);
      use(mark_of(stage));
    }
  }

  void draw_frame(const MapFrame& frame) {
    const Point a = view_.at(frame.window.x0 - 0.5, frame.window.y0 - 0.5), b = view_.at(frame.window.x1 + 0.5, frame.window.y1 + 0.5);
    const Rect rect{std::min(a.x, b.x), a.y, std::abs(b.x - a.x), b.y - a.y};
    add_frame(picture_.list, list::Role::map_mark, rect, 0.4, 0.3, colour::ink);
    use(Mark::frame);
    picture_.list.jumps.push_back({rect, frame.letter});
    const Point p{rect.x, rect.y}, q{rect.x + rect.w, rect.y}, r{rect.x + rect.w, rect.y + rect.h}, s{rect.x, rect.y + rect.h};
    for (const auto& [from, to] : {std::pair{p, q}, std::pair{q, r}, std::pair{r, s}, std::pair{s, p}})
      around_.solid.push_back({from, to, 0.2});
    const bool marked = frame.marks.empty() && std::any_of(frame.places.begin(), frame.places.end(), [&](cloth::Hole h) { return frame.window.holds(h); });
    if (!marked || many(frame)) labels_.push_back({q, 0.3, frame.letter, {p, r, s}});
  }

  static bool many(const MapFrame& frame) { return frame.places.size() > many_places; }

  void draw_places() {
    for (const MapFrame& frame : order_.frames)
      for (std::size_t i = 0; i < frame.places.size(); ++i)
        many(frame) ? draw_dot(frame.places[i]) : draw_ring(frame.places[i], frame.letter, frame.marks.empty() ? frame.letter : frame.marks[i]);
  }

  void draw_dot(cloth::Hole place) {
    draw_one_of_many(picture_.list, view_.at(place));
    around_.solid.push_back({view_.at(place), view_.at(place), 0.9});
  }

  void draw_ring(cloth::Hole place, const std::string& letter, const std::string& label) {
    add_disc(picture_.list, list::Role::map_mark, view_.at(place), place_radius, colour::white, 0.35, colour::ink);
    around_.solid.push_back({view_.at(place), view_.at(place), place_radius + 0.2});
    labels_.push_back({view_.at(place), place_radius + 0.2, label});
    const Point at = view_.at(place);
    picture_.list.jumps.push_back({{at.x - jump_half, at.y - jump_half, 2 * jump_half, 2 * jump_half}, letter});
  }

  void draw_corners() {
    int number = 0;
    for (const cloth::Hole corner : order_.corners) {
      const Point at = view_.at(corner);
      draw_corner_mark(picture_.list, at);
      around_.solid.push_back({at, at, 1.1});
      labels_.push_back({at, 1.1, std::to_string(++number)});
      use(Mark::corner);
    }
  }

  /// The last label whose text another one bears too, or none: one of several rings of a letter can do without.
  std::optional<std::size_t> spare_label() const {
    for (std::size_t i = labels_.size(); i-- > 1;)
      for (std::size_t j = 0; j < i; ++j)
        if (labels_[i].text == labels_[j].text) return i;
    return std::nullopt;
  }

  /// Smaller where there is little room; where that is not enough, fewer.
  Placement placed() {
    around_.frame = view_.rect();
    Placement placement = place_labels(labels_, around_, style_, sheet_.measure);
    if (!placement.clean) style_.size_pt = sheet_.styles.number_least_pt;
    while (!placement.clean) {
      placement = place_labels(labels_, around_, style_, sheet_.measure);
      const auto spare = spare_label();
      if (placement.clean || !spare) break;
      labels_.erase(labels_.begin() + static_cast<std::ptrdiff_t>(*spare));
    }
    return placement;
  }

  void draw_labels() {
    const Placement placement = placed();
    picture_.clean = placement.clean;
    for (const PlacedLabel& label : placement.labels)
      if (label.led) add_line(picture_.list, list::Role::leader, label.from, label.to, 0.16, colour::ink, list::Cap::flat);
    for (std::size_t i = 0; i < labels_.size(); ++i)
      add_text(picture_.list, list::Role::map_mark, placement.labels[i].base, labels_[i].text, style_, colour::ink);
  }

  const Sheet& sheet_;
  const std::vector<Seen>& lines_;
  const MapOrder& order_;
  View view_;
  list::TypeStyle style_;
  std::vector<Label> labels_;
  Surroundings around_;
  Picture picture_;
};

}  // namespace

std::vector<Seen> run_together(const std::vector<Seen>& stitches) {
  std::vector<Seen> lines;
  for (const Seen& s : stitches) {
    bool joined = false;  // rows worked turn about: the line to go on is one of the last few
    for (std::size_t back = 1; back <= std::min<std::size_t>(3, lines.size()) && !joined; ++back)
      joined = put_on(lines[lines.size() - back], s);
    if (!joined) lines.push_back(s);
  }
  return lines;
}

DesignMap::DesignMap(const Sheet& sheet) : sheet_(sheet), extent_(course::extent(sheet.course)) {
  lines_ = run_together(stitches_in(sheet.course, sheet.plan, extent_, {sheet.lesson.number, -1, -1, 0}));
}

Picture DesignMap::outline(const MapOrder& order) const { return Map(sheet_, lines_, extent_, order).outline(); }

Picture DesignMap::draw(const MapOrder& order) const { return Map(sheet_, lines_, extent_, order).draw(); }

}  // namespace picture
