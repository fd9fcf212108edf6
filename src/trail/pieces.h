// What may be scattered: pieces, each with the ways it can be worked, and what a row of them costs.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <vector>

#include "trail/clear.h"
#include "trail/cost.h"
#include "trail/trail.h"

namespace trail {

/// One way of working a run: from stitch `first` of the run on, forwards or backwards through them, round its end where it is a ring.
struct Option {
  int first = 0, step = 1;
  bool reversed = false;  ///< each stitch from b to a
  cloth::Hole up, down;   ///< first up, last down
  Cost own;               ///< thread on the back within
};

class Pieces {
 public:
  /// Keeps references to both.
  Pieces(const stitch::Pass& pass, const Clear& clear);
  int size() const { return static_cast<int>(options_.size()); }
  const std::vector<Option>& options(int piece) const { return options_[static_cast<std::size_t>(piece)]; }
  Cost back(cloth::Hole from, cloth::Hole to) const;
  /// What it costs to have gone down in a hole, and the first way of the last piece that ends there. Of equal costs that with the lower way
  /// is taken, so that turned and mirrored pieces come out turned and mirrored.
  struct Reached {
    Cost cost;
    int way = 0;
    friend auto operator<=>(const Reached&, const Reached&) = default;
  };
  using Ends = std::map<cloth::Hole, Reached>;
  /// The cheapest cost of reaching each down hole, from those before; none: nothing is before.
  Ends after(const Ends& before, int piece) const;
  /// The cheapest ways of these pieces one after another, between two holes where there are such.
  struct Choice {
    Cost cost;
    std::vector<int> options;
  };
  Choice choose(std::span<const int> order, std::optional<cloth::Hole> from, std::optional<cloth::Hole> to) const;
  cloth::Hole step_back(const Ends& before, const Ends& after, int piece, cloth::Hole down, int& way) const;
  void write(int piece, const Option& option, std::vector<Worked>& into) const;

 private:
  void add_options(std::size_t run);
  void add(std::size_t run, Option option);
  void add_ring(std::size_t run);
  cloth::Stitch stitch(std::size_t run, const Option& option, int i) const;
  int place(std::size_t run, const Option& option, int i) const;
  const stitch::Pass& pass_;
  const Clear& clear_;
  std::vector<std::vector<Option>> options_;
};

}  // namespace trail
