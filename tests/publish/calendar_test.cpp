// Calendars, read back by libical: the instants of RFC 5545's weekly example (3.8.5.3), changes of clocks, folding and escaping
// (3.1, 3.3.11).
#include <doctest/doctest.h>
#include <libical/ical.h>

#include <algorithm>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "assets/assets.h"
#include "course_text.h"
#include "publish/publish.h"

namespace {

const words::Phrases& english() {
  static const auto table = words::Phrases::read(assets::table("phrases/en.toml"), "en.toml");
  REQUIRE(table);
  return *table;
}

std::string course_text_with(const std::string& course_keys, int lessons) {
  std::string text = "format = 1\n[course]\ntitle = \"Test\"\n" + course_keys + "\n[cloth]\ncount = 22\n[thread.heavy]\npearl = 5\n" +
                     part_text("ring", "blocks", "[0, 0]", "first = \"across\"\npath = \"NE 8, SE 7, SW 7, NW 6\"");
  const int each = 140 / lessons;
  for (int i = 0; i < lessons; ++i)
    text += "[[lesson]]\nwork = [\"ring / " + std::to_string(i * each + 1) + ".." +
            std::to_string(i + 1 == lessons ? 140 : (i + 1) * each) + "\"]\n";
  return text;
}

base::Result<std::string> calendar_of(const course::Course& course) {
  const auto plan = plan::make_plan(course);
  REQUIRE(plan);
  const say::Voice voice{english(), say::Hand::right, course};
  return publish::calendar(voice, *plan, "20260101T000000Z");
}

std::string calendar_with(const std::string& keys, int lessons) {
  const auto text = calendar_of(course_from(course_text_with(keys, lessons)));
  REQUIRE(text);
  return *text;
}

using Component = std::unique_ptr<icalcomponent, decltype(&icalcomponent_free)>;
Component parsed(const std::string& text) {
  Component all(icalparser_parse_string(text.c_str()), icalcomponent_free);
  REQUIRE(all);
  CHECK(icalrestriction_check(all.get()) == 1);
  CHECK(icalcomponent_count_errors(all.get()) == 0);
  return all;
}

/// Of every event: the instant in UTC, by the file's own VTIMEZONE.
std::vector<std::string> instants(const std::string& text) {
  const Component all = parsed(text);
  std::vector<std::string> found;
  for (icalcomponent* event = icalcomponent_get_first_component(all.get(), ICAL_VEVENT_COMPONENT); event;
       event = icalcomponent_get_next_component(all.get(), ICAL_VEVENT_COMPONENT)) {
    const icaltimetype start = icalcomponent_get_dtstart(event);
    const icaltimetype utc = icaltime_convert_to_zone(start, icaltimezone_get_utc_timezone());
    char* written = icaltime_as_ical_string_r(utc);
    found.emplace_back(written);
    icalmemory_free_buffer(written);
  }
  return found;
}

/// What the zone's own data say of that local time, not asking the file.
std::string in_utc(const char* local, const char* zone) {
  const icaltimetype utc = icaltime_convert_to_zone(icaltime_set_timezone(
                                                        [&] {
                                                          static icaltimetype t;
                                                          t = icaltime_from_string(local);
                                                          return &t;
                                                        }(),
                                                        icaltimezone_get_builtin_timezone(zone)),
                                                    icaltimezone_get_utc_timezone());
  return icaltime_as_ical_string(utc);
}

std::vector<std::string> values(const std::string& text, icalproperty_kind kind) {
  const Component all = parsed(text);
  std::vector<std::string> found;
  for (icalcomponent* event = icalcomponent_get_first_component(all.get(), ICAL_VEVENT_COMPONENT); event;
       event = icalcomponent_get_next_component(all.get(), ICAL_VEVENT_COMPONENT))
    found.emplace_back(icalproperty_get_value_as_string(icalcomponent_get_first_property(event, kind)));
  return found;
}

const char* const new_york = "first_day = 1997-09-02\nstart_time = \"09:00\"\ntime_zone = \"America/New_York\"";

}  // namespace

TEST_CASE("RFC 5545, 3.8.5.3: weekly for ten, 09:00 in New York, is 13:00 UTC to Oct 21 and 14:00 UTC from Oct 28") {
  const std::vector<std::string> wanted{"19970902T130000Z", "19970909T130000Z", "19970916T130000Z", "19970923T130000Z", "19970930T130000Z",
                                        "19971007T130000Z", "19971014T130000Z", "19971021T130000Z", "19971028T140000Z", "19971104T140000Z"};
  CHECK(instants(calendar_with(new_york, 10)) == wanted);
  // the same by libical's own expansion of the rule
  icalrecurrencetype rule = icalrecurrencetype_from_string("FREQ=WEEKLY;COUNT=10");
  std::unique_ptr<icalrecur_iterator, decltype(&icalrecur_iterator_free)> days(
      icalrecur_iterator_new(rule, icaltime_from_string("19970902T090000")), icalrecur_iterator_free);
  for (const std::string& instant : wanted) {
    const icaltimetype day = icalrecur_iterator_next(days.get());
    CHECK(in_utc(icaltime_as_ical_string(day), "America/New_York") == instant);
  }
}

