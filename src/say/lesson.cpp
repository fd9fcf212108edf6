// Titles and days of lessons.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "say/say.h"

namespace say {

std::string section_title(const Voice& voice, const plan::Plan& plan, std::pair<int, int> where) {
  const guide::PlacedTrail& trail = plan.trails[where.first];
  const guide::Section& section = trail.sections[where.second];
  const course::Part& part = voice.course.parts[trail.part];
  const bool passes = part.work.passes_a_place() > 1;
  const bool whole = part.work.places > 1 || (section.first == 0 && section.last == static_cast<int>(trail.trail.stitches.size()) - 1);
  words::Arguments arguments{{"part", part.name}, {"pass", words::Ordinal{trail.pass}},
                             {"first", std::int64_t{section.first + 1}}, {"last", std::int64_t{section.last + 1}}};
  return voice.phrases.say(fmt::format("lesson-title.{}.{}", passes ? "pass" : "part", whole ? "whole" : "stretch"), arguments);
}

std::string start_heading(const Voice& voice, const guide::PlacedTrail& trail, const guide::Section& section, bool several) {
  const std::string key = section.first > 0 ? "page.start.go-on" : "page.start";
  if (!several) return voice.phrases.say(key);
  const course::Part& part = voice.course.parts[static_cast<std::size_t>(trail.part)];
  const bool passes = part.work.passes_a_place() > 1;
  return voice.phrases.say(key + (passes ? ".pass" : ".part") + (part.work.places > 1 ? "-place" : ""),
                           {{"part", part.name}, {"pass", words::Ordinal{trail.pass}}, {"place", std::int64_t{trail.place + 1}}});
}

namespace {

std::string cutting_title(const Voice& voice, const plan::Plan& plan, int cutting) {
  return voice.phrases.say("lesson-title.cut", {{"part", voice.course.parts[static_cast<std::size_t>(plan.cuttings[static_cast<std::size_t>(cutting)].part)].name}});
}

std::string route_title(const Voice& voice, const plan::Plan& plan, std::pair<int, int> where) {
  const plan::PartRoute& worked = plan.routes[static_cast<std::size_t>(where.first)];
  const guide::Section& section = worked.sections[static_cast<std::size_t>(where.second)];
  const bool whole = section.first == 0 && section.last + 1 >= static_cast<int>(worked.items.size());
  const char* what = worked.stage == course::Stage::bars ? "bars" : "fillings";
  return voice.phrases.say(fmt::format("lesson-title.{}.{}", what, whole ? "whole" : "stretch"),
                           {{"part", voice.course.parts[static_cast<std::size_t>(worked.part)].name},
                            {"first", std::int64_t{section.first + 1}},
                            {"last", std::int64_t{section.last + 1}}});
}

/// What they are called, each once: the places of a repeated part have one name.
std::vector<std::string> names_of(const Voice& voice, const plan::Plan& plan, const std::vector<std::pair<int, int>>& sections,
                                  const std::vector<int>& cuttings, const std::vector<std::pair<int, int>>& routes) {
  std::vector<std::string> names;
  const auto add = [&](std::string name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(std::move(name));
  };
  for (const auto& section : sections) add(section_title(voice, plan, section));
  for (const int cutting : cuttings) add(cutting_title(voice, plan, cutting));
  for (const auto& where : routes) add(route_title(voice, plan, where));
  return names;
}

}  // namespace

std::vector<std::string> lesson_work(const Voice& voice, const plan::Plan& plan, int lesson) {
  const plan::LessonPlan& planned = plan.lessons[lesson - 1];
  std::vector<std::string> names = names_of(voice, plan, planned.sections, planned.cuttings, planned.routes);
  for (const plan::Finishing& step : plan.finishing)
    if (step.lesson == lesson) names.push_back(voice.phrases.say(step.finish == plan::Finish::wash ? "lesson-title.wash" : "lesson-title.cut-out"));
  return names;
}

std::string lesson_title(const Voice& voice, const plan::Plan& plan, int lesson) {
  const plan::LessonPlan& planned = plan.lessons[lesson - 1];
  if (!planned.title.empty()) return planned.title;
  const std::vector<std::string> names = lesson_work(voice, plan, lesson);
  if (names.empty()) return voice.phrases.say("lesson-title.none", {{"lesson", std::int64_t{lesson}}});
  std::string title = names[0];
  for (std::size_t i = 1; i < names.size() && i < 3; ++i)
    title = voice.phrases.say("lesson-title.and", {{"first", title}, {"second", names[i]}});
  return words::capitalised(title);
}

std::string missed_heading(const Voice& voice, const plan::LessonPlan& lesson) {
  return lesson.missed ? voice.phrases.say("missed.title", {{"lesson", std::int64_t{lesson.number - 1}}}) : "";
}

std::vector<std::string> missed(const Voice& voice, const plan::Plan& plan, const plan::LessonPlan& lesson) {
  if (!lesson.missed) return {};
  const plan::Missed& missed = *lesson.missed;
  const std::int64_t before = lesson.number - 1;
  std::vector<std::string> names = names_of(voice, plan, missed.sections, missed.cuttings, missed.routes), said;
  if (missed.wash) names.push_back(voice.phrases.say("missed.wash"));
  std::string work;
  for (std::size_t i = 0; i < names.size(); ++i)
    work = i == 0 ? names[i] : voice.phrases.say(i + 1 == names.size() ? "list.and" : "list.comma", {{"first", work}, {"second", names[i]}});
  said.push_back(work.empty() ? voice.phrases.say("missed.nothing", {{"lesson", before}})
                              : voice.phrases.say("missed.needed", {{"lesson", before},
                                                                    {"work", work},
                                                                    {"n", static_cast<std::int64_t>(std::ceil(missed.minutes))}}));
  if (!missed.cuttings.empty()) {
    said.push_back(voice.phrases.say("missed.cutting"));
    said.push_back(voice.phrases.say("page.caution.scissors"));
  }
  for (const plan::Missed::Instead& instead : missed.instead) {
    const guide::PlacedTrail& trail = plan.trails[plan.count_ins[instead.count_in].trail];
    const course::Part& part = voice.course.parts[trail.part];
    said.push_back(voice.phrases.say(part.work.places > 1 ? "missed.instead.place" : "missed.instead",
                                     {{"part", part.name}, {"place", std::int64_t{trail.place + 1}}, {"count", proof(voice, instead.count)}}));
  }
  return said;
}

std::vector<std::string> cutting_cautions(const Voice& voice) {
  return {voice.phrases.say("page.caution.scissors"), voice.phrases.say("page.caution.teacher"), voice.phrases.say("page.caution.pairs")};
}

std::string scissors(const Voice& voice, const plan::Plan& plan) {
  return voice.phrases.say(plan.cuttings.empty() ? "page.ready.scissors" : "page.ready.sharp-scissors");
}

std::string date(const Voice& voice, base::Date date) {
  return voice.phrases.say("date.full", {{"weekday", voice.phrases.say(fmt::format("weekday.{}", base::iso_weekday(date)))},
                                         {"day", std::int64_t{static_cast<unsigned>(date.day())}},
                                         {"month", voice.phrases.say(fmt::format("month.{}", static_cast<unsigned>(date.month())))},
                                         {"year", std::to_string(static_cast<int>(date.year()))},
                                         {"week", std::int64_t{base::iso_week(date).week}}});
}

}  // namespace say
