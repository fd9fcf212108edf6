#include "cutwork/after_route.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "cutwork/filling_work.h"

namespace cutwork {
namespace {

using stitch::Filling;

constexpr int bars_passed = 2;  // at most, along whose backs the thread runs on: eight threads of the twelve that are usual

std::array<cloth::Hole, 4> corners(const cloth::Box& b) { return {{{b.x0, b.y0}, {b.x1, b.y0}, {b.x1, b.y1}, {b.x0, b.y1}}}; }

class AfterRoute {
 public:
  AfterRoute(const Cutting& cutting, const std::vector<Sides>& sides, const std::vector<Filling>& fillings, double tall)
      : cutting_(cutting), sides_(sides), fillings_(fillings), tall_(tall), left_(cutting.openings.size(), false) {
    std::map<cloth::Hole, int> crossing_at;
    for (std::size_t c = 0; c < cutting.crossings.size(); ++c)
      for (const cloth::Hole h : corners(cutting.crossings[c].box)) crossing_at[h] = static_cast<int>(c);
    at_crossing_.resize(cutting.crossings.size());
    for (std::size_t o = 0; o < left_.size(); ++o) {
      left_[o] = is_after(o);
      crossings_.push_back({-1, -1, -1, -1});
      for (std::size_t i = 0; i < 4; ++i)
        if (const auto found = crossing_at.find(corners(cutting.openings[o].box)[i]); found != crossing_at.end()) {
          crossings_[o][i] = found->second;
          if (left_[o]) at_crossing_[static_cast<std::size_t>(found->second)].push_back({static_cast<int>(o), static_cast<int>(i)});
        }
    }
  }

  std::vector<RouteItem> items() {
    std::vector<int> order;
    for (std::size_t o = 0; o < left_.size(); ++o)
      if (left_[o]) order.push_back(static_cast<int>(o));
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return neighbours(a) < neighbours(b); });
    for (const int o : order) {
      if (!left_[static_cast<std::size_t>(o)]) continue;
      Step step{o, first_corner(o), -1, {}};
      while (true) {
        add(step);
        const auto next = next_from(step);
        if (!next) break;
        step = *next;
      }
    }
    return std::move(items_);
  }

 private:
  struct Step {
    int opening = 0, corner = 0;
    int behind = -1;
    std::vector<cloth::Hole> via;
  };
  struct Reached {
    int corner = 0, bars = 0;
    std::vector<cloth::Hole> via;
  };

  bool is_after(std::size_t o) const {
    const Filling kind = fillings_[o];
    const bool no_bars = std::all_of(sides_[o].begin(), sides_[o].end(), [](int bar) { return bar < 0; });
    return kind == Filling::square_filet || kind == Filling::wheel || (kind == Filling::doves_eye && no_bars);
  }

  /// A corner from which the thread can go on afterwards; of those one at a block, where a tail finds hold.
  int first_corner(int o) const {
    const auto& at = crossings_[static_cast<std::size_t>(o)];
    int best = 0, most = -1;
    for (int corner = 0; corner < 4; ++corner) {
      const auto all = reached({o, corner, -1, {}});
      const bool goes_on = std::any_of(all.begin(), all.end(), [&](const Reached& r) { return at[static_cast<std::size_t>(r.corner)] >= 0; });
      const int worth = (goes_on ? 2 : 0) + (at[static_cast<std::size_t>(corner)] < 0 ? 1 : 0);
      if (worth > most) best = corner, most = worth;
    }
    return best;
  }

  std::set<int> neighbours_of(int o) const {
    std::set<int> all;
    for (const int c : crossings_[static_cast<std::size_t>(o)])
      if (c >= 0)
        for (const auto& [other, corner] : at_crossing_[static_cast<std::size_t>(c)])
          if (other != o && left_[static_cast<std::size_t>(other)]) all.insert(other);
    return all;
  }
  std::size_t neighbours(int o) const { return neighbours_of(o).size(); }

