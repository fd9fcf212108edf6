#include "session/mends.h"

#include <algorithm>
#include <fmt/format.h>

#include "file/edit.h"

namespace session {
namespace {

using course::Course;
using check::Snag;

std::int64_t number(const Snag& snag, const std::string& key) {
  const auto found = snag.numbers.find(key);
  return found == snag.numbers.end() ? 0 : found->second;
}

Edit with_work(int lesson, std::vector<std::string> work, std::string name) {
  return {std::move(name), [lesson, value = file::in_toml(work)](std::string_view text) { return file::with_key(text, {"lesson", lesson}, {"work", value}); }};
}

std::vector<std::string> work_of_lesson(const Course& course, int lesson) {
  std::vector<std::string> work;
  for (const course::WorkItem& item : course.lessons[static_cast<std::size_t>(lesson)].work) work.push_back(item.text);
  return work;
}

/// At the end of the last lesson, so that nothing that is there already changes its order.
std::optional<Edit> put_into_last_lesson(const Course& course, const Snag& snag) {
  if (course.lessons.empty() || snag.part < 0) return std::nullopt;
  const course::Part& part = course.parts[static_cast<std::size_t>(snag.part)];
  std::string item = part.name;
  for (const char* stage : {"bars", "fillings"})
    if (snag.rule == fmt::format("{}-in-no-lesson", stage)) item += fmt::format(" / {} / {}..{}", stage, number(snag, "first"), number(snag, "last"));
  if (snag.rule == "work-forgotten") {
    if (part.work.passes_a_place() > 1) item += fmt::format(" / pass {}", number(snag, "pass"));
    item += fmt::format(" / {}..{}", number(snag, "first"), number(snag, "last"));
  }
  const int last = static_cast<int>(course.lessons.size()) - 1;
  auto work = work_of_lesson(course, last);
  work.push_back(std::move(item));
  return with_work(last, std::move(work), "put work into the last lesson");
}

std::optional<Edit> take_out_doubled(const Course& course, const Snag& snag) {
  const auto text = snag.words.find("work");
  if (text == snag.words.end() || snag.lesson < 1 || snag.lesson > static_cast<int>(course.lessons.size())) return std::nullopt;
  auto work = work_of_lesson(course, snag.lesson - 1);
  const auto found = std::find(work.rbegin(), work.rend(), text->second);
  if (found == work.rend()) return std::nullopt;
  work.erase(std::next(found).base());
  return with_work(snag.lesson - 1, std::move(work), "take out doubled work");
}

/// Only the work that comes too early goes into the lesson that it must wait for, behind what is there.
std::optional<Edit> put_in_order(const Course& course, const Snag& snag) {
  const auto lesson = static_cast<int>(number(snag, "lesson")), before = static_cast<int>(number(snag, "before"));
  if (lesson < 1 || before <= lesson || before > static_cast<int>(course.lessons.size())) return std::nullopt;  // within one lesson it is to be ordered by hand
  const auto& work = course.lessons[static_cast<std::size_t>(lesson - 1)].work;
  for (std::size_t i = 0; i < work.size(); ++i) {
    const bool pass = snag.rule == "pass-order" && work[i].pass == number(snag, "pass");
    const bool stretch = snag.rule == "stretch-order" && work[i].first.value_or(1) == number(snag, "first");
    if (work[i].part == snag.part && (pass || stretch)) return move_work(course, lesson - 1, static_cast<int>(i), before - 1);
  }
  return std::nullopt;
}

Edit without(std::string name, const file::TableName& table, std::vector<std::string> keys) {
  return {std::move(name), [table, keys = std::move(keys)](std::string_view text) {
            std::optional<std::string> now(text);
            for (const std::string& key : keys)
              if (auto next = file::without_key(*now, table, key)) now = std::move(next);
            return now;
          }};
}

std::optional<Edit> begin_at_nearest(const Snag& snag) {
  if (snag.part < 0 || !snag.also_at) return std::nullopt;
  return change_key(snag.part, "begin_at", file::in_toml(*snag.also_at), "begin at the nearest start");
}

std::optional<Edit> ridge_to_the_other_side(const Course& course, const Snag& snag) {
  const auto& values = course.parts[static_cast<std::size_t>(snag.part)].values;
  const auto out = values.find("out");
  if (out == values.end()) return std::nullopt;
  const bool left = std::get<std::string>(out->second) == "left";
  return change_key(snag.part, "out", file::in_toml(std::string(left ? "right" : "left")), "turn the ridge to the other side");
}

}  // namespace

std::optional<Edit> mend(const Course& course, const Snag& snag) {
  if (snag.rule == "part-in-no-lesson" || snag.rule == "work-forgotten" || snag.rule == "bars-in-no-lesson" || snag.rule == "fillings-in-no-lesson")
    return put_into_last_lesson(course, snag);
  if (snag.rule == "work-doubled" || snag.rule == "stage-doubled") return take_out_doubled(course, snag);
  if (snag.rule == "pass-order" || snag.rule == "stretch-order") return put_in_order(course, snag);
  if (snag.rule == "lesson-empty" && snag.lesson > 0) return remove_lesson(snag.lesson - 1);
  if (snag.rule == "cloth-size") return without("let the cloth fit the design", {"cloth", 0}, {"size_threads", "middle"});
  if (snag.rule == "begin-at-missed") return begin_at_nearest(snag);
  if (snag.rule == "edge-cuts-off-inside") return ridge_to_the_other_side(course, snag);
  if (snag.rule == "count-from-missing" && snag.part >= 0) return without("count from the best landmark", {"part", snag.part}, {"count_from"});
  return std::nullopt;
}

}  // namespace session
