// A mend for a snag, where there is one that the teacher can be offered: an edit like any other, to be undone by name.
#pragma once

#include <optional>

#include "check/check.h"
#include "session/edits.h"

namespace session {

std::optional<Edit> mend(const course::Course& course, const check::Snag& snag);

}  // namespace session
