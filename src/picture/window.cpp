#include "picture/window.h"

#include <algorithm>

#include "list/bounds.h"
#include "picture/back.h"
#include "picture/cut_out.h"
#include "picture/fold.h"
#include "picture/grid.h"
#include "picture/ink.h"
#include "picture/labels.h"
#include "picture/loop.h"
#include "picture/numbering.h"
#include "picture/ruler.h"

namespace picture {
namespace {

constexpr double corner_radius = 1.6;  // mm
constexpr double letter_radius = 3.3;  // mm, for 13 pt

Mark mark_of(HoleUse use) {
  switch (use) {
    case HoleUse::up:
      return Mark::up;
    case HoleUse::down:
      return Mark::down;
    case HoleUse::both:
      return Mark::both;
    case HoleUse::twice_up:
      return Mark::twice_up;
    case HoleUse::twice_down:
      return Mark::twice_down;
  }
  return Mark::up;
}

class Window {
 public:
  Window(const Sheet& sheet, const WindowOrder& order)
      : sheet_(sheet), order_(order), view_(view_of(order.window, order.scale, sheet.voice.hand)), trail_(sheet.trail(order.trail).trail) {
    picture_.width = view_.width();
    picture_.height = view_.height();
    picture_.scale = order.scale;
    picture_.window = order.window;
    holes_ = numbers_of(trail_, order.first, order.last, order.ending);
    for (HoleNumbers& hole : holes_) std::erase_if(hole.numbers, [&](int n) { return n < order.from || n > order.to; });
    std::erase_if(holes_, [](const HoleNumbers& hole) { return hole.numbers.empty(); });
    seen_ = stitches_in(sheet.course, sheet.plan, order.window.widened(1), order.moment);
    const Rect inside = grown(view_.rect(), -0.4);  // what only touches the frame is not to be seen
    std::erase_if(seen_, [&](const Seen& s) { return !meet(inside, capsule(s)); });
    const int part = sheet.trail(order.trail).part;
    if (order.bare) std::erase_if(seen_, [&](const Seen& s) { return s.stage == Stage::later && s.part != part; });
    if (order.made_only) std::erase_if(seen_, [](const Seen& s) { return s.stage == Stage::later; });
    if (order.count) landmark_ = landmark_stitches(sheet.course, order.count->landmark);
  }

  Picture draw() {
    make_ruler();
    if (!picture_.clean && order_.draft) return std::move(picture_);
    add_panel(list(), list::Role::ground, view_.rect(), corner_radius, colour::white, 0, {});
    clip_in(list(), view_.rect(), corner_radius);
    draw_grid(list(), view_, sheet_.course.choices.line, grid_origin(sheet_.course));
    draw_stage(Stage::later);
    draw_backs();
    draw_stage(Stage::before);
    draw_stage(Stage::now);
    draw_landmarks();
    draw_holes();
    if (order_.loop >= 0) draw_loop();
    if (order_.cut) draw_cut(list(), view_, trail_), use(Mark::cut);
    if (!ruler_.lines.empty()) picture::draw_ruler(list(), ruler_, sheet_.styles.ruler), use(Mark::ruler);
    draw_numbers();
    clip_out(list());
    add_frame(list(), list::Role::frame, view_.rect(), corner_radius, 0.35, colour::ink);
    if (!order_.letter.empty()) draw_letter(list(), {0, 0}, tag_radius(), order_.letter, sheet_.styles.letter, sheet_.measure);
    return std::move(picture_);
  }

 private:
  list::List& list() { return picture_.list; }
  void use(Mark mark) { picture_.uses.marks.insert(mark); }
  double gap() const { return ratio::gap * view_.scale; }
  double tag_radius() const { return letter_radius * sheet_.styles.letter.size_pt / 13; }
  bool counted() const { return order_.count && !order_.count->legs.empty(); }
  Capsule capsule(const Seen& s) const {
    if (s.ridge) return view_.capsule(s.stitch, s.width * view_.scale / 2);
    return drawn_stitch(view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, gap());
  }
  Capsule mark_room(cloth::Hole hole) const { return {view_.at(hole), view_.at(hole), ratio::mark_room * view_.scale}; }

