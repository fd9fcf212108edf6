#include "guide/query.h"

#include <algorithm>
#include <cstdlib>

namespace guide {
namespace {

constexpr int cloth_middle_id = -1, cloth_edges_id = -2;
constexpr int counted_off = 20;  // stitches of a bundle; nobody looks for one further in, unless the teacher names it

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
    : known_(known),
      hole_(hole),
      now_(now),
      moment_{now, {}},
      search_(
          known.near, known.costs, hole, now, [this](int feature) { return offer(feature); },
          [this](const Candidate& c) { return price(c); }) {}

const Query::Told& Query::told(int feature) {
  const auto [found, first] = told_.try_emplace(feature);
  if (first) {
    found->second.which = known_.landmarks.name(feature, moment_);
    if (found->second.which) found->second.holes = known_.landmarks.holes(feature);
  }
  return found->second;
}

/// To follow the name, and to count off a stitch that does not stand out.
Care Query::beyond_legs(const Candidate& candidate, const Which& which) const {
  const Care of_spot = candidate.plain ? known_.costs.plain() + known_.costs.counted(candidate.spot.stitch + 1) : 0;
  return Landmarks::care_of_name(known_.costs, which) + of_spot;
}

std::vector<Priced> Query::offer(int feature) {
  const Told& about = told(feature);
  std::vector<Priced> offered;
  if (!about.wanted) return offered;
  for (const Candidate& c : about.holes) {
    if (c.plain && c.spot.stitch >= counted_off && c.spot.stitch < c.spot.of - 1) continue;
    const Care least = known_.costs.least(std::abs(c.hole.x - hole_.x), std::abs(c.hole.y - hole_.y));
    offered.push_back({&c, least + beyond_legs(c, *about.which)});
  }
  return offered;
}

Counted Query::legs(const Candidate& candidate) const {
  return counted_legs(known_.costs, known_.hidden, candidate.hole, hole_, now_, first_leg(candidate.spot));
}

std::optional<Care> Query::price(const Candidate& candidate) const {
  const Told& about = told_.at(candidate.feature);
  if (!about.wanted) return std::nullopt;
  return legs(candidate).care + beyond_legs(candidate, *about.which);
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
  for (const int feature : known_.landmarks.outermost(known_.costs, hole_, moment_))
    for (const Candidate& candidate : told(feature).holes)
      if (const auto care = candidate.plain ? std::nullopt : price(candidate)) rest_.push_back({&candidate, *care});
  std::sort(rest_.begin(), rest_.end(), [](const Priced& a, const Priced& b) { return cheaper(b, a); });
}

Choice Query::stitched(const Priced& priced) const {
  const Candidate& candidate = *priced.candidate;
  const Which& which = *told_.at(candidate.feature).which;
  Count count{known_.landmarks.landmark(candidate, which, now_), legs(candidate).legs, Costs::seconds(priced.care)};
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

std::optional<Choice> Query::at(cloth::Hole landmark) {
  std::vector<int> features;
  for (const Near& layer : known_.near) layer.collect(landmark, features);
  std::optional<Priced> best;
  for (const int feature : features)
    for (const Candidate& candidate : told(feature).holes) {
      if (candidate.hole != landmark) continue;
      const Priced priced{&candidate, *price(candidate)};
      if (!best || cheaper(priced, *best)) best = priced;
    }
  if (best) return stitched(*best);
  if (landmark == known_.middle) return middle();
  if (landmark == known_.corner) return edges();
  return std::nullopt;
}

}  // namespace guide