  void add(const Step& step) {
    left_[static_cast<std::size_t>(step.opening)] = false;
    RouteItem item;
    const Filling kind = fillings_[static_cast<std::size_t>(step.opening)];
    item.fillings = {kind == Filling::wheel          ? wheel(cutting_, step.opening, step.corner, tall_)
                     : kind == Filling::square_filet ? square_filet(cutting_, step.opening, step.corner, tall_)
                                                     : doves_eye(cutting_, step.opening, sides_[static_cast<std::size_t>(step.opening)], 0, tall_)};
    item.behind = step.behind;
    item.via = step.via;
    item.from = item.fillings[0].points.front();
    item.to = item.fillings[0].points.back();
    items_.push_back(std::move(item));
  }

  /// Corners of the opening that the thread comes to from where its filling ends, along the backs of the bars round it.
  std::vector<Reached> reached(const Step& step) const {
    const auto o = static_cast<std::size_t>(step.opening);
    const int end = fillings_[o] == Filling::wheel ? (step.corner + 3) % 4 : step.corner;
    std::vector<Reached> all{{end, 0, {}}};
    for (const int turn : {1, 3}) {
      Reached at{end, 0, {}};
      for (int n = 1; n <= bars_passed; ++n) {
        const int side = turn == 1 ? at.corner : (at.corner + 3) % 4;
        const int bar = sides_[o][static_cast<std::size_t>(side)];
        if (bar < 0) break;
        const auto ends = ends_of(cutting_.bars[static_cast<std::size_t>(bar)]);
        const bool low_first = cloth::squared(ends[0], corner(o, at.corner)) < cloth::squared(ends[1], corner(o, at.corner));
        at.via.push_back(ends[low_first ? 0 : 1]);
        at.via.push_back(ends[low_first ? 1 : 0]);
        at.corner = (at.corner + turn) % 4;
        at.bars = n;
        all.push_back(at);
      }
    }
    return all;
  }

  cloth::Hole corner(std::size_t o, int i) const { return corners(cutting_.openings[o].box)[static_cast<std::size_t>(i)]; }

  static std::array<cloth::Hole, 2> ends_of(const Bar& bar) {
    const cloth::Hole middle = middle_of(bar);
    if (bar.axis == Axis::h) return {{{bar.box.x0, middle.y}, {bar.box.x1, middle.y}}};
    return {{{middle.x, bar.box.y0}, {middle.x, bar.box.y1}}};
  }

  /// The opening with the fewest others left round it, so that none is left over; of those the nearest.
  std::optional<Step> next_from(const Step& step) const {
    if (fillings_[static_cast<std::size_t>(step.opening)] == Filling::doves_eye) return std::nullopt;
    std::optional<std::pair<std::size_t, int>> best;
    std::optional<Step> next;
    for (const Reached& at : reached(step)) {
      const int crossing = crossings_[static_cast<std::size_t>(step.opening)][static_cast<std::size_t>(at.corner)];
      if (crossing < 0) continue;
      for (const auto& [o, corner] : at_crossing_[static_cast<std::size_t>(crossing)]) {
        if (!left_[static_cast<std::size_t>(o)] || fillings_[static_cast<std::size_t>(o)] == Filling::doves_eye) continue;
        const std::pair cost(neighbours(o), at.bars);
        if (best && *best <= cost) continue;
        best = cost;
        next = Step{o, corner, crossing, at.via};
      }
    }
    return next;
  }

  const Cutting& cutting_;
  const std::vector<Sides>& sides_;
  const std::vector<Filling>& fillings_;
  double tall_;  ///< a thread down, in threads across
  std::vector<char> left_;
  std::vector<std::array<int, 4>> crossings_;                   ///< at each opening's corners; -1: none
  std::vector<std::vector<std::pair<int, int>>> at_crossing_;  ///< openings to be filled, and their corner there
  std::vector<RouteItem> items_;
};

}  // namespace

std::vector<RouteItem> after_route(const Cutting& cutting, const std::vector<Sides>& sides, const std::vector<Filling>& fillings,
                                   double tall) {
  return AfterRoute(cutting, sides, fillings, tall).items();
}

}  // namespace cutwork
