// One question for a count: the landmarks that stand before one moment, cheapest first for one hole.
#pragma once

#include <optional>
#include <unordered_map>
#include <vector>

#include "guide/known.h"
#include "guide/search.h"

namespace guide {

/// A count with what is needed to compare it.
struct Choice {
  int feature = -1;  ///< as numbered by Landmarks; of the cloth below 0
  Care care = 0;
  Count count;
};

class Query {
 public:
  Query(const Known& known, cloth::Hole hole, When now);
  Query(const Query&) = delete;
  Query& operator=(const Query&) = delete;

  /// The next cheapest stitched landmark hole below `enough`.
  std::optional<Priced> next(Care enough);
  /// Its other holes are not asked for any more.
  void pass_over(int feature) { told_[feature].wanted = false; }
  Choice stitched(const Priced& priced) const;
  Choice middle() const;
  /// Measured in from the upper left corner of the cloth.
  Choice edges() const;
  /// Whatever stands on exactly that hole, the cheapest of it.
  std::optional<Choice> at(cloth::Hole landmark);

  static constexpr Care any = std::int64_t{1} << 60;
  static constexpr Care measuring = 8'000'000;  ///< with a ruler from two edges: slower and less exact than a short count

 private:
  /// What is worked out about a feature, once a question.
  struct Told {
    std::optional<Which> which;
    std::vector<Candidate> holes;
    bool wanted = true;
  };
  const Told& told(int feature);
  Care beyond_legs(const Candidate& candidate, const Which& which) const;
  std::vector<Priced> offer(int feature);
  std::optional<Care> price(const Candidate& candidate) const;
  Counted legs(const Candidate& candidate) const;
  void go_on_with_outermost();

  const Known& known_;
  cloth::Hole hole_;
  When now_;
  Landmarks::Moment moment_;
  std::unordered_map<int, Told> told_;
  Search search_;
  bool searching_ = true;
  std::vector<Priced> rest_;  ///< cheapest last
};

}  // namespace guide
