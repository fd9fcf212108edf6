#include "guide/close_ups_first_pass.h"

#include "guide/close_ups_alike.h"

namespace guide {

int FirstPass::first_pass_of(const PlacedTrail& trail) {
  if (first_.empty())
    for (std::size_t t = 0; t < trails_.size(); ++t)
      if (trails_[t].pass == 1) first_.try_emplace({trails_[t].part, trails_[t].place}, static_cast<int>(t));
  const auto found = first_.find({trail.part, trail.place});
  return found == first_.end() ? -1 : found->second;
}

const std::map<FirstPass::Legs, int>& FirstPass::turns_of(int trail) {
  const auto [turns, fresh] = turns_.try_emplace(trail);
  const auto& stitches = trails_[trail].trail.stitches;
  if (fresh)
    for (std::size_t k = 1; k < stitches.size(); ++k)
      if (stitches[k].leg != stitches[k - 1].leg) turns->second.try_emplace({stitches[k - 1].leg, stitches[k].leg}, static_cast<int>(k));
  return turns->second;
}

bool FirstPass::differs(int trail, const Needle& needle, const Corner& corner) {
  const PlacedTrail& placed = trails_[trail];
  const int first = placed.pass > 1 && needle.turn_about() ? first_pass_of(placed) : -1;
  if (first < 0) return false;
  const auto& turns = turns_of(first);
  const auto turn = turns.find({needle.at(corner.turn - 1).leg, needle.at(corner.turn).leg});
  if (turn == turns.end()) return false;
  const Needle other(course_, trails_[first]);
  if (!other.turn_about()) return false;
  return signature(needle, corner.around) != signature(other, row_corner(other, turn->second).around);
}

}  // namespace guide
