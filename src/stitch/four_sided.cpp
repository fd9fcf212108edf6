// Four-sided stitch along straight legs: a row of squares beside the path, each worked side by side with the back thread crossing slantwise
// behind it (over 2: 1 (0,0), 2 (0,-2), 3 (2,0), 4 = 1, 5 (2,-2), 6 = 2, 7 = 3, 8 = 5: common practice, no source). At a turn towards the
// row two legs share the corner square; at one away from it the corner square is added. How the sides of any square follow is worked out,
// not laid down: as many crossings behind it as can be, then the least thread.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "cloth/way.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/line.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int least_over = 2, most_over = 12;

/// One square of the row, entered across the side that lies back along `way`.
struct Cell {
  cloth::Hole base;  ///< on the path's side of the row, where `way` begins
  cloth::Way way = cloth::Way::E;
  int leg = 0;
};

class Squares {
 public:
  Squares(const Line& line, int over, int side) : line_(line), over_(over), side_(side) {}

  Work work() {
    lay_cells();
    Work work;
    work.piece = Piece::square;
    work.closed = line_.closed;
    Pass pass{{}, Order::in_turn, line_.closed};
    for (std::size_t i = 0; i < cells_.size(); ++i) add_run(pass, i);
    for (const Run& run : pass.runs) work.stitches.insert(work.stitches.end(), run.stitches.begin(), run.stitches.end());
    work.passes.push_back(std::move(pass));
    add_features(work);
    count_legs(work);
    doubt_meeting(work);
    return work;
  }

 private:
  cloth::Hole ahead(cloth::Way way) const { return over_ * cloth::step(way); }
  cloth::Hole aside(cloth::Way way) const { return over_ * cloth::step(cloth::turned(way, 2 * side_)); }
  std::size_t legs() const { return line_.legs.size(); }
  cloth::Way way(std::size_t leg) const { return line_.legs[leg % legs()].way; }
  bool turns_after(std::size_t leg) const { return leg + 1 < legs() || line_.closed; }
  /// Does the line turn towards the row after the leg?
  bool inward(std::size_t leg) const { return way(leg + 1) == cloth::turned(way(leg), 2 * side_); }

  void lay_cells() {
    for (std::size_t leg = 0; leg < legs(); ++leg) {
      const cloth::Way going = way(leg);
      const auto count = static_cast<int>(line_.legs[leg].threads / over_);
      const bool shared = leg > 0 && inward(leg - 1);
      const bool last_shared = leg + 1 == legs() && line_.closed && inward(leg);  // it is the first square of all
      const int more = turns_after(leg) && !inward(leg) ? 1 : 0;
      for (int k = shared ? 1 : 0; k < count + more - (last_shared ? 1 : 0); ++k)
        cells_.push_back({line_.corners[leg] + k * ahead(going), going, static_cast<int>(leg)});
    }
    for (std::size_t i = 0; i < cells_.size(); ++i) find_way_in(i);
  }

  cloth::Hole least(const Cell& c) const {
    const cloth::Hole far = c.base + ahead(c.way) + aside(c.way);
    return {std::min(c.base.x, far.x), std::min(c.base.y, far.y)};
  }

  /// The way from the square before it, and the base hole that belongs to that way.
  void find_way_in(std::size_t i) {
    Cell& cell = cells_[i];
    if (i == 0 && !line_.closed) return;
    const Cell& before = cells_[i == 0 ? cells_.size() - 1 : i - 1];
    const auto in = cloth::way_between(least(before), least(cell));
    if (!in || cloth::slanted(*in) || *in == cell.way) return;
    const cloth::Hole at = least(cell);
    for (const cloth::Hole corner : {at, at + cloth::Hole{over_, 0}, at + cloth::Hole{0, over_}, at + cloth::Hole{over_, over_}}) {
      const Cell turned{corner, *in, cell.leg};
      if (least(turned) == at) return void(cell = turned);
    }
  }

