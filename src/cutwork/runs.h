// The free stretches between walls, and the areas they make up: what no way leads out of.
#pragma once

#include <map>
#include <utility>
#include <vector>

#include "cutwork/walls.h"

namespace cutwork {

struct Side {
  int block = -1;      ///< -1: no block, a gap that was closed
  bool holds = false;  ///< a thread cut there stays held
};

/// A free stretch of a line between two walls.
struct Run {
  int line = 0, from = 0, to = 0;
  Side low, high;
  int area = -1;  ///< -1: outside
};

/// Stretches that stop the way from one row to the next, by the hole row between them.
using Barriers = std::map<int, std::vector<std::pair<int, int>>>;

struct Runs {
  std::vector<Run> rows, columns;  ///< by line and place; `area` filled in
  int areas = 0;
};

/// The areas are numbered from the topmost, then leftmost.
Runs find_runs(Walls walls, const Barriers& barriers);

/// The run of a line that holds the place, or none.
const Run* run_at(const std::vector<Run>& runs, int line, int place);

}  // namespace cutwork