  /// Stitches that are not yet there give way to the ruler and its numbers.
  void make_ruler() {
    if (!counted()) return;
    RulerGround ground;
    for (const Seen& s : seen_)
      (is_landmark(s.stitch) ? ground.landmark : s.stage == Stage::later ? ground.later : ground.stitched).push_back(capsule(s));
    for (const HoleNumbers& hole : holes_) ground.stitched.push_back(mark_room(hole.hole));
    if (order_.count->landmark.kind == guide::LandmarkKind::cloth_middle) {
      const auto folds = fold_lines(view_.at(order_.count->landmark.hole), view_.rect());
      ground.later.insert(ground.later.end(), folds.begin(), folds.end());
    }
    const guide::Count& count = *order_.count;
    ruler_ = picture::make_ruler(count.landmark.hole, count.legs, view_, ground, sheet_.styles.ruler, sheet_.measure);
    picture_.clean = picture_.clean && ruler_.clear;
    if (!ruler_.clear) {  // rather none than one that lies on stitches: the words tell the count
      ruler_ = {};
      return;
    }
    std::erase_if(seen_, [&](const Seen& s) { return s.stage == Stage::later && under_ruler(capsule(s)); });
  }

  bool under_ruler(const Capsule& stitch) const {
    return std::any_of(ruler_.lines.begin(), ruler_.lines.end(),
                       [&](const Capsule& line) {
                         return meet(stitch, {line.a, line.b, line.radius + 0.2});
                       }) ||
           std::any_of(ruler_.numbers.begin(), ruler_.numbers.end(), [&](const auto& n) { return meet(grown(n.box, 0.2), stitch); });
  }

  bool is_landmark(const cloth::Stitch& s) const { return std::find(landmark_.begin(), landmark_.end(), s) != landmark_.end(); }

  void draw_stage(Stage stage) {
    for (const Seen& s : seen_) {
      if (s.stage != stage || is_landmark(s.stitch)) continue;
      if (s.ridge) {
        draw_ridge(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, stage);
        continue;
      }
      draw_stitch(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, gap(), stage, s.doubled);
      if (stage == Stage::later) use(Mark::later);
      if (stage == Stage::before) use(s.doubled ? Mark::before_double : Mark::before);
      if (stage == Stage::now) use(s.doubled ? Mark::now_double : Mark::now);
    }
  }

  /// Of looped stitches the back lies behind the stitch itself: the words say so.
  void draw_backs() {
    if (trail_.order == stitch::Order::looped) return;
    BackGround ground;
    for (const Seen& s : seen_) ground.stitches.push_back(s.stitch);
    for (const HoleNumbers& hole : holes_) ground.marks.push_back(hole.hole);
    for (int k = order_.first + 1; k <= order_.last; ++k) {
      if (up_number(k, order_.first) < order_.from || up_number(k, order_.first) > order_.to) continue;
      const std::vector<Point> line = back_line(back_before(trail_, k), view_, ground);
      if (line.empty()) continue;
      draw_back(list(), line, view_.scale);
      use(Mark::back);
      for (std::size_t i = 1; i < line.size(); ++i) backs_.push_back({line[i - 1], line[i], 0.2});
    }
  }

  void draw_landmarks() {
    for (const Seen& s : seen_) {
      if (!is_landmark(s.stitch)) continue;
      picture::draw_landmark(list(), view_.at(s.stitch.a), view_.at(s.stitch.b), s.width * view_.scale, gap());
      use(Mark::landmark);
    }
    if (order_.count && order_.count->landmark.kind == guide::LandmarkKind::cloth_middle) {
      draw_folds(list(), view_.at(order_.count->landmark.hole), view_.rect());
      use(Mark::fold);
    }
    if (!order_.proof) return;
    draw_proof(list(), view_.at(order_.proof->landmark.hole), 0.34 * view_.scale);
    use(Mark::proof);
  }

  void draw_holes() {
    for (const HoleNumbers& hole : holes_) {
      draw_hole(list(), view_.at(hole.hole), hole.use(), view_.scale);
      use(mark_of(hole.use()));
      if (hole.use() != HoleUse::both && hole.numbers.size() > 2) picture_.uses.often = true;
      if (hole.use() == HoleUse::both && picture_.uses.both_example.empty()) picture_.uses.both_example = hole.numbers;
    }
  }

