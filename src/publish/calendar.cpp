// The lessons as iCalendar. The library folds and escapes; what stands here is which properties an event has.
#include <fmt/format.h>
#include <libical/ical.h>

#include <algorithm>
#include <memory>

#include "paint/cairo/paint.h"
#include "picture/tell.h"
#include "publish/publish.h"
#include "publish/time_zone.h"

namespace publish {
namespace {

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;

/// The same title gives the same number on every machine (FNV-1a, 64 bits).
std::uint64_t number_of(std::string_view text) {
  std::uint64_t hash = 14695981039346656037U;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
  return hash;
}

icaltimetype day_of(base::Date date) {
  icaltimetype time = icaltime_null_date();
  time.year = static_cast<int>(date.year());
  time.month = static_cast<int>(static_cast<unsigned>(date.month()));
  time.day = static_cast<int>(static_cast<unsigned>(date.day()));
  return time;
}

icaltimetype start_of(base::Date date, const std::string& start) {
  icaltimetype time = day_of(date);
  time.is_date = 0;
  time.hour = std::stoi(start.substr(0, 2));
  time.minute = std::stoi(start.substr(3, 2));
  time.second = 0;
  return time;
}

/// What to bring, what is worked, the teacher's notes.
std::string description(const picture::Sheet& sheet) {
  std::string text = sheet.say("calendar.bring");
  for (const std::string& item : picture::ready_items(sheet)) text += '\n' + sheet.say("calendar.item", {{"item", item}});
  if (const std::string first = picture::prepare_first(sheet); !first.empty()) text += "\n\n" + first;
  if (const auto work = say::lesson_work(sheet.voice, sheet.plan, sheet.lesson.number); !work.empty())
    text += "\n\n" + sheet.say("calendar.work", {{"work", fmt::format("{}", fmt::join(work, "; "))}});
  if (!sheet.lesson.notes.empty()) text += "\n\n" + sheet.lesson.notes;
  return text;
}

class Calendar {
 public:
  Calendar(const say::Voice& voice, const plan::Plan& plan, const list::Measure& measure, std::string_view stamp)
      : voice_(voice),
        plan_(plan),
        measure_(measure),
        stamp_(stamp),
        all_(icalcomponent_new(ICAL_VCALENDAR_COMPONENT), icalcomponent_free) {
    const std::string id = fmt::format("-//Tellekant//Tellekant//{}", voice.phrases.language());
    add(all_.get(), icalproperty_new_version("2.0"));
    add(all_.get(), icalproperty_new_prodid(id.c_str()));
    add(all_.get(), icalproperty_new_name(voice.course.title.c_str()));
  }

  void add_zone(icaltimezone* zone, base::Date first, base::Date last) {
    icalcomponent_add_component(all_.get(), zone_component(zone, voice_.course.time_zone, first, last));
  }

  void add_event(const plan::LessonPlan& lesson) {
    const picture::Sheet sheet{voice_.course, plan_, lesson, voice_, measure_, picture::styles_for(picture::Print::normal), {}};
    icalcomponent* event = icalcomponent_new(ICAL_VEVENT_COMPONENT);
    const std::string uid = fmt::format("{:016x}-lesson-{}@tellekant", number_of(voice_.course.title), lesson.number);
    add(event, icalproperty_new_uid(uid.c_str()));
    add(event, icalproperty_new_dtstamp(icaltime_from_string(stamp_.c_str())));
    add_time(event, lesson);
    const std::string summary = voice_.phrases.say("calendar.summary", {{"course", voice_.course.title},
                                                                        {"title", say::lesson_title(voice_, plan_, lesson.number)},
                                                                        {"lesson", std::int64_t{lesson.number}},
                                                                        {"lessons", static_cast<std::int64_t>(plan_.lessons.size())}});
    add(event, icalproperty_new_summary(summary.c_str()));
    add(event, icalproperty_new_description(description(sheet).c_str()));
    icalcomponent_add_component(all_.get(), event);
  }

  std::string text() const {
    char* written = icalcomponent_as_ical_string_r(all_.get());
    std::string copy(written);
    icalmemory_free_buffer(written);
    return copy;
  }

 private:
  static void add(icalcomponent* to, icalproperty* property) { icalcomponent_add_property(to, property); }

  void add_time(icalcomponent* event, const plan::LessonPlan& lesson) const {
    if (lesson.start.empty()) return add(event, icalproperty_new_dtstart(day_of(*lesson.date)));
    icalproperty* start = icalproperty_new_dtstart(start_of(*lesson.date, lesson.start));
    if (!voice_.course.time_zone.empty()) icalproperty_add_parameter(start, icalparameter_new_tzid(voice_.course.time_zone.c_str()));
    add(event, start);
    add(event, icalproperty_new_duration(icaldurationtype_from_int(lesson.minutes_given * 60)));
  }

  const say::Voice& voice_;
  const plan::Plan& plan_;
  const list::Measure& measure_;
  std::string stamp_;
  Component all_;
};

std::vector<const plan::LessonPlan*> dated(const plan::Plan& plan) {
  std::vector<const plan::LessonPlan*> lessons;
  for (const plan::LessonPlan& lesson : plan.lessons)
    if (lesson.date) lessons.push_back(&lesson);
  return lessons;
}

bool by_day(const plan::LessonPlan* a, const plan::LessonPlan* b) { return *a->date < *b->date; }

}  // namespace

std::string stamp_of(std::chrono::sys_seconds time) {
  const auto day = std::chrono::floor<std::chrono::days>(time);
  const std::chrono::year_month_day date(day);
  const std::chrono::hh_mm_ss clock(time - day);
  return fmt::format("{:04}{:02}{:02}T{:02}{:02}{:02}Z", int{date.year()}, unsigned{date.month()}, unsigned{date.day()}, clock.hours().count(),
                     clock.minutes().count(), clock.seconds().count());
}

base::Result<std::string> calendar(const say::Voice& voice, const plan::Plan& plan, std::string_view stamp) {
  const auto lessons = dated(plan);
  if (lessons.empty()) return base::trouble(base::TroubleKind::input, "no lesson has a day: write first_day or days into [course]");
  const std::string& name = voice.course.time_zone;
  icaltimezone* zone = find_zone(name);
  if (!name.empty() && !zone) return base::trouble(base::TroubleKind::input, fmt::format("the time zone \"{}\" is not known", name));
  const auto type = paint::Type::open();
  if (!type) return tl::make_unexpected(type.error());
  Calendar calendar(voice, plan, **type, stamp);
  const auto [first, last] = std::minmax_element(lessons.begin(), lessons.end(), by_day);
  if (zone && !voice.course.start_time.empty()) calendar.add_zone(zone, *(*first)->date, *(*last)->date);
  for (const plan::LessonPlan* lesson : lessons) calendar.add_event(*lesson);
  return calendar.text();
}

std::vector<check::Snag> zone_unknown(const course::Course& course) {
  if (course.time_zone.empty() || find_zone(course.time_zone)) return {};
  return {{.rule = "time-zone-unknown",
           .severity = check::Severity::ask,
           .place = {},
           .lesson = 0,
           .part = -1,
           .at = {},
           .also_at = {},
           .words = {{"zone", course.time_zone}},
           .numbers = {}}};
}

}  // namespace publish
