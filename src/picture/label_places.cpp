#include "picture/label_places.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <optional>

#include "list/bounds.h"

namespace picture {
namespace {

constexpr double figure_height = 0.74, comma_depth = 0.14;  // em; figures of both families, measured
constexpr double letter_height = 0.78, letter_depth = 0.22;
constexpr double clear = 0.25;                     // mm between a number and anything solid
constexpr double over_stitch = 20, over_pale = 2;  // cost of a leader across one

bool has_comma(std::string_view text) { return text.find(',') != std::string_view::npos; }

/// Two numbers side by side must not read as one: more so where one of them is a pair.
Rect room_of(const Rect& box, std::string_view text, double em) {
  const double aside = (has_comma(text) ? 0.28 : 0.14) * em, above = 0.07 * em;
  return {box.x - aside, box.y - above, box.w + 2 * aside, box.h + 2 * above};
}

/// The box of this size whose nearest point to the hole lies `gap` from it in the way `u`.
Rect box_beyond(Point hole, Point u, double width, double height, double gap) {
  double near = 0, far = gap + width + height;
  const auto at = [&](double t) { return Rect{hole.x + t * u.x - width / 2, hole.y + t * u.y - height / 2, width, height}; };
  for (int i = 0; i < 14; ++i) {
    const double middle = (near + far) / 2;
    (distance(at(middle), hole) < gap ? near : far) = middle;
  }
  return at(far);
}

Point nearest_on(const Rect& box, Point p) { return {std::clamp(p.x, box.x, box.x + box.w), std::clamp(p.y, box.y, box.y + box.h)}; }

class Finder {
 public:
  Finder(const Surroundings& around, list::TypeStyle style, const list::Measure& measure)
      : around_(around), style_(style), measure_(measure), em_(style.size_pt * list::mm_per_pt) {}

  /// Ring by ring round the hole, until enough good ones are found.
  void add_places(const Label& label, const PlaceSearch& search, std::vector<LabelPlace>& found) const {
    const Rect size = number_room(label.text, style_, measure_, {0, 0});
    const Surroundings near = nearby(label, size.w + size.h + 16);
    int good_ones = 0;
    for (const double beyond : {0.0, 0.35, 0.8, 1.4, 2.1, 3.0, 4.0, 5.2, 6.6, 8.2, 10.5, 13.0}) {
      for (int way = 0; way < 24; ++way)
        if (const auto candidate = try_at(label, near, size, way, beyond)) {
          found.push_back(*candidate);
          good_ones += candidate->cost < good_place ? 1 : 0;
        }
      if (good_ones >= search.enough) return;
    }
    if (found.empty()) add_far_places(label, size, found);
  }

 private:
  /// Beyond the stitches that crowd round a hole on all sides, as round the middle of an eyelet.
  void add_far_places(const Label& label, const Rect& size, std::vector<LabelPlace>& found) const {
    for (double beyond = 16; beyond < 100 && found.empty(); beyond *= 1.2)
      for (int way = 0; way < 24; ++way)
        if (const auto candidate = try_at(label, around_, size, way, beyond)) found.push_back(*candidate);
  }

  /// What can be touched by a label that reaches so far from its hole.
  Surroundings nearby(const Label& label, double reach) const {
    Surroundings near{around_.frame, {}, {}, {}, {}};
    const auto close = [&](const Capsule& c) { return distance(label.hole, c.a, c.b) < reach + c.radius; };
    std::copy_if(around_.solid.begin(), around_.solid.end(), std::back_inserter(near.solid), close);
    std::copy_if(around_.pale.begin(), around_.pale.end(), std::back_inserter(near.pale), close);
    std::copy_if(around_.thin.begin(), around_.thin.end(), std::back_inserter(near.thin), close);
    for (const Rect& box : around_.boxes)
      if (distance(box, label.hole) < reach) near.boxes.push_back(box);
    return near;
  }

  std::optional<LabelPlace> try_at(const Label& label, const Surroundings& near, const Rect& size, int way, double beyond) const {
    const double angle = way * std::numbers::pi / 12;
    const Point u{std::sin(angle), -std::cos(angle)};
    const double gap = label.radius + 0.3 + beyond;
    LabelPlace c;
    c.placed.box = box_beyond(label.hole, u, size.w, size.h, gap);
    c.placed.base = {c.placed.box.x - size.x, c.placed.box.y - size.y};
    c.room = room_of(c.placed.box, label.text, em_);
    if (!free(c, near)) return std::nullopt;
    c.cost = 1.2 * beyond + (way % 12 == 0 ? 0 : way % 6 == 0 ? 0.15 : way % 3 == 0 ? 0.3 : 0.4) + thin_cost(c.placed.box, near);
    if (!led(label, near, beyond, c)) return std::nullopt;
    c.reach = c.room;
    if (c.placed.led) {
      const Point a = c.placed.from, b = c.placed.to;
      c.reach = list::join(c.room, grown({std::min(a.x, b.x), std::min(a.y, b.y), std::abs(a.x - b.x), std::abs(a.y - b.y)}, 0.3));
    }
    return c;
  }