  Loop loop() const {
    const auto& stitches = trail_.stitches;
    const int next = std::min(order_.loop + 1, static_cast<int>(stitches.size()) - 1);
    return {view_, first_loop_hole(trail_, order_.loop), stitches[order_.loop].down, stitches[order_.loop].up, stitches[next].up};
  }
  void draw_loop() {
    loop().draw(list(), thread_width(sheet_.course, sheet_.trail(order_.trail).part, Stage::now) * 0.8 * view_.scale);
    use(Mark::needle);
  }

  Surroundings surroundings() const {
    Surroundings around;
    around.frame = grown(view_.rect(), -0.5);
    for (const Seen& s : seen_) (s.stage == Stage::now || is_landmark(s.stitch) ? around.solid : around.pale).push_back(capsule(s));
    for (const HoleNumbers& hole : holes_) around.solid.push_back(mark_room(hole.hole));
    around.solid.insert(around.solid.end(), ruler_.lines.begin(), ruler_.lines.end());
    around.solid.insert(around.solid.end(), ruler_.turns.begin(), ruler_.turns.end());
    if (order_.proof)
      around.solid.push_back({view_.at(order_.proof->landmark.hole), view_.at(order_.proof->landmark.hole), 0.42 * view_.scale});
    if (order_.loop >= 0)
      for (const Capsule& piece : loop().room()) around.solid.push_back(piece);
    if (!order_.letter.empty()) around.solid.push_back({{0, 0}, {0, 0}, tag_radius()});
    for (const Ruler::Number& number : ruler_.numbers) around.boxes.push_back(grown(number.box, 0.3));
    around.thin = backs_;
    if (order_.count && order_.count->landmark.kind == guide::LandmarkKind::cloth_middle) {
      const Point middle = view_.at(order_.count->landmark.hole);
      const auto folds = fold_lines(middle, view_.rect());
      around.solid.push_back({middle, middle, fold_radius});
      around.thin.insert(around.thin.end(), folds.begin(), folds.end());
    }
    return around;
  }

  void draw_numbers() {
    std::vector<Label> labels;
    for (const HoleNumbers& hole : holes_)
      if (std::string text = hole.text(); !text.empty())
        labels.push_back({view_.at(hole.hole), ratio::mark_room * view_.scale, std::move(text)});
    const Placement placement = place_labels(labels, surroundings(), order_.number, sheet_.measure);
    picture_.clean = picture_.clean && placement.clean;
    picture_.strain = placement.strain;
    for (const PlacedLabel& label : placement.labels)
      if (label.led) add_line(list(), list::Role::leader, label.from, label.to, 0.16, colour::ink, list::Cap::flat);
    for (std::size_t i = 0; i < labels.size(); ++i)
      add_text(list(), list::Role::number, placement.labels[i].base, labels[i].text, order_.number, colour::ink);
  }

  const Sheet& sheet_;
  const WindowOrder& order_;
  View view_;
  const trail::Trail& trail_;
  std::vector<HoleNumbers> holes_;
  std::vector<Seen> seen_;
  std::vector<cloth::Stitch> landmark_;
  std::vector<Capsule> backs_;
  Ruler ruler_;
  Picture picture_;
};

}  // namespace

Picture draw_window(const Sheet& sheet, const WindowOrder& order) { return Window(sheet, order).draw(); }

std::vector<cloth::Stitch> landmark_stitches(const course::Course& course, const guide::Landmark& landmark) {
  std::vector<cloth::Stitch> found;
  if (landmark.part < 0) return found;
  const auto& features = course.parts[landmark.part].work.features;
  if (landmark.feature < 0 || landmark.feature >= static_cast<int>(features.size())) return found;
  for (const cloth::Stitch& s : features[landmark.feature].stitches)
    if (s.a == landmark.hole || s.b == landmark.hole) found.push_back(s.normal());
  return found;
}

cloth::Hole grid_origin(const course::Course& course) {
  for (const course::Part& part : course.parts)
    if (!part.work.stitches.empty()) return part.work.stitches.front().a;
  return {};
}

}  // namespace picture
