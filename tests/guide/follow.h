// Follows a landmark's name back to its hole as a student would, with nothing but what stands on the cloth: written for the tests on its
// own, from the words of the name alone.
#pragma once

#include <cmath>
#include <optional>
#include <string>

#include "guide/hand_made.h"

namespace hand_made {

struct Seen {
  const stitch::Feature* feature = nullptr;
  int x0 = 0, x1 = 0, y0 = 0, y1 = 0;
  double x() const { return (x0 + x1) / 2.0; }
  double y() const { return (y0 + y1) / 2.0; }
};

inline Seen see(const stitch::Feature& f) {
  if (f.shape != stitch::Shape::bundle) return {&f, f.hole.x, f.hole.x, f.hole.y, f.hole.y};
  Seen seen{&f, 1 << 20, -(1 << 20), 1 << 20, -(1 << 20)};
  for (const cloth::Stitch& s : f.stitches)
    for (const cloth::Hole h : {s.a, s.b}) {
      seen.x0 = std::min(seen.x0, h.x);
      seen.x1 = std::max(seen.x1, h.x);
      seen.y0 = std::min(seen.y0, h.y);
      seen.y1 = std::max(seen.y1, h.y);
    }
  return seen;
}

inline int out(const Seen& s, guide::Side side) {
  switch (side) {
    case guide::Side::top:
      return -s.y0;
    case guide::Side::bottom:
      return s.y1;
    case guide::Side::left:
      return -s.x0;
    case guide::Side::right:
      return s.x1;
  }
  return 0;
}

/// Those furthest out; one, or several alike.
inline std::vector<int> furthest(const std::vector<Seen>& all, const std::vector<int>& among, guide::Side side) {
  std::vector<int> best;
  for (const int i : among) {
    if (!best.empty() && out(all[i], side) < out(all[best[0]], side)) continue;
    if (!best.empty() && out(all[i], side) > out(all[best[0]], side)) best.clear();
    best.push_back(i);
  }
  return best;
}

/// The eighth of a turn in which the step goes, 0 to the right, 2 down.
inline int eighth(const Seen& a, const Seen& b) {
  return (static_cast<int>(std::lround(std::atan2(b.y() - a.y(), b.x() - a.x()) / (std::acos(-1.0) / 4))) + 8) % 8;
}
inline int eighth(cloth::Way way) { return (static_cast<int>(way) + 6) % 8; }

/// One whole turn to the right, going through the places in order?
inline bool runs_clockwise(const std::vector<Seen>& ring) {
  double turned = 0;
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Seen &a = ring[i], &b = ring[(i + 1) % n], &c = ring[(i + 2) % n];
    const double before = std::atan2(b.y() - a.y(), b.x() - a.x()), after = std::atan2(c.y() - b.y(), c.x() - b.x());
    turned += std::remainder(after - before, 2 * std::acos(-1.0));
  }
  return turned > 0;
}

/// The features that stand, of the kind and row the name speaks of, in the order of the part; and where they stand in its whole order.
struct Row {
  std::vector<Seen> seen;
  std::vector<int> along;
  int all = 0;  ///< how many there will be
  bool ring = false;
};

inline Row row_of(const Cloth& cloth, const std::vector<guide::When>& ready, int part, stitch::Shape shape, int row, guide::When now) {
  Row found;
  const auto& work = cloth.course.parts[part].work;
  std::vector<std::pair<int, int>> order;  // along, feature
  for (std::size_t f = 0; f < work.features.size(); ++f)
    if (work.features[f].shape == shape && work.features[f].row == row) order.emplace_back(work.features[f].along, static_cast<int>(f));
  std::sort(order.begin(), order.end());
  for (std::size_t i = 0; i < order.size(); ++i) {
    const int f = order[i].second;
    if (ready[f].lesson == 0 || !(ready[f] < now)) continue;
    found.seen.push_back(see(work.features[f]));
    found.along.push_back(static_cast<int>(i));
  }
  found.all = static_cast<int>(order.size());
  found.ring = work.closed && found.all > 2;
  return found;
}

inline std::optional<int> anchor(const Row& row, const guide::Which& which, bool of_row) {
  std::vector<int> all;
  for (std::size_t i = 0; i < row.seen.size(); ++i) all.push_back(static_cast<int>(i));
  std::vector<int> found = furthest(row.seen, all, which.side);
  if (of_row && found.size() < 2) return std::nullopt;
  if (of_row) found = furthest(row.seen, found, which.within);
  if (found.size() != 1) return std::nullopt;
  return found[0];
}

