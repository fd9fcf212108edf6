// A time zone in an iCalendar file: only the changes of clocks that the course can meet, not a century of them.
#pragma once

#include <libical/ical.h>

#include <string>

#include "base/date.h"
#include "base/result.h"

namespace publish {

/// The zone of the machine's own database (IANA, by libical), or null.
icaltimezone* find_zone(const std::string& name);

/// Its VTIMEZONE from the change of clocks before `first` to the first one a year after `last`; `name` is its TZID. Owned by the caller.
icalcomponent* zone_component(icaltimezone* zone, const std::string& name, base::Date first, base::Date last);

}  // namespace publish
