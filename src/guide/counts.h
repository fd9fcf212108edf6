// One count: from a landmark's hole along a row and a column of holes, the easier of the two ways round.
#pragma once

#include <vector>

#include "guide/care.h"
#include "guide/hidden.h"

namespace guide {

enum class First { down, across };

struct Counted {
  std::vector<Leg> legs;
  Care care = 0;  ///< of the legs alone
};

/// The easier order of the legs before `now`; where both are as easy, `first` goes first.
Counted counted_legs(const Costs& costs, const Hidden& hidden, cloth::Hole from, cloth::Hole to, When now, First first);

}  // namespace guide
