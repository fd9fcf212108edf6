// The letter to students that lies on top of a packet.
#include <fmt/format.h>

#include <algorithm>

#include "picture/shown.h"
#include "publish/packet.h"

namespace publish {
namespace {

/// "1. Tuesday 12 January 2027, 18:30: The ring of blocks"
std::string lesson_line(const say::Voice& voice, const plan::Plan& plan, const plan::LessonPlan& lesson) {
  words::Arguments arguments{{"n", std::int64_t{lesson.number}}, {"title", say::lesson_title(voice, plan, lesson.number)}};
  if (!lesson.date) return voice.phrases.say("letter.lesson", arguments);
  std::string day = say::date(voice, *lesson.date);
  if (!lesson.start.empty()) day = voice.phrases.say("list.comma", {{"first", day}, {"second", lesson.start}});
  arguments["day"] = day;
  return voice.phrases.say("letter.lesson.day", arguments);
}

}  // namespace

std::string letter(const say::Voice& voice, const plan::Plan& plan, const list::Measure& measure) {
  const auto say = [&](const char* key, const words::Arguments& arguments = {}) { return voice.phrases.say(key, arguments); };
  std::string text = fmt::format("{}\n\n{}\n\n", say("letter.greeting"), say("letter.course", {{"title", voice.course.title}}));
  for (const plan::LessonPlan& lesson : plan.lessons) text += fmt::format("  {}\n", lesson_line(voice, plan, lesson));
  if (!plan.lessons.empty())
    text +=
        fmt::format("\n{} {}\n", say("letter.first"), picture::ready_for(voice.course, plan, plan.lessons.front().number, voice, measure));
  text += fmt::format("\n{}\n\n", say("letter.packet"));
  const auto holds = [&](const std::string& key, const std::string& name) {
    text += fmt::format("  {}\n", voice.phrases.say("letter." + key, {{"name", name}}));
  };
  for (const char* key : {"pages", "pictures", "close-ups", "review", "film"}) holds(key, name_in_packet(voice.phrases, key));
  const auto dated = [](const plan::LessonPlan& lesson) { return lesson.date.has_value(); };
  if (std::any_of(plan.lessons.begin(), plan.lessons.end(), dated)) holds("calendar", calendar_file(voice.phrases));
  holds("shopping", name_in_packet(voice.phrases, "shopping"));
  text += fmt::format("\n{}\n", say("letter.needles"));
  if (!voice.course.teacher.empty()) text += fmt::format("\n{}\n", voice.course.teacher);
  return text;
}

}  // namespace publish
