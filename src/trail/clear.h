// What back thread must not cross, found fast among many boxes.
#pragma once

#include <map>
#include <span>
#include <unordered_map>
#include <vector>

#include "cloth/hole.h"

namespace trail {

/// Boxes lie in tiles about their own size, so each is in at most four, whether it is small or large.
class Clear {
 public:
  explicit Clear(std::span<const cloth::Box> boxes);
  /// Does thread that runs straight between the holes pass through the inside of a box?
  bool crossed(cloth::Hole from, cloth::Hole to) const;

 private:
  using Tiles = std::unordered_map<cloth::Hole, std::vector<int>>;
  bool crossed_among(const Tiles& tiles, int shift, cloth::Stitch back) const;
  bool crossed_any(cloth::Stitch back) const;

  std::span<const cloth::Box> boxes_;
  std::map<int, Tiles> levels_;  ///< by the power of two that is a tile's side
};

}  // namespace trail
