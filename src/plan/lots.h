// What a split parts, by number: the passes as they are listed, behind them the cuttings, then bars and fillings, the wash, the cutting out, and the
// preparing of the cloth.
#pragma once

#include <vector>

#include "plan/lay_out.h"

namespace plan {

class Lots {
 public:
  /// Of the passes and of the plan's cuttings and routes; all must outlive it, and stay as many.
  Lots(const course::Course& course, const std::vector<PassOf>& passes, const Plan& plan) : course_(course), passes_(passes), plan_(plan) {}

  std::size_t first_route() const { return passes_.size() + plan_.cuttings.size(); }
  /// Passes, cuttings and routes in the order in which they are worked.
  std::vector<std::size_t> in_craft_order() const;
  /// Where the teacher's lessons, locked or not, have each stitch, each cutting and each step now.
  void remember(LayOut& lay_out) const;
  /// The minutes that the first lesson has less, unless it is locked; before all else.
  void add_preparing(LayOut& lay_out) const;
  /// Behind all work, that of locked lessons too.
  void add_finishing(LayOut& lay_out) const;
  /// Once it is split: what the locked lessons have of the steps, and where the others came to lie.
  std::vector<Finishing> finishing(const LayOut& lay_out) const;

 private:
  int lot_of(Finish finish) const { return static_cast<int>(first_route() + plan_.routes.size()) + (finish == Finish::wash ? 0 : 1); }
  int lot_of_preparing() const { return static_cast<int>(first_route() + plan_.routes.size()) + 2; }
  std::vector<Finish> free_finishing() const;
  int last_locked_work() const;

  const course::Course& course_;
  const std::vector<PassOf>& passes_;
  const Plan& plan_;
};

}  // namespace plan
