// What lies where: stitches found by hole, by crossing segment and by box, in time near to what is found.
#pragma once

#include <span>
#include <unordered_map>
#include <vector>

#include "cloth/hole.h"

namespace cloth {

/// Keeps numbered stitches in tiles of 16 x 16 threads. Add, then ask; results are in order of number, each once. Time and memory
/// go with the tiles that a stitch or segment passes through, so a long one costs no more than many short ones.
class Index {
 public:
  /// The number must be new.
  void add(Stitch stitch, int number);
  /// Numbers of stitches that end in the hole.
  std::vector<int> at(Hole hole) const;
  /// Numbers of stitches that meet the segment inside (see meet_inside).
  std::vector<int> meeting(Stitch segment) const;
  /// Numbers of stitches that touch the box (see touches).
  std::vector<int> in(Box box) const;
  Stitch stitch(int number) const;
  std::size_t size() const { return stitches_.size(); }

 private:
  std::unordered_map<Hole, std::vector<int>> tiles_;  // tile coordinates to numbers
  std::unordered_map<int, Stitch> stitches_;
};

}  // namespace cloth