TEST_CASE("London, 18:30 across the end of summer time: 17:30Z on 21 October 2026, 18:30Z on the 28th") {
  const std::string text = calendar_with("first_day = 2026-10-21\nstart_time = \"18:30\"\ntime_zone = \"Europe/London\"", 2);
  CHECK(instants(text) == std::vector<std::string>{"20261021T173000Z", "20261028T183000Z"});
  CHECK(text.find("DTSTART;TZID=Europe/London:20261021T183000") != std::string::npos);
  CHECK(text.find("DURATION:PT1H30M") != std::string::npos);
}

TEST_CASE("every fortnight for a year and more, in zones of both halves of the earth: the file's zone and libical's agree") {
  for (const char* zone : {"Europe/Oslo", "America/New_York", "Australia/Sydney", "Asia/Kolkata"}) {
    CAPTURE(zone);
    const std::string text = calendar_with(
        "first_day = 2027-01-12\nevery = \"two weeks\"\nstart_time = \"18:30\"\ntime_zone = \"" + std::string(zone) + "\"", 35);
    const auto found = instants(text);
    REQUIRE(found.size() == 35);
    base::Date day{std::chrono::year{2027}, std::chrono::January, std::chrono::day{12}};
    for (const std::string& instant : found) {
      std::string local = base::iso(day);
      local.erase(std::remove(local.begin(), local.end(), '-'), local.end());
      CHECK(instant == in_utc((local + "T183000").c_str(), zone));
      day = base::add_days(day, 14);
    }
  }
}

TEST_CASE("given days and holidays; without an hour whole days, without a zone floating time") {
  const auto days = values(calendar_with("days = [2027-01-12, 2027-01-20, 2027-02-03]", 3), ICAL_DTSTART_PROPERTY);
  CHECK(days == std::vector<std::string>{"20270112", "20270120", "20270203"});
  const auto floating =
      values(calendar_with("first_day = 2027-01-12\nstart_time = \"08:05\"\nholidays = [2027-01-19]", 2), ICAL_DTSTART_PROPERTY);
  CHECK(floating == std::vector<std::string>{"20270112T080500", "20270126T080500"});
}

TEST_CASE("UIDs differ within a course and stay when a date, an hour or a lesson's work changes; another course has others") {
  const auto uids = [](const std::string& keys, int lessons) { return values(calendar_with(keys, lessons), ICAL_UID_PROPERTY); };
  const auto first = uids(new_york, 5), moved = uids("first_day = 2028-03-01\nevery = \"day\"", 5);
  CHECK(first == moved);
  CHECK(std::set<std::string>(first.begin(), first.end()).size() == 5);
  std::string other = course_text_with(new_york, 5);
  other.replace(other.find("\"Test\""), 6, "\"Rest\"");
  CHECK(values(*calendar_of(course_from(other)), ICAL_UID_PROPERTY) != first);
}

TEST_CASE("lines fold at 75 octets, never inside a letter; commas, semicolons, backslashes and line breaks come back") {
  std::string text = course_text_with(new_york, 1);
  std::string title;
  for (int i = 0; i < 60; ++i) title += "\xC3\xA6\xE2\x82\xAC";  // two and three octets
  const std::string notes = "a, b; c\\d\n\xC3\xB8 " + title;
  text += "title = \"" + title + "; , \"\nnotes = '''\n" + notes + "'''\n";
  const std::string calendar = *calendar_of(course_from(text));
  std::size_t begin = 0;
  for (std::size_t end = calendar.find("\r\n"); end != std::string::npos; begin = end + 2, end = calendar.find("\r\n", begin)) {
    CHECK(end - begin <= 75);
    const auto first = static_cast<unsigned char>(calendar[calendar[begin] == ' ' ? begin + 1 : begin]);
    CHECK((first & 0xC0) != 0x80);
  }
  CHECK(begin == calendar.size());
  std::string unfolded = calendar;
  for (std::size_t fold = unfolded.find("\r\n "); fold != std::string::npos; fold = unfolded.find("\r\n ", fold)) unfolded.erase(fold, 3);
  CHECK(unfolded.find("a\\, b\\; c\\\\d\\n") != std::string::npos);
  const Component all = parsed(calendar);
  icalcomponent* event = icalcomponent_get_first_component(all.get(), ICAL_VEVENT_COMPONENT);
  CHECK(std::string(icalcomponent_get_summary(event)).find(title + "; , ") != std::string::npos);
  CHECK(std::string(icalcomponent_get_description(event)).find(notes) != std::string::npos);
  CHECK(std::string(icalcomponent_get_description(event)).find("- tapestry needle 24\n") != std::string::npos);
}

TEST_CASE("no day and an unknown zone are told") {
  CHECK(calendar_of(course_from(course_text_with("", 1))).error().what.find("no lesson has a day") == 0);
  const course::Course lost =
      course_from(course_text_with("first_day = 2027-01-12\nstart_time = \"18:30\"\ntime_zone = \"Europe/Olso\"", 1));
  CHECK(calendar_of(lost).error().what == "the time zone \"Europe/Olso\" is not known");
  REQUIRE(publish::zone_unknown(lost).size() == 1);
  CHECK(publish::zone_unknown(lost)[0].rule == "time-zone-unknown");
  CHECK(publish::zone_unknown(course_from(course_text_with(new_york, 1))).empty());
}
