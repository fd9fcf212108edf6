// What must be bought: thread from the trails' own lengths, needles, and what each costs.
#pragma once

#include <map>
#include <string>

#include "base/exact.h"
#include "plan/plan.h"

namespace plan {

/// Fills plan.supplies; the trails and their anchors must be there.
void supplies_of(const course::Course& course, Plan& plan);

/// Whole balls or skeins for so many students that share them; nothing where a ball's metres are not known.
std::optional<int> balls(const course::Course& course, const Supplies::Thread& thread, int sets);

/// Price times number, with the price's own digits; nothing without a price.
std::optional<base::Exact> cost(const std::string& price, int number);

/// All that has a price, for so many students, added up by currency. Threads of which it is not known how many are needed are left out.
std::map<std::string, base::Exact> costs(const course::Course& course, const Plan& plan, int sets);

}  // namespace plan
