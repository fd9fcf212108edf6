// What the first pass of a cable does at a corner that a later pass turns too.
#pragma once

#include <map>
#include <utility>

#include "guide/close_ups_corners.h"

namespace guide {

class FirstPass {
 public:
  FirstPass(const course::Course& course, const std::vector<PlacedTrail>& trails) : course_(course), trails_(trails) {}
  /// Of a pass after the first: is this corner not like the first pass's corner between the same legs? Not where there is none.
  bool differs(int trail, const Needle& needle, const Corner& corner);

 private:
  using Legs = std::pair<int, int>;
  int first_pass_of(const PlacedTrail& trail);
  const std::map<Legs, int>& turns_of(int trail);

  const course::Course& course_;
  const std::vector<PlacedTrail>& trails_;
  std::map<std::pair<int, int>, int> first_;  ///< part and place to the first pass's trail; read when first asked
  std::map<int, std::map<Legs, int>> turns_;  ///< of a trail, between two legs
};

}  // namespace guide
