#include "picture/labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numbers>
#include <optional>

#include "list/bounds.h"

namespace picture {
namespace {

constexpr double figure_height = 0.74, comma_depth = 0.14;  // em; figures of both families, measured
constexpr double letter_height = 0.78, letter_depth = 0.22;
constexpr double clear = 0.25;                              // mm between a number and anything solid
/// How many places are looked at for one number: few at first, more where these do not do.
struct Search {
  int enough = 16;        ///< good ones looked for
  std::size_t kept = 40;  ///< cheapest ones kept
};
constexpr Search searches[] = {{16, 40}, {90, 150}};
constexpr double good = 16;                                 // cost below which a candidate is good
constexpr double over_stitch = 20, over_pale = 2;            // cost of a leader across one

struct Candidate {
  PlacedLabel placed;
  Rect room;   ///< the box and what parts it from the next number
  Rect reach;  ///< room and leader together
  double cost = 0;
};

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

Point nearest_on(const Rect& box, Point p) {
  return {std::clamp(p.x, box.x, box.x + box.w), std::clamp(p.y, box.y, box.y + box.h)};
}

class Finder {
 public:
  Finder(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure)
      : labels_(labels), around_(around), style_(style), measure_(measure), em_(style.size_pt * list::mm_per_pt) {}

  std::vector<Candidate> candidates(std::size_t number, const Search& search) const {
    Label label = labels_[number];
    std::vector<Point> places{label.hole};
    places.insert(places.end(), label.also.begin(), label.also.end());
    std::vector<Candidate> found;
    for (const Point place : places) {
      label.hole = place;
      add_candidates(label, search, found);
    }
    std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) { return a.cost < b.cost; });
    if (found.size() > search.kept) found.resize(search.kept);
    return found;
  }

 private:
  static constexpr double reach = 24;  // mm from the hole: nothing beyond can be touched

  /// Ring by ring round the hole, until enough good ones are found.
  void add_candidates(const Label& label, const Search& search, std::vector<Candidate>& found) const {
    const Surroundings near = nearby(label);
    const Rect size = number_room(label.text, style_, measure_, {0, 0});
    int good_ones = 0;
    for (const double beyond : {0.0, 0.35, 0.8, 1.4, 2.1, 3.0, 4.0, 5.2, 6.6, 8.2, 10.5, 13.0}) {
      for (int way = 0; way < 24; ++way)
        if (const auto candidate = try_at(label, near, size, way, beyond)) {
          found.push_back(*candidate);
          good_ones += candidate->cost < good ? 1 : 0;
        }
      if (good_ones >= search.enough) return;
    }
  }

  Surroundings nearby(const Label& label) const {
    Surroundings near{around_.frame, {}, {}, {}, {}};
    const auto close = [&](const Capsule& c) { return distance(label.hole, c.a, c.b) < reach + c.radius; };
    std::copy_if(around_.solid.begin(), around_.solid.end(), std::back_inserter(near.solid), close);
    std::copy_if(around_.pale.begin(), around_.pale.end(), std::back_inserter(near.pale), close);
    std::copy_if(around_.thin.begin(), around_.thin.end(), std::back_inserter(near.thin), close);
    for (const Rect& box : around_.boxes)
      if (distance(box, label.hole) < reach) near.boxes.push_back(box);
    return near;
  }

