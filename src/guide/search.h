// Landmark holes in order of what counting from them costs, cheapest first and nothing skipped: boxes are opened by the least that any hole
// in them can cost, a hole is priced in full only when its own least has come up. Stops after a bounded number of holes, so that a design
// in which hardly anything can be named does not stop the program.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "guide/care.h"
#include "guide/layers.h"
#include "guide/near.h"

namespace guide {

struct Priced {
  const Candidate* candidate = nullptr;
  Care care = 0;
};
/// Cheaper first; of equals the topmost hole, then the leftmost, then by feature and spot.
bool cheaper(const Priced& a, const Priced& b);
/// What it costs to find which hole of the feature is meant: nothing at a block's corner.
Care care_of_spot(const Costs& costs, const Candidate& candidate);

class Search {
 public:
  /// The whole cost of a candidate; nothing if it cannot be used.
  using Price = std::function<std::optional<Care>(const Candidate&)>;
  Search(const Layers<Near>& near, const Costs& costs, cloth::Hole hole, When now, Price price);

  /// The next cheapest below `enough`; nothing at the end.
  std::optional<Priced> next(Care enough);
  /// The search ended because it had priced enough holes, not because there are no more.
  bool cut_short() const { return priced_ >= most_priced; }
  /// Those priced and not yet given, cheapest first; for when the search was cut short.
  std::vector<Priced> rest();

  static constexpr int most_priced = 400;

 private:
  struct Step {
    Care bound = 0;
    int kind = 0;  ///< 0 a node, 1 a candidate, 2 a priced one
    const Near* near = nullptr;
    int level = 0;
    std::size_t index = 0;
    const Candidate* candidate = nullptr;
  };
  static bool later(const Step& a, const Step& b);
  void push(Step step);
  void open(const Step& step);
  void push_node(const Near& near, int level, std::size_t index);
  void push_candidate(const Near& near, std::size_t index);

  const Costs& costs_;
  cloth::Hole hole_;
  When now_;
  Price price_;
  std::vector<Step> heap_;
  int priced_ = 0;
};

}  // namespace guide
