#include "picture/labels.h"

#include <algorithm>

#include "picture/label_places.h"

namespace picture {
namespace {

constexpr PlaceSearch searches[] = {{16, 40}, {90, 150}};

/// Chooses one candidate for each label: begins with the cheapest and moves the label in conflict that can be helped best, until none is
/// left.
class Chooser {
 public:
  explicit Chooser(std::vector<std::vector<LabelPlace>> all) : all_(std::move(all)), chosen_(all_.size(), 0), moved_(all_.size(), 0) {}

  bool choose() {
    if (!settle()) return false;
    for (int round = 0; round < 3 && improve(); ++round) {
    }
    return std::none_of(all_.begin(), all_.end(), [](const auto& c) { return c.empty(); });
  }
  const LabelPlace* of(std::size_t label) const { return all_[label].empty() ? nullptr : &all_[label][chosen_[label]]; }

 private:
  static constexpr std::size_t none = static_cast<std::size_t>(-1);

  bool settle() {
    const int most = 60 + 8 * static_cast<int>(all_.size());
    for (int round = 0; round < most; ++round) {
      const int worst = in_conflict();
      if (worst < 0) return true;
      move(static_cast<std::size_t>(worst));
    }
    return false;
  }

  const LabelPlace& now(std::size_t label) const { return all_[label][chosen_[label]]; }

  int conflicts(std::size_t label, const LabelPlace& candidate, std::size_t apart_from = none) const {
    int count = 0;
    for (std::size_t other = 0; other < all_.size(); ++other)
      if (other != label && other != apart_from && !all_[other].empty() && clash(candidate, now(other))) ++count;
    return count;
  }

  /// Once nothing meets: each label to a cheaper place that is free, or that one other can make free for less than it gains. Whether any
  /// moved.
  bool improve() {
    bool moved = false;
    for (std::size_t label = 0; label < all_.size(); ++label)
      for (std::size_t c = 0; c < chosen_[label] && !all_[label].empty(); ++c) {  // candidates stand in order of cost
        if (!gives_way(label, all_[label][c], now(label).cost - all_[label][c].cost)) continue;
        chosen_[label] = c;
        moved = true;
        break;
      }
    return moved;
  }

  /// Is the place free, or does the one label in its way have another for less than `gain`? Then that one is moved.
  bool gives_way(std::size_t label, const LabelPlace& place, double gain) {
    std::size_t in_way = none;
    for (std::size_t other = 0; other < all_.size(); ++other) {
      if (other == label || all_[other].empty() || !clash(place, now(other))) continue;
      if (in_way != none) return false;
      in_way = other;
    }
    if (in_way == none) return true;
    for (std::size_t c = 0; c < all_[in_way].size(); ++c) {
      const LabelPlace& there = all_[in_way][c];
      if (there.cost - now(in_way).cost >= gain - 1e-9) return false;
      if (clash(place, there) || conflicts(in_way, there, label) > 0) continue;
      chosen_[in_way] = c;
      return true;
    }
    return false;
  }

  /// The label in conflict that was moved least often, or -1.
  int in_conflict() const {
    int found = -1;
    for (std::size_t i = 0; i < all_.size(); ++i) {
      if (all_[i].empty() || conflicts(i, now(i)) == 0) continue;
      if (found < 0 || moved_[i] < moved_[static_cast<std::size_t>(found)]) found = static_cast<int>(i);
    }
    return found;
  }

  /// To the candidate with fewest conflicts, the cheapest of equals, never the one it is at.
  void move(std::size_t label) {
    double best = 1e9;
    std::size_t to = chosen_[label];
    for (std::size_t c = 0; c < all_[label].size(); ++c) {
      if (c == chosen_[label]) continue;
      const double cost = conflicts(label, all_[label][c]) * (8.0 + moved_[label]) + all_[label][c].cost;
      if (cost < best) best = cost, to = c;
    }
    chosen_[label] = to;
    ++moved_[label];
  }

  std::vector<std::vector<LabelPlace>> all_;
  std::vector<std::size_t> chosen_;
  std::vector<int> moved_;
};

Placement placed(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure,
                 const PlaceSearch& search) {
  std::vector<std::vector<LabelPlace>> all;
  for (std::size_t i = 0; i < labels.size(); ++i) all.push_back(places_for(labels[i], around, style, measure, search));
  Chooser chooser(std::move(all));
  Placement placement;
  placement.clean = chooser.choose();
  for (std::size_t i = 0; i < labels.size(); ++i) {
    PlacedLabel fallback;
    fallback.box = number_room(labels[i].text, style, measure, labels[i].hole);
    fallback.base = labels[i].hole;
    placement.labels.push_back(chooser.of(i) ? chooser.of(i)->placed : fallback);
    placement.strain = std::max(placement.strain, chooser.of(i) ? chooser.of(i)->cost : 1000.0);
  }
  return placement;
}

}  // namespace

Placement place_labels(const std::vector<Label>& labels, const Surroundings& around, list::TypeStyle style, const list::Measure& measure) {
  Placement placement;
  for (const PlaceSearch& search : searches) {
    placement = placed(labels, around, style, measure, search);
    if (placement.clean) break;
  }
  return placement;
}

}  // namespace picture
