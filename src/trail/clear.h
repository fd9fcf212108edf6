// What back thread must not cross, found fast among many boxes.
#pragma once

#include <map>
#include <span>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "cloth/hole.h"

namespace trail {

/// Boxes lie in tiles about their own size, so each is in at most four, whether it is small or large.
class Clear {
 public:
  /// `open`: single holes that thread does not lie over either.
  explicit Clear(std::span<const cloth::Box> boxes, std::span<const cloth::Hole> open = {});
  bool open(cloth::Hole hole) const { return open_.contains(hole); }
  /// Does thread that runs straight between the holes pass through the inside of a box, or over an open hole between its ends?
  bool crossed(cloth::Hole from, cloth::Hole to) const;

 private:
  using Tiles = std::unordered_map<cloth::Hole, std::vector<int>>;
  bool crossed_among(const Tiles& tiles, int shift, cloth::Stitch back) const;
  bool crossed_any(cloth::Stitch back) const;

  bool over_open(cloth::Hole from, cloth::Hole to) const;

  std::unordered_set<cloth::Hole> open_;
  std::span<const cloth::Box> boxes_;
  std::map<int, Tiles> levels_;  ///< by the power of two that is a tile's side
};

}  // namespace trail
