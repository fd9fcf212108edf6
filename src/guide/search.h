// Landmark holes in order of what counting from them costs, cheapest first and nothing skipped: boxes are opened by the least that anything
// in them can cost, a feature is asked for its holes when its own least has come up, a hole is priced in full when its least has. Stops
// after a bounded number of features, so that a design in which hardly anything can be named does not stop the program.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "guide/care.h"
#include "guide/layers.h"
#include "guide/near.h"
#include "guide/spots.h"

namespace guide {

struct Priced {
  const Candidate* candidate = nullptr;
  Care care = 0;
};
/// Cheaper first; of equals the topmost hole, then the leftmost, then by feature and spot.
bool cheaper(const Priced& a, const Priced& b);

class Search {
 public:
  /// A feature's holes, each with the least it can cost; none if it cannot be used. They must stay where they are.
  using Offer = std::function<std::vector<Priced>(int feature)>;
  /// The whole cost of a hole; nothing if it is not wanted any more.
  using Price = std::function<std::optional<Care>(const Candidate&)>;
  Search(const Layers<Near>& near, const Costs& costs, cloth::Hole hole, When now, Offer offer, Price price);

  /// The next cheapest below `enough`; nothing at the end.
  std::optional<Priced> next(Care enough);
  /// The search ended because enough was asked, not because there is no more.
  bool cut_short() const { return asked_ >= most_asked || opened_ >= most_opened; }
  /// Those priced and not yet given, in no order; for when the search was cut short.
  std::vector<Priced> rest();

 private:
  static constexpr int most_asked = 128;    ///< features
  static constexpr int most_opened = 2000;  ///< boxes
  enum class Kind { hole, feature, box, priced };
  struct Step {
    Care bound = 0;
    Kind kind = Kind::box;
    int level = 0;
    std::size_t index = 0;  ///< of a box in its level; of a feature its number
    const Near* near = nullptr;
    const Candidate* candidate = nullptr;
  };
  static bool later(const Step& a, const Step& b);
  void push(const Step& step);
  void open(const Step& box);
  void push_box(const Near& near, int level, std::size_t index);
  void push_feature(const Near& near, std::size_t index);
  void push_holes(const Step& feature);
  void push_price(const Step& hole);

  const Costs& costs_;
  cloth::Hole hole_;
  When now_;
  Offer offer_;
  Price price_;
  std::vector<Step> heap_;
  int asked_ = 0, opened_ = 0;
};

}  // namespace guide
