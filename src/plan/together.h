// Several parts that cut: each is proven by itself; here they are held against one another.
#pragma once

#include "plan/plan.h"

namespace plan {

/// `requests` go with `cuttings`. Two that take out the same thread are told at the later one. Then the cloth is simulated once more with
/// all that is still planned: what is held under each cutting alone must be held under all of them.
void hold_together(const std::vector<cutwork::Request>& requests, std::vector<PartCutting>& cuttings);

}  // namespace plan
