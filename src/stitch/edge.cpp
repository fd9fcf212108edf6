// Buttonhole edge: stitches one thread apart from the ridge, where the cloth will be cut off, to the inner holes of the path, which has
// straight legs only. At an outer corner five stitches share the inner corner hole, or seven as the teacher likes: the last of one side, those
// fanned, the first of the next. At an inner corner two stitches at right angles share the ridge hole (common practice, no source).
//
// A right-handed stitcher works with the ridge towards her from left to right (common practice, no source): the ridge lies to the right of
// the way. A path written with the ridge to its left is therefore worked from its end.
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>

#include "cloth/index.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/line.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int least_over = 3, most_over = 8;  // over 2 a fan's three stitches would lie in one hole; longer ones catch
constexpr int least_over_for_seven = 4;  // below, two of the fan's five stitches would lie in one hole
constexpr int counted_safely = 20;  // stitches of a side at whose end no mark is needed (an assumption, no source)

enum class Turning { none, outer, inner };

class Edge {
 public:
  /// The ridge lies to the right of the line.
  Edge(const Line& line, int over, int corner) : line_(line), over_(over), fanned_(corner - 2) {}

  void check(ItemFaults& faults) const {
    for (std::size_t leg = 0; leg < legs(); ++leg) check_length(leg, faults);
    if (!faults.any() && stitches() > stitch_limit)
      faults.at_item(line_.legs.back().item, fmt::format("by which there are {} stitches", stitches()), stitch_limit_in_words());
  }

  Work work() const {
    Work work;
    work.piece = Piece::edge;
    work.closed = line_.closed;
    Run run{{}, {}, Freedom::fixed, DownSide::none};
    for (std::size_t leg = 0; leg < legs(); ++leg) {
      lay_side(leg, run);
      if (fans_after(leg) > 0) lay_fan(leg, run);
    }
    add_features(run, work);
    add_corners(work);
    work.stitches = run.stitches;
    if (!doubt_meeting(run, work)) work.passes.push_back({{std::move(run)}, Order::looped, line_.closed});
    return work;
  }

 private:
  std::size_t legs() const { return line_.legs.size(); }
  cloth::Way way(std::size_t leg) const { return line_.legs[leg].way; }
  cloth::Hole outwards(std::size_t leg) const { return cloth::step(cloth::turned(way(leg), 2)); }

  Turning after(std::size_t leg) const {
    if (leg + 1 == legs() && !line_.closed) return Turning::none;
    return way((leg + 1) % legs()) == cloth::turned(way(leg), 2) ? Turning::inner : Turning::outer;
  }
  Turning before(std::size_t leg) const { return leg == 0 && !line_.closed ? Turning::none : after((leg + legs() - 1) % legs()); }

  /// Threads that the stitches of a side leave free before an inner corner, so that they meet on the ridge.
  int left_free(Turning turning) const { return turning == Turning::inner ? over_ : 0; }

  void check_length(std::size_t leg, ItemFaults& faults) const {
    const bool both = before(leg) == Turning::inner && after(leg) == Turning::inner;
    const int least = left_free(before(leg)) + left_free(after(leg)) + (both ? 1 : 0);  // two ridges face each other: cloth to cut between
    const LineLeg& written = line_.legs[leg];
    if (written.threads >= least) return;
    const auto more = static_cast<int>(least - written.threads) + written.item.number;
    faults.at_number(written.item, fmt::format("{} or more: stitches over {} need as many threads before an inner corner{}", more, over_,
                                               both ? ", and a thread between two of them" : ""));
  }

  std::int64_t stitches() const {
    std::int64_t n = 0;
    for (std::size_t leg = 0; leg < legs(); ++leg) n += std::int64_t{on_side(leg)} + fans_after(leg);
    return n;
  }

  void add(cloth::Hole inner, cloth::Hole to_ridge, std::size_t leg, Run& run) const {
    run.stitches.push_back({inner + to_ridge, inner});
    run.legs.push_back(static_cast<int>(leg));
  }

  void lay_side(std::size_t leg, Run& run) const {
    const auto last = static_cast<int>(line_.legs[leg].threads) - left_free(after(leg));
    for (int i = left_free(before(leg)); i <= last; ++i)
      add(line_.corners[leg] + i * cloth::step(way(leg)), over_ * outwards(leg), leg, run);
  }

  /// From the corner hole, over 4: (2,4), (3,3), (4,2); with two more (1,4) and (4,1). Over other numbers likewise, on the slant through the
  /// middle one.
  void lay_fan(std::size_t leg, Run& run) const {
    const cloth::Hole here = outwards(leg), next = outwards((leg + 1) % legs());
    const int middle = (3 * over_ + 2) / 4, near = 2 * middle - over_;
    const cloth::Hole corner = line_.corners[leg + 1];
    const bool more = fanned_ > 3;
    if (more) add(corner, over_ * here + near / 2 * next, leg, run);
    add(corner, over_ * here + near * next, leg, run);
    add(corner, middle * here + middle * next, leg, run);
    add(corner, near * here + over_ * next, leg, run);
    if (more) add(corner, near / 2 * here + over_ * next, leg, run);
  }

