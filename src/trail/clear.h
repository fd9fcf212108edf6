// What back thread must not cross, found quickly among many boxes.
#pragma once

#include <unordered_map>
#include <vector>

#include "cloth/hole.h"

namespace trail {

class Clear {
 public:
  explicit Clear(const std::vector<cloth::Box>& boxes);
  /// Does the straight thread from a to b pass through the inside of a box?
  bool crossed(cloth::Hole a, cloth::Hole b) const;

 private:
  const std::vector<cloth::Box>& boxes_;
  std::unordered_map<cloth::Hole, std::vector<int>> tiles_;  // tile coordinates to boxes
};

}  // namespace trail