/// The one that comes `by` places later in the whole order, if it stands.
inline std::optional<int> beside(const Row& row, int i, int by) {
  int wanted = row.along[i] + by;
  if (row.ring) wanted = (wanted % row.all + row.all) % row.all;
  for (std::size_t k = 0; k < row.along.size(); ++k)
    if (row.along[k] == wanted) return static_cast<int>(k);
  return std::nullopt;
}

inline std::optional<int> count_along(const Row& row, int from, int steps, int by) {
  std::optional<int> at = from;
  for (int i = 0; i < steps && at; ++i) at = beside(row, *at, by);
  return at;
}

inline std::optional<int> which_one(const Row& row, const guide::Which& which) {
  using guide::Which;
  if (which.form == Which::only) return row.seen.size() == 1 ? std::optional(0) : std::nullopt;
  if (which.form == Which::extreme) return anchor(row, which, false);
  if (which.form == Which::extreme_of_row) return anchor(row, which, true);
  const auto from = anchor(row, which, which.anchor_within);
  if (!from || which.steps < 1) return std::nullopt;
  if (!which.open) {
    if (!row.ring || static_cast<int>(row.seen.size()) != row.all) return std::nullopt;
    return count_along(row, *from, which.steps, which.clockwise == runs_clockwise(row.seen) ? 1 : -1);
  }
  std::vector<int> ways;
  for (const int by : {1, -1})
    if (const auto next = beside(row, *from, by); next && eighth(row.seen[*from], row.seen[*next]) == eighth(which.towards))
      ways.push_back(by);
  return ways.size() == 1 ? count_along(row, *from, which.steps, ways[0]) : std::nullopt;
}

inline cloth::Hole spot_of(const stitch::Feature& f, const guide::Spot& spot) {
  std::vector<cloth::Stitch> stitches = f.stitches;
  std::sort(stitches.begin(), stitches.end(), [&](const cloth::Stitch& a, const cloth::Stitch& b) {
    return spot.upright ? a.a.x + a.b.x < b.a.x + b.b.x : a.a.y + a.b.y < b.a.y + b.b.y;
  });
  const cloth::Stitch& s = stitches[spot.stitch];
  const bool lesser = spot.upright ? s.a.y < s.b.y : s.a.x < s.b.x;
  const bool first_end = spot.end == guide::Side::top || spot.end == guide::Side::left;
  return lesser == first_end ? s.a : s.b;
}

/// The hole the name leads to before `now`. `ready`: of every part.
inline std::optional<cloth::Hole> follow(const Cloth& cloth, const std::vector<std::vector<guide::When>>& ready,
                                         const guide::Landmark& name, guide::When now) {
  const stitch::Shape shape = name.kind == guide::LandmarkKind::bundle   ? stitch::Shape::bundle
                              : name.kind == guide::LandmarkKind::corner ? stitch::Shape::corner
                                                                         : stitch::Shape::end;
  int parts = 0;  // that have the like: one, unless the name says which part and which row is meant
  for (std::size_t p = 0; p < cloth.course.parts.size(); ++p) {
    int rows = 0;
    for (int row = 0; row < 3; ++row) rows += row_of(cloth, ready[p], static_cast<int>(p), shape, row, now).seen.empty() ? 0 : 1;
    parts += rows > 0 ? 1 : 0;
    if (static_cast<int>(p) == name.part && rows > 1 && !name.name_row) return std::nullopt;
  }
  if (parts > 1 && !name.name_part) return std::nullopt;
  const Row row = row_of(cloth, ready[name.part], name.part, shape, name.row, now);
  const auto found = which_one(row, name.which);
  if (!found) return std::nullopt;
  const stitch::Feature& feature = *row.seen[*found].feature;
  return shape == stitch::Shape::bundle ? spot_of(feature, name.spot) : feature.hole;
}

/// The name as a line of words, made only of what is said.
inline std::string words(const guide::Landmark& name) {
  const guide::Which& w = name.which;
  std::string text = std::to_string(static_cast<int>(name.kind));
  const auto say = [&](const char* what, int number) { text += std::string(" ") + what + std::to_string(number); };
  if (name.name_part) say("part", name.part);
  if (name.name_row) say("row", name.row);
  say("form", w.form);
  if (w.form != guide::Which::only) say("side", static_cast<int>(w.side));
  if (w.form == guide::Which::extreme_of_row || (w.form == guide::Which::after && w.anchor_within))
    say("within", static_cast<int>(w.within));
  if (w.form == guide::Which::after) {
    say("steps", w.steps);
    w.open ? say("towards", static_cast<int>(w.towards)) : say("clockwise", w.clockwise);
  }
  if (name.kind != guide::LandmarkKind::bundle) return text;
  say("stitch", name.spot.stitch == name.spot.of - 1 ? -1 : name.spot.stitch);
  say("end", static_cast<int>(name.spot.end));
  return text;
}

}  // namespace hand_made