  cloth::Stitch entry(const Cell& cell) const { return {cell.base, cell.base + aside(cell.way)}; }

  /// The side by which the row leaves the square, as it is worked: the way in of the next one.
  cloth::Stitch leaving(std::size_t i) const {
    if (i + 1 < cells_.size()) return entry(cells_[i + 1]);
    if (line_.closed) return entry(cells_[0]);
    return {cells_[i].base + ahead(cells_[i].way), cells_[i].base + ahead(cells_[i].way) + aside(cells_[i].way)};
  }

  struct Cost {
    int broken = 0, uncrossed = 0;
    std::int64_t thread = 0;
    friend auto operator<=>(const Cost&, const Cost&) = default;
  };
  static Cost cost(cloth::Hole from, const std::vector<cloth::Stitch>& sides, std::optional<cloth::Hole> to) {
    Cost cost;
    const auto link = [&](cloth::Hole a, cloth::Hole b) {
      cost.broken += a == b;
      cost.uncrossed += a.x == b.x || a.y == b.y;
      cost.thread += cloth::squared(a, b);
    };
    for (const cloth::Stitch& side : sides) link(std::exchange(from, side.b), side.a);
    if (to) link(from, *to);
    return cost;
  }

  /// The sides in the best order and the best ways, coming from one hole and going on to another.
  static std::vector<cloth::Stitch> best(cloth::Hole from, std::vector<cloth::Stitch> sides, std::optional<cloth::Hole> to) {
    std::vector<std::size_t> order(sides.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::optional<std::pair<Cost, std::vector<cloth::Stitch>>> found;
    do {
      for (unsigned ways = 0; ways < 1u << sides.size(); ++ways) {
        std::vector<cloth::Stitch> tried;
        for (const std::size_t i : order) tried.push_back((ways >> i & 1u) != 0 ? sides[i].reversed() : sides[i]);
        const Cost here = cost(from, tried, to);
        if (!found || here < found->first) found = {here, std::move(tried)};
      }
    } while (std::next_permutation(order.begin(), order.end()));
    return found->second;
  }

  void add_run(Pass& pass, std::size_t i) {
    const Cell& cell = cells_[i];
    Run run{{}, {}, Freedom::fixed, DownSide::none};
    const auto work = [&](const cloth::Stitch& stitch) {
      if (worked_.insert(stitch.normal()).second) run.stitches.push_back(stitch);
    };
    const cloth::Stitch in = entry(cell), out = leaving(i);
    work(in);
    const cloth::Hole far_base = in.a + ahead(cell.way), far_aside = in.b + ahead(cell.way);
    std::vector<cloth::Stitch> rest;
    for (const cloth::Stitch side : {cloth::Stitch{far_base, in.a}, {far_aside, in.b}, {far_base, far_aside}})
      if (side.normal() != out.normal() && !worked_.contains(side.normal())) rest.push_back(side);
    for (const cloth::Stitch& side : best(in.b, std::move(rest), out.a)) work(side);
    if (i + 1 == cells_.size() && !line_.closed) work(out);
    if (run.stitches.empty()) return;
    run.legs.assign(run.stitches.size(), cell.leg);
    pass.runs.push_back(std::move(run));
  }

  void add_feature(Work& work, Shape shape, cloth::Hole hole, int along) const {
    Feature feature{shape, {}, hole, 0, along};
    for (const cloth::Way w : {cloth::Way::N, cloth::Way::E, cloth::Way::S, cloth::Way::W}) {
      const cloth::Stitch side{hole, hole + ahead(w)};
      if (worked_.contains(side.normal())) feature.stitches.push_back(side);
    }
    if (!feature.stitches.empty()) work.features.push_back(std::move(feature));
  }

  /// Of a corner of the row, the hole on its outer side; of a free end both.
  void add_features(Work& work) const {
    for (std::size_t leg = 0; leg < legs(); ++leg)
      if (turns_after(leg)) {
        const cloth::Hole corner = line_.corners[leg + 1];
        add_feature(work, Shape::corner, inward(leg) ? corner : corner + ahead(way(leg)) + aside(way(leg)), static_cast<int>(leg));
      }
    if (line_.closed) return;
    const cloth::Stitch first = entry(cells_.front()), last = leaving(cells_.size() - 1);
    int along = 0;
    for (const cloth::Hole hole : {first.a, first.b, last.a, last.b}) add_feature(work, Shape::end, hole, along++);
  }

  /// Squares of each leg; a corner square counts in both.
  void count_legs(Work& work) const {
    for (std::size_t leg = 0; leg < legs(); ++leg) {
      int squares = static_cast<int>(line_.legs[leg].threads / over_);
      squares += turns_after(leg) && !inward(leg) ? 1 : 0;
      squares += (leg > 0 || line_.closed) && !inward((leg + legs() - 1) % legs()) ? 1 : 0;
      work.legs.push_back({0, static_cast<int>(leg), false, 0, squares, line_.corners[leg], line_.corners[leg + 1]});
      work.corners.push_back({line_.corners[leg]});
    }
    if (!line_.closed) work.corners.push_back({line_.corners.back()});
  }

  void doubt_meeting(Work& work) const {
    std::unordered_map<cloth::Hole, std::size_t> seen;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      const auto [other, fresh] = seen.emplace(least(cells_[i]), i);
      if (fresh) continue;
      const Cell& before = cells_[other->second];
      work.doubts.push_back({"row-crosses-itself",
                             false,
                             least(cells_[i]),
                             least(before),
                             {{"row", 1}, {"leg", cells_[i].leg + 1}, {"other_row", 1}, {"other_leg", before.leg + 1}}});
      return;
    }
  }

