// Seconds of care that a count asks for, by the weights of the course (course::CountCost, counting by eye). Kept in whole
// millionths of a second, so that equal counts are equal on every machine and in every order of adding up.
#pragma once

#include <cstdint>

#include "course/choices.h"

namespace guide {

using Care = std::int64_t;  ///< millionths of a second

class Costs {
 public:
  /// A weight below 0 counts as 0, one above 1000 s as 1000 s.
  explicit Costs(const course::CountCost& cost);
  /// Counting so many things by eye, one after another: threads of a leg, blocks along a ring.
  Care counted(int things) const;
  /// The least that a count so far across and so far up or down can cost: nothing lies over it.
  Care least(int across, int down) const;
  /// The least that a count can cost whose legs are so many threads together.
  Care least_together(int threads) const;
  Care under(int threads) const { return under_ * threads; }
  Care glance() const { return glance_; }
  Care plain() const { return plain_; }
  static double seconds(Care care) { return static_cast<double>(care) / 1e6; }
  /// Rounded up; what is beyond a thousand million seconds stays there.
  static Care care(double seconds);

 private:
  Care glance_, each_, second_leg_, under_, plain_;
  int glance_to_;
};

}  // namespace guide
