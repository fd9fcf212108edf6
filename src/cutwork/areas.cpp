#include "cutwork/areas.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>
#include <unordered_map>

namespace cutwork {
namespace {

constexpr int near = 2 * four;  // gaps up to this are closed for the search; a block left out of a staircase leaves four each way
constexpr int tile = 16;

struct Gap {
  int a = 0, b = 0;
  int size = 0;
  bool apart = false;  ///< a step of a row that leaves four threads free
};

int parted(int from, int to, int other_from, int other_to) { return std::max({0, other_from - to, from - other_to}); }

class Gaps {
 public:
  explicit Gaps(const Walls& walls) : walls_(walls), touching_(walls.boxes.size(), 0) {
    for (int b = 0; b < static_cast<int>(walls.boxes.size()); ++b) look(b);
    std::stable_sort(gaps_.begin(), gaps_.end(),
                     [](const Gap& x, const Gap& y) { return std::make_tuple(!x.apart, x.size) < std::make_tuple(!y.apart, y.size); });
  }
  const std::vector<Gap>& nearest_first() const { return gaps_; }
  std::vector<int>& touching() { return touching_; }

 private:
  /// Compares the block with those looked at before, and enters it.
  void look(int b) {
    const cloth::Box wide = walls_.boxes[b].widened(near);
    std::vector<int> others;
    each_tile(wide, [&](cloth::Hole at) {
      if (const auto found = tiles_.find(at); found != tiles_.end())
        others.insert(others.end(), found->second.begin(), found->second.end());
    });
    std::sort(others.begin(), others.end());
    others.erase(std::unique(others.begin(), others.end()), others.end());
    for (const int a : others) compare(a, b);
    each_tile(walls_.boxes[b], [&](cloth::Hole at) { tiles_[at].push_back(b); });
  }

  template <typename Do>
  static void each_tile(const cloth::Box& box, Do act) {
    const auto of = [](int at) { return at >= 0 ? at / tile : -((tile - 1 - at) / tile); };
    for (int y = of(box.y0); y <= of(box.y1); ++y)
      for (int x = of(box.x0); x <= of(box.x1); ++x) act({x, y});
  }

  void compare(int a, int b) {
    const cloth::Box &p = walls_.boxes[a], &q = walls_.boxes[b];
    const int dx = parted(p.x0, p.x1, q.x0, q.x1), dy = parted(p.y0, p.y1, q.y0, q.y1);
    if (dx == 0 && dy == 0) {
      ++touching_[a];
      ++touching_[b];
    } else if (dx <= near && dy <= near) {
      const bool upright = walls_.grains[a] == Axis::v;
      const bool level = upright ? p.y0 == q.y0 && p.y1 == q.y1 : p.x0 == q.x0 && p.x1 == q.x1;
      gaps_.push_back({a, b, std::max(dx, dy), walls_.grains[a] == walls_.grains[b] && level && (upright ? dx : dy) == four});
    }
  }

  const Walls& walls_;
  std::vector<int> touching_;
  std::vector<Gap> gaps_;
  std::unordered_map<cloth::Hole, std::vector<int>> tiles_;
};

struct Stretch {
  int from = 0, to = 0;
};
/// What lies between two stretches, or what they share.
Stretch between(int a0, int a1, int b0, int b1) {
  return {std::min(std::max(a0, b0), std::min(a1, b1)), std::max(std::max(a0, b0), std::min(a1, b1))};
}

class Closer {
 public:
  Closer(const Request& request, Walls walls, std::vector<Problem>& problems)
      : request_(request), walls_(std::move(walls)), gaps_(walls_), problems_(problems) {}

  Runs close() {
    Runs runs = find_runs(walls_, barriers_);
    for (const bool apart : {true, false})
      if (close_some(apart, without_area(runs))) runs = find_runs(walls_, barriers_);
    tell_lost(without_area(runs));
    return runs;
  }

 private:
  /// Blocks that no area lies beside.
  std::vector<bool> without_area(const Runs& runs) const {
    std::vector<bool> lost(walls_.boxes.size(), true);
    for (const auto* lines : {&runs.rows, &runs.columns})
      for (const Run& run : *lines) {
        if (run.area < 0) continue;
        if (run.low.block >= 0) lost[run.low.block] = false;
        if (run.high.block >= 0) lost[run.high.block] = false;
      }
    return lost;
  }

