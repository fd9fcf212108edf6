// A flood over runs instead of single crossings: the time goes with the walls, however wide the cloth is.
#include "cutwork/runs.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace cutwork {
namespace {

std::vector<Run> between(std::vector<Wall>& walls) {
  std::sort(walls.begin(), walls.end(), [](const Wall& a, const Wall& b) {
    return std::make_tuple(a.line, a.from, !a.holds_from, a.block < 0, a.block, a.to) <
           std::make_tuple(b.line, b.from, !b.holds_from, b.block < 0, b.block, b.to);
  });
  std::vector<Run> runs;
  const Wall* last = nullptr;
  for (const Wall& wall : walls) {
    if (last && last->line == wall.line && wall.from > last->to)
      runs.push_back({wall.line, last->to, wall.from, {last->block, last->holds_to}, {wall.block, wall.holds_from}});
    const bool further = !last || last->line != wall.line || wall.to > last->to;
    if (further || (wall.to == last->to && (wall.holds_to || last->block < 0))) last = &wall;
  }
  return runs;
}

class Groups {
 public:
  explicit Groups(std::size_t n) : parent_(n) { std::iota(parent_.begin(), parent_.end(), 0); }
  int root(int i) {
    while (parent_[i] != i) i = parent_[i] = parent_[parent_[i]];
    return i;
  }
  void join(int a, int b) { parent_[std::max(root(a), root(b))] = std::min(root(a), root(b)); }

 private:
  std::vector<int> parent_;
};

/// Where one can go from row `line` - 1 to row `line` within from..to.
class Passage {
 public:
  Passage(const Barriers& barriers, int line) {
    if (const auto found = barriers.find(line); found != barriers.end()) closed_ = &found->second;
  }
  bool open(int from, int to) const {
    if (!closed_) return from < to;
    for (int at = from; at < to; ++at)
      if (std::none_of(closed_->begin(), closed_->end(), [&](const auto& c) { return c.first <= at && at < c.second; })) return true;
    return false;
  }

 private:
  const std::vector<std::pair<int, int>>* closed_ = nullptr;
};

struct Line {
  int first_run = 0, last_run = 0;  // runs of the row, last excluded
  int from = 0, to = 0;             // from the first wall to the last
};

class Flood {
 public:
  Flood(std::vector<Run>& rows, const std::vector<Wall>& walls, const Barriers& barriers)
      : rows_(rows), barriers_(barriers), groups_(rows.size() + 1), outside_(static_cast<int>(rows.size())) {
    for (const Wall& wall : walls) {
      auto [line, fresh] = lines_.try_emplace(wall.line, Line{0, 0, wall.from, wall.to});
      if (!fresh) line->second.to = std::max(line->second.to, wall.to);
    }
    for (int i = 0; i < outside_; ++i) {
      Line& line = lines_.at(rows_[i].line);
      if (line.last_run == 0) line.first_run = i;
      line.last_run = i + 1;
    }
  }

  int areas() {
    for (const auto& [number, line] : lines_) {
      meet(line, number - 1, Passage(barriers_, number));
      meet(line, number + 1, Passage(barriers_, number + 1));
    }
    std::map<int, int> numbers;
    for (int i = 0; i < outside_; ++i)
      if (groups_.root(i) != groups_.root(outside_))
        rows_[i].area = numbers.try_emplace(groups_.root(i), static_cast<int>(numbers.size())).first->second;
    return static_cast<int>(numbers.size());
  }

 private:
  void meet(const Line& line, int neighbour, const Passage& passage) {
    const auto found = lines_.find(neighbour);
    int other = found == lines_.end() ? 0 : found->second.first_run;
    for (int i = line.first_run; i < line.last_run; ++i) {
      const Run& run = rows_[i];
      if (found == lines_.end()) {
        if (passage.open(run.from, run.to)) groups_.join(i, outside_);
        continue;
      }
      const Line& next = found->second;
      if (passage.open(run.from, std::min(run.to, next.from)) || passage.open(std::max(run.from, next.to), run.to))
        groups_.join(i, outside_);
      while (other < next.last_run && rows_[other].to <= run.from) ++other;
      for (int o = other; o < next.last_run && rows_[o].from < run.to; ++o)
        if (passage.open(std::max(run.from, rows_[o].from), std::min(run.to, rows_[o].to))) groups_.join(i, o);
    }
  }

  std::vector<Run>& rows_;
  const Barriers& barriers_;
  Groups groups_;
  int outside_;
  std::map<int, Line> lines_;
};

}  // namespace

const Run* run_at(const std::vector<Run>& runs, int line, int place) {
  const auto after = std::upper_bound(runs.begin(), runs.end(), std::pair(line, place),
                                      [](const auto& at, const Run& run) { return at < std::pair(run.line, run.from); });
  if (after == runs.begin()) return nullptr;
  const Run& run = *(after - 1);
  return run.line == line && run.from <= place && place < run.to ? &run : nullptr;
}

Runs find_runs(Walls walls, const Barriers& barriers) {
  Runs runs;
  runs.rows = between(walls.rows);
  runs.columns = between(walls.columns);
  runs.areas = Flood(runs.rows, walls.rows, barriers).areas();
  for (Run& column : runs.columns)
    if (const Run* row = run_at(runs.rows, column.from, column.line)) column.area = row->area;
  return runs;
}

}  // namespace cutwork