  bool free(const LabelPlace& c, const Surroundings& near) const {
    if (!within(grown(c.placed.box, clear), near.frame)) return false;
    const Rect free_of = grown(c.placed.box, clear);
    for (const auto* stitches : {&near.solid, &near.pale})
      if (std::any_of(stitches->begin(), stitches->end(), [&](const Capsule& s) { return meet(free_of, s); })) return false;
    return std::none_of(near.boxes.begin(), near.boxes.end(), [&](const Rect& box) { return list::overlap(c.room, box); });
  }

  static double thin_cost(const Rect& box, const Surroundings& near) {
    double cost = 0;
    for (const Capsule& line : near.thin)
      if (meet(box, line)) cost = 4.5;
    return cost;
  }

  /// Gives a leader to what stands off; false where the leader would run over something. What stands nearer to another mark than to its own
  /// hole needs one too.
  bool led(const Label& label, const Surroundings& near, double beyond, LabelPlace& c) const {
    const double own = distance(c.placed.box, label.hole) - label.radius;
    bool doubtful = beyond > 0.75;
    for (const Capsule& s : near.solid)
      if (s.a.x == s.b.x && s.a.y == s.b.y && distance(c.placed.box, s.a) - s.radius < own + 0.35 && !at(s, label.hole)) doubtful = true;
    if (!doubtful) return true;
    const Point to = nearest_on(c.placed.box, label.hole);
    const double all = length(minus(to, label.hole));
    if (all < label.radius + 1.0) {  // too short for a leader: leave it to what stands further off
      c.cost += 3;
      return true;
    }
    c.placed.led = true;
    c.placed.from = between(label.hole, to, (label.radius + 0.1) / all);
    c.placed.to = between(label.hole, to, 1 - 0.25 / all);
    c.cost += 1.5;
    const Capsule leader{c.placed.from, c.placed.to, 0.15};
    for (const Rect& box : near.boxes)
      if (meet(box, leader)) return false;
    for (const Capsule& s : near.solid) {
      if (!meet(leader, s) || at(s, label.hole)) continue;
      if (s.a.x == s.b.x && s.a.y == s.b.y) return false;  // another mark
      if (distance(label.hole, s.a, s.b) > s.radius + label.radius) c.cost += over_stitch;
    }
    for (const Capsule& s : near.pale)
      if (meet(leader, s) && distance(label.hole, s.a, s.b) > s.radius + label.radius) c.cost += over_pale;
    return true;
  }

  static bool at(const Capsule& mark, Point hole) { return length(minus(mark.a, hole)) < 0.01 && length(minus(mark.b, hole)) < 0.01; }

  const Surroundings& around_;
  list::TypeStyle style_;
  const list::Measure& measure_;
  double em_;
};

}  // namespace

Rect number_room(std::string_view text, list::TypeStyle style, const list::Measure& measure, Point left_end) {
  const double em = style.size_pt * list::mm_per_pt;
  const bool words = std::any_of(text.begin(), text.end(), [](char c) { return c > '9' || static_cast<unsigned char>(c) > 0x7F; });
  const double height = (words ? letter_height : figure_height) * em, depth = (words             ? letter_depth
                                                                               : has_comma(text) ? comma_depth
                                                                                                 : 0) *
                                                                              em;
  return {left_end.x, left_end.y - height, measure.measure(text, style).width, height + depth};
}

std::vector<LabelPlace> places_for(Label label, const Surroundings& around, list::TypeStyle style, const list::Measure& measure,
                                   const PlaceSearch& search) {
  const Finder finder(around, style, measure);
  std::vector<Point> holes{label.hole};
  holes.insert(holes.end(), label.also.begin(), label.also.end());
  std::vector<LabelPlace> found;
  for (const Point hole : holes) {
    label.hole = hole;
    finder.add_places(label, search, found);
  }
  std::stable_sort(found.begin(), found.end(), [](const LabelPlace& a, const LabelPlace& b) { return a.cost < b.cost; });
  if (found.size() > search.kept) found.resize(search.kept);
  return found;
}

bool clash(const LabelPlace& a, const LabelPlace& b) {
  if (!list::overlap(a.reach, b.reach)) return false;
  if (list::overlap(a.room, b.room)) return true;
  const Capsule la{a.placed.from, a.placed.to, 0.15}, lb{b.placed.from, b.placed.to, 0.15};
  if (a.placed.led && meet(grown(b.placed.box, 0.1), la)) return true;
  if (b.placed.led && meet(grown(a.placed.box, 0.1), lb)) return true;
  return a.placed.led && b.placed.led && meet(la, lb);
}

}  // namespace picture