  bool close_some(bool apart, const std::vector<bool>& lost) {
    bool any = false;
    for (const Gap& gap : gaps_.nearest_first()) {
      auto& touching = gaps_.touching();
      if (gap.apart != apart || !lost[gap.a] || !lost[gap.b] || touching[gap.a] > 1 || touching[gap.b] > 1) continue;
      ++touching[gap.a];
      ++touching[gap.b];
      bar(walls_.boxes[gap.a], walls_.boxes[gap.b]);
      if (!apart) tell_open(gap);
      any = true;
    }
    return any;
  }

  void bar(const cloth::Box& p, const cloth::Box& q) {
    const Stretch x = between(p.x0, p.x1, q.x0, q.x1), y = between(p.y0, p.y1, q.y0, q.y1);
    const bool beside = parted(p.x0, p.x1, q.x0, q.x1) == 0 && x.from < x.to, level = parted(p.y0, p.y1, q.y0, q.y1) == 0 && y.from < y.to;
    if (beside || level) {  // the whole gap is taken as wall
      for (int row = y.from; row < y.to; ++row) walls_.rows.push_back({row, x.from, x.to});
      for (int column = x.from; column < x.to; ++column) walls_.columns.push_back({column, y.from, y.to});
      return;
    }
    for (int row = y.from; row < y.to; ++row) walls_.rows.push_back({row, x.from, x.from});
    const int corner = (p.x0 < q.x0) == (p.y0 < q.y0) ? y.to : y.from;  // along the hole row of the block on the right
    for (int column = x.from; column < x.to; ++column) walls_.columns.push_back({column, corner, corner});
    if (x.from < x.to) barriers_[corner].emplace_back(x.from, x.to);
  }

  void tell_open(const Gap& gap) {
    problems_.push_back(
        {Trouble::ring_open, corner(gap.a), corner(gap.b), request_.blocks[gap.a].part, request_.blocks[gap.b].part, gap.size});
  }
  cloth::Hole corner(int block) const { return {walls_.boxes[block].x0, walls_.boxes[block].y0}; }

  /// Told once for each part.
  void tell_lost(const std::vector<bool>& lost) {
    std::vector<int> told;
    for (std::size_t b = 0; b < lost.size(); ++b) {
      const int part = request_.blocks[b].part;
      if (!lost[b] || std::find(told.begin(), told.end(), part) != told.end()) continue;
      told.push_back(part);
      problems_.push_back({Trouble::no_area, corner(static_cast<int>(b)), std::nullopt, part, -1, 0});
    }
  }

  const Request& request_;
  Walls walls_;
  Gaps gaps_;
  Barriers barriers_;
  std::vector<Problem>& problems_;
};

/// The area in one of whose crossings at the hole it lies, or -1.
int area_round(const Runs& runs, cloth::Hole hole) {
  for (const cloth::Hole cell : {cloth::Hole{0, 0}, {-1, 0}, {0, -1}, {-1, -1}}) {
    const cloth::Hole at = hole + cell;
    if (const Run* run = run_at(runs.rows, at.y, at.x); run && run->area >= 0) return run->area;
  }
  return -1;
}

std::vector<bool> chosen(const Request& request, const Runs& runs, std::vector<Problem>& problems) {
  std::vector<bool> areas(static_cast<std::size_t>(runs.areas), request.zones.empty());
  for (const cloth::Hole zone : request.zones) {
    const int area = area_round(runs, zone);
    if (area >= 0)
      areas[static_cast<std::size_t>(area)] = true;
    else
      problems.push_back({Trouble::zone_outside, zone, std::nullopt, -1, -1, 0});
  }
  return areas;
}

}  // namespace

Areas find_areas(const Request& request, Walls walls, std::vector<Problem>& problems) {
  Areas areas{Closer(request, std::move(walls), problems).close(), {}};
  areas.chosen = chosen(request, areas.runs, problems);
  return areas;
}

}  // namespace cutwork
