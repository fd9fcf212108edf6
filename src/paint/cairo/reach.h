// Whether all numbers of a list can be drawn at all.
#pragma once

#include "base/result.h"
#include "list/list.h"

namespace paint {

/// A Trouble that names the first item with a number that is none, or with a place or measure beyond ten metres: cairo would draw it
/// wrongly, or for ever.
base::Result<void> check_reach(const list::List& list);

}  // namespace paint
