#include "guide/query.h"

#include <algorithm>

namespace guide {
namespace {

constexpr int cloth_middle_id = -1, cloth_edges_id = -2;

/// Going on along the landmark's own stitch is the easiest to see.
First first_leg(const Spot& spot) { return spot.upright ? First::down : First::across; }

Landmark of_cloth(LandmarkKind kind, cloth::Hole hole) {
  Landmark landmark;
  landmark.kind = kind;
  landmark.hole = hole;
  return landmark;
}

}  // namespace

Query::Query(const Known& known, cloth::Hole hole, When now)
    : known_(known), hole_(hole), now_(now), moment_{now, {}}, search_(known.near, known.costs, hole, now, [this](const Candidate& c) {
        return price(c);
      }) {}

const std::optional<Which>& Query::name(int feature) const {
  auto found = names_.find(feature);
  if (found == names_.end()) found = names_.emplace(feature, known_.landmarks.name(feature, moment_)).first;
  return found->second;
}

Counted Query::legs(const Candidate& candidate) const {
  return counted_legs(known_.costs, known_.hidden, candidate.hole, hole_, now_, first_leg(candidate.spot));
}

std::optional<Care> Query::price(const Candidate& candidate) const {
  const auto& which = name(candidate.feature);
  if (!which) return std::nullopt;
  return legs(candidate).care + care_of_spot(known_.costs, candidate) + Landmarks::care_of_name(known_.costs, *which);
}

std::optional<Priced> Query::next(Care enough) {
  if (searching_) {
    if (auto found = search_.next(enough)) return found;
    if (!search_.cut_short()) return std::nullopt;
    go_on_with_outermost();
  }
  if (rest_.empty() || rest_.back().care >= enough) return std::nullopt;
  const Priced found = rest_.back();
  rest_.pop_back();
  return found;
}

void Query::go_on_with_outermost() {
  searching_ = false;
  rest_ = search_.rest();
  outermost_ = known_.landmarks.outermost(known_.costs, hole_, moment_);
  for (const Candidate& candidate : outermost_)
    if (const auto care = price(candidate)) rest_.push_back({&candidate, *care});
  std::sort(rest_.begin(), rest_.end(), [](const Priced& a, const Priced& b) { return cheaper(b, a); });
}

Choice Query::stitched(const Priced& priced) const {
  const Candidate& candidate = *priced.candidate;
  Count count{known_.landmarks.landmark(candidate, *name(candidate.feature), now_), legs(candidate).legs, Costs::seconds(priced.care)};
  return {candidate.feature, priced.care, std::move(count)};
}

Choice Query::middle() const {
  Counted counted = counted_legs(known_.costs, known_.hidden, known_.middle, hole_, now_, First::down);
  const Care care = counted.care + known_.costs.plain();
  return {cloth_middle_id, care, {of_cloth(LandmarkKind::cloth_middle, known_.middle), std::move(counted.legs), Costs::seconds(care)}};
}

Choice Query::edges() const {
  const Hidden nothing;
  Counted counted = counted_legs(known_.costs, nothing, known_.corner, hole_, now_, First::across);
  return {
      cloth_edges_id, measuring, {of_cloth(LandmarkKind::cloth_edges, known_.corner), std::move(counted.legs), Costs::seconds(measuring)}};
}

std::optional<Choice> Query::at(cloth::Hole landmark) const {
  std::optional<Priced> best;
  for (const Near& layer : known_.near) {
    for (const Candidate* candidate : layer.at(landmark)) {
      if (!(candidate->since < now_)) continue;
      const auto care = price(*candidate);
      if (care && (!best || cheaper({candidate, *care}, *best))) best = Priced{candidate, *care};
    }
  }
  if (best) return stitched(*best);
  if (landmark == known_.middle) return middle();
  if (landmark == known_.corner) return edges();
  return std::nullopt;
}

}  // namespace guide