  const Line& line_;
  int over_, side_;  ///< side: 1 the row lies to the right of the way, -1 to the left
  std::vector<Cell> cells_;
  std::unordered_set<cloth::Stitch> worked_;
};

/// Only straight legs, and none too short for the two corner squares it would share.
void check(const Line& line, int over, int side, ItemFaults& faults) {
  const std::size_t legs = line.legs.size();
  const auto inward = [&](std::size_t leg) { return line.legs[(leg + 1) % legs].way == cloth::turned(line.legs[leg].way, 2 * side); };
  for (std::size_t leg = 0; leg < legs; ++leg) {
    const bool in = (leg > 0 || line.closed) && inward((leg + legs - 1) % legs), out = (leg + 1 < legs || line.closed) && inward(leg);
    if (in && out && line.legs[leg].threads < 2 * over)
      faults.at_number(line.legs[leg].item,
                       fmt::format("{} or more: between two turns towards the row there are two squares at least", 2 * over));
  }
}

Outcome build(const Values& values) {
  const int over = value<int>(values, "over"), side = value<std::string>(values, "squares_lie") == "right" ? 1 : -1;
  constexpr int sides_a_square = 4;
  LineRead read = read_line(values, over, sides_a_square, Slants::refused);
  if (!read.faults.empty()) return {{}, std::move(read.faults)};
  ItemFaults faults(value<std::string>(values, "path"));
  const Line& line = read.line;
  check(line, over, side, faults);
  if (faults.any()) return {{}, faults.take()};
  for (const cloth::Hole corner : line.corners)
    if (!within_limit(std::int64_t{corner.x} - over, std::int64_t{corner.y} - over) ||
        !within_limit(std::int64_t{corner.x} + over, std::int64_t{corner.y} + over))
      return {{}, {start_beyond_limit(corner)}};
  return {Squares(line, over, side).work(), {}};
}

}  // namespace

Kind four_sided_kind() {
  return {.name = "four-sided",
          .keys = {required_hole("start"), required_path("path"), whole("over", 4, least_over, most_over),
                   word("squares_lie", "left", {"left", "right"})},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
