#include "publish/time_zone.h"

#include <ctime>

namespace publish {
namespace {

constexpr int day_s = 24 * 60 * 60;

struct Offset {
  int seconds = 0;
  bool daylight = false;
};

icaltimetype moment(std::time_t seconds) { return icaltime_from_timet_with_zone(seconds, 0, icaltimezone_get_utc_timezone()); }

Offset offset_at(icaltimezone* zone, std::time_t seconds) {
  icaltimetype time = moment(seconds);
  int daylight = 0;
  const int offset = icaltimezone_get_utc_offset_of_utc_time(zone, &time, &daylight);
  return {offset, daylight != 0};
}

std::time_t seconds_of(base::Date date) { return static_cast<std::time_t>(std::chrono::sys_days(date).time_since_epoch().count()) * day_s; }

bool differ(const Offset& a, const Offset& b) { return a.seconds != b.seconds || a.daylight != b.daylight; }

/// The first second after `from` with another offset, at most a day later; there is one.
std::time_t change_after(icaltimezone* zone, std::time_t from, const Offset& before) {
  std::time_t same = from, other = from + day_s;
  while (other - same > 1) {
    const std::time_t half = same + (other - same) / 2;
    (differ(offset_at(zone, half), before) ? other : same) = half;
  }
  return other;
}

/// From that moment on the clocks show UTC and `to`; the moment is given by the clock before it.
icalcomponent* observance(std::time_t from, const Offset& before, const Offset& to) {
  icalcomponent* component = icalcomponent_new(to.daylight ? ICAL_XDAYLIGHT_COMPONENT : ICAL_XSTANDARD_COMPONENT);
  icaltimetype local = moment(from + before.seconds);
  local.zone = nullptr;
  icalcomponent_add_property(component, icalproperty_new_dtstart(local));
  icalcomponent_add_property(component, icalproperty_new_tzoffsetfrom(before.seconds));
  icalcomponent_add_property(component, icalproperty_new_tzoffsetto(to.seconds));
  return component;
}

}  // namespace

icaltimezone* find_zone(const std::string& name) { return name.empty() ? nullptr : icaltimezone_get_builtin_timezone(name.c_str()); }

icalcomponent* zone_component(icaltimezone* zone, const std::string& name, base::Date first, base::Date last) {
  icalcomponent* component = icalcomponent_new(ICAL_VTIMEZONE_COMPONENT);
  icalcomponent_add_property(component, icalproperty_new_tzid(name.c_str()));
  constexpr int year = 366 * day_s;
  const std::time_t begin = seconds_of(first) - year, end = seconds_of(last) + year;
  Offset before = offset_at(zone, begin);
  icalcomponent_add_component(component, observance(begin, before, before));
  for (std::time_t day = begin; day < end; day += day_s) {
    const Offset after = offset_at(zone, day + day_s);
    if (!differ(before, after)) continue;
    icalcomponent_add_component(component, observance(change_after(zone, day, before), before, after));
    before = after;
  }
  return component;
}

}  // namespace publish