  std::optional<Candidate> try_at(const Label& label, const Surroundings& near, const Rect& size, int way, double beyond) const {
    const double angle = way * std::numbers::pi / 12;
    const Point u{std::sin(angle), -std::cos(angle)};
    const double gap = label.radius + 0.3 + beyond;
    Candidate c;
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

  bool free(const Candidate& c, const Surroundings& near) const {
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
  bool led(const Label& label, const Surroundings& near, double beyond, Candidate& c) const {
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

  const std::vector<Label>& labels_;
  const Surroundings& around_;
  list::TypeStyle style_;
  const list::Measure& measure_;
  double em_;
};

bool clash(const Candidate& a, const Candidate& b) {
  if (!list::overlap(a.reach, b.reach)) return false;
  if (list::overlap(a.room, b.room)) return true;
  const Capsule la{a.placed.from, a.placed.to, 0.15}, lb{b.placed.from, b.placed.to, 0.15};
  if (a.placed.led && meet(grown(b.placed.box, 0.1), la)) return true;
  if (b.placed.led && meet(grown(a.placed.box, 0.1), lb)) return true;
  return a.placed.led && b.placed.led && meet(la, lb);
}

/// Chooses one candidate for each label: begins with the cheapest and moves the label in conflict that can be helped best, until none is left.
class Chooser {
 public:
  explicit Chooser(std::vector<std::vector<Candidate>> all) : all_(std::move(all)), chosen_(all_.size(), 0), moved_(all_.size(), 0) {}

  bool choose() {
    if (!settle()) return false;
    for (int round = 0; round < 3 && improve(); ++round) {
    }
    return std::none_of(all_.begin(), all_.end(), [](const auto& c) { return c.empty(); });
  }
  const Candidate* of(std::size_t label) const { return all_[label].empty() ? nullptr : &all_[label][chosen_[label]]; }

 private:
  static constexpr std::size_t none = static_cast<std::size_t>(-1);

  bool settle() {
    const int most = 60 + 8 * static_cast<int>(all_.size());
    for (int round = 0; round < most; ++round) {
      const int worst = in_conflict();
      if (worst < 0) return true;
      move(static_cast<std::size_t>(worst));
    }
    return false;
  }

  const Candidate& now(std::size_t label) const { return all_[label][chosen_[label]]; }

  int conflicts(std::size_t label, const Candidate& candidate, std::size_t apart_from = none) const {
    int count = 0;
    for (std::size_t other = 0; other < all_.size(); ++other)
      if (other != label && other != apart_from && !all_[other].empty() && clash(candidate, now(other))) ++count;
    return count;
  }

  /// Once nothing meets: each label to a cheaper place that is free, or that one other can make free for less than it gains. Whether any moved.
  bool improve() {
    bool moved = false;
    for (std::size_t label = 0; label < all_.size(); ++label)
      for (std::size_t c = 0; c < chosen_[label] && !all_[label].empty(); ++c) {  // candidates stand in order of cost
        if (!gives_way(label, all_[label][c], now(label).cost - all_[label][c].cost)) continue;
        chosen_[label] = c;
        moved = true;
        break;
      }
    return moved;
  }

  /// Is the place free, or does the one label in its way have another for less than `gain`? Then that one is moved.
  bool gives_way(std::size_t label, const Candidate& place, double gain) {
    std::size_t in_way = none;
    for (std::size_t other = 0; other < all_.size(); ++other) {
      if (other == label || all_[other].empty() || !clash(place, now(other))) continue;
      if (in_way != none) return false;
      in_way = other;
    }
    if (in_way == none) return true;
    for (std::size_t c = 0; c < all_[in_way].size(); ++c) {
      const Candidate& there = all_[in_way][c];
      if (there.cost - now(in_way).cost >= gain - 1e-9) return false;
      if (clash(place, there) || conflicts(in_way, there, label) > 0) continue;
      chosen_[in_way] = c;
      return true;
    }
    return false;
  }

  /// The label in conflict that was moved least often, or -1.
  int in_conflict() const {
    int found = -1;
    for (std::size_t i = 0; i < all_.size(); ++i) {
      if (all_[i].empty() || conflicts(i, now(i)) == 0) continue;
      if (found < 0 || moved_[i] < moved_[static_cast<std::size_t>(found)]) found = static_cast<int>(i);
    }
    return found;
  }

  /// To the candidate with fewest conflicts, the cheapest of equals, never the one it is at.
  void move(std::size_t label) {
    double best = 1e9;
    std::size_t to = chosen_[label];
    for (std::size_t c = 0; c < all_[label].size(); ++c) {
      if (c == chosen_[label]) continue;
      const double cost = conflicts(label, all_[label][c]) * (8.0 + moved_[label]) + all_[label][c].cost;
      if (cost < best) best = cost, to = c;
    }
    chosen_[label] = to;
    ++moved_[label];
  }

  std::vector<std::vector<Candidate>> all_;
  std::vector<std::size_t> chosen_;
  std::vector<int> moved_;
};

Placement placed(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure, const Search& search) {
  const Finder finder(labels, around, style, measure);
  std::vector<std::vector<Candidate>> all;
  for (std::size_t i = 0; i < labels.size(); ++i) all.push_back(finder.candidates(i, search));
  Chooser chooser(std::move(all));
  Placement placement;
  placement.clean = chooser.choose();
  for (std::size_t i = 0; i < labels.size(); ++i) {
    PlacedLabel fallback;
    fallback.box = number_room(labels[i].text, style, measure, labels[i].hole);
    fallback.base = labels[i].hole;
    placement.labels.push_back(chooser.of(i) ? chooser.of(i)->placed : fallback);
    placement.strain = std::max(placement.strain, chooser.of(i) ? chooser.of(i)->cost : 1000.0);
  }
  return placement;
}

}  // namespace

Rect number_room(std::string_view text, list::TypeStyle style, const list::Measure& measure, Point left_end) {
  const double em = style.size_pt * list::mm_per_pt;
  const bool words = std::any_of(text.begin(), text.end(), [](char c) { return c > '9' || static_cast<unsigned char>(c) > 0x7F; });
  const double height = (words ? letter_height : figure_height) * em, depth = (words ? letter_depth : has_comma(text) ? comma_depth : 0) * em;
  return {left_end.x, left_end.y - height, measure.measure(text, style).width, height + depth};
}

Placement place_labels(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure) {
  Placement placement;
  for (const Search& search : searches) {
    placement = placed(labels, around, style, measure, search);
    if (placement.clean) break;
  }
  return placement;
}

}  // namespace picture
