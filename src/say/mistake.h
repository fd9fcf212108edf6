// A student's mistake in words.
#pragma once

#include <string>
#include <vector>

#include "plan/mistake.h"
#include "say/say.h"

namespace say {

/// Whether it matters, where it does not fit, what of the cutting may still be done, which later starts are counted from it, how far to
/// unpick.
std::vector<std::string> mistake(const Voice& voice, const plan::Plan& plan, const plan::Mistake& mistake, const plan::TakenIn& taken);

}  // namespace say