  /// An outer corner by the stitches that share its hole, an inner one by the two that meet.
  void add_features(const Run& run, Work& work) const {
    const auto n = static_cast<int>(run.stitches.size());
    const auto at = [&](int k) { return run.stitches[static_cast<std::size_t>((k % n + n) % n)]; };
    int next = 0;  // the first stitch of the leg after
    for (std::size_t leg = 0; leg < legs(); ++leg) {
      while (next < n && run.legs[static_cast<std::size_t>(next)] <= static_cast<int>(leg)) ++next;
      const int along = static_cast<int>(leg);
      if (after(leg) == Turning::outer) {
        work.features.push_back({Shape::fan, {}, at(next).b, 0, along});
        for (int k = next - fanned_ - 1; k <= next; ++k) work.features.back().stitches.push_back(at(k));
      } else if (after(leg) == Turning::inner)
        work.features.push_back({Shape::notch, {at(next - 1), at(next)}, at(next).a, 0, along});
      const int last = next - 1 - fans_after(leg);
      work.legs.push_back({0, along, false, on_side(leg), 0, at(last - on_side(leg) + 1).b, at(last).b});
    }
  }

  /// Stitches of the leg that stand straight; one in a corner hole counts with the side it is square to.
  int on_side(std::size_t leg) const {
    return static_cast<int>(line_.legs[leg].threads) + 1 - left_free(before(leg)) - left_free(after(leg));
  }
  int fans_after(std::size_t leg) const { return after(leg) == Turning::outer ? fanned_ : 0; }

  /// Outer corners at the ends of long sides: the corners of scallops are found by their few stitches.
  void add_corners(Work& work) const {
    for (std::size_t leg = 0; leg < legs(); ++leg) {
      const std::size_t next = (leg + 1) % legs();
      if (after(leg) == Turning::outer && std::max(on_side(leg), on_side(next)) > counted_safely)
        work.corners.push_back({line_.corners[leg + 1]});
    }
  }

  /// An edge that crosses or touches itself along a stitch cannot be cut out: told once.
  bool doubt_meeting(const Run& run, Work& work) const {
    cloth::Index index;
    for (std::size_t i = 0; i < run.stitches.size(); ++i) {
      const auto meets = index.meeting(run.stitches[i]);
      if (!meets.empty()) {
        const auto other = static_cast<std::size_t>(meets.front());
        work.doubts.push_back({"edge-crosses-itself",
                               true,
                               run.stitches[i].b,
                               run.stitches[other].b,
                               {{"leg", run.legs[i] + 1}, {"other_leg", run.legs[other] + 1}}});
        drop_doubled(work);
        return true;
      }
      index.add(run.stitches[i], static_cast<int>(i));
    }
    return false;
  }

  static void drop_doubled(Work& work) {
    std::vector<cloth::Stitch> once;
    for (const cloth::Stitch& stitch : work.stitches) once.push_back(stitch.normal());
    std::sort(once.begin(), once.end());
    once.erase(std::unique(once.begin(), once.end()), once.end());
    work.stitches = std::move(once);
  }

  const Line& line_;
  int over_;
  int fanned_;  ///< at an outer corner, between the last of one side and the first of the next
};

/// The same line from its end, so that what lay to its left lies to its right.
Line turned_back(Line line) {
  std::reverse(line.corners.begin(), line.corners.end());
  std::reverse(line.legs.begin(), line.legs.end());
  for (LineLeg& leg : line.legs) leg.way = cloth::turned(leg.way, 4);
  return line;
}

bool ridge_within_limit(const Line& line, int over) {
  return std::all_of(line.corners.begin(), line.corners.end(), [&](cloth::Hole corner) {
    return within_limit(std::int64_t{std::abs(corner.x)} + over, std::int64_t{std::abs(corner.y)} + over);
  });
}

std::optional<KeyFault> corner_fault(int over, int corner) {
  if (corner % 2 == 0) return KeyFault{"corner", 0, 0, fmt::format("the number {}", corner), "5 or 7", {}};
  if (corner == 5 || over >= least_over_for_seven) return std::nullopt;
  return KeyFault{"corner", 0, 0, fmt::format("the number {}", corner), fmt::format("5: over {} there is no room for more", over), {}};
}

Outcome build(const Values& values) {
  const int over = value<int>(values, "over"), corner = value<int>(values, "corner");
  LineRead read = read_line(values, 1, 1, Slants::refused);
  if (const auto fault = corner_fault(over, corner)) read.faults.push_back(*fault);
  if (!read.faults.empty()) return {{}, std::move(read.faults)};
  ItemFaults faults(value<std::string>(values, "path"));
  Line line = std::move(read.line);
  if (value<std::string>(values, "out") == "left") line = turned_back(std::move(line));
  const Edge edge(line, over, corner);
  edge.check(faults);
  if (!faults.any() && !ridge_within_limit(line, over))
    faults.at_item(line.legs.back().item, "by which the ridge lies too far out", hole_limit_in_words());
  if (faults.any()) return {{}, faults.take()};
  return {edge.work(), {}};
}

}  // namespace

Kind edge_kind() {
  return {.name = "edge",
          .keys = {required_hole("start"), required_path("path"), word("out", "left", {"left", "right"}),
                   whole("over", 4, least_over, most_over), whole("corner", 5, 5, 7)},
          .build = build,
          .by_edge_habit = true,
          .stitches_a_minute = 5};  // an assumption, no source
}

}  // namespace stitch
