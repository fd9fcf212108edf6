// Edits of the row of lessons.
#include <algorithm>

#include "file/edit.h"
#include "session/edits.h"

namespace session {
namespace {

file::TableName lesson_table(int number) { return {"lesson", number}; }

std::vector<std::string> texts(const course::Lesson& lesson) {
  std::vector<std::string> all;
  for (const course::WorkItem& work : lesson.work) all.push_back(work.text);
  return all;
}

}  // namespace

Edit add_lesson(int before, std::string title) {
  return {"add lesson", [=](std::string_view text) {
            return file::with_table(text, lesson_table(before), {{"title", file::in_toml(title)}, {"work", "[]"}});
          }};
}

Edit rename_lesson(int lesson, std::string title) {
  return {"rename lesson", [=](std::string_view text) { return file::with_key(text, lesson_table(lesson), {"title", file::in_toml(title)}); }};
}

Edit remove_lesson(int lesson) {
  return {"remove lesson", [=](std::string_view text) { return file::without_table(text, lesson_table(lesson)); }};
}

Edit move_lesson(int lesson, int to) {
  return {"move lesson", [=](std::string_view text) { return file::with_table_moved(text, lesson_table(lesson), to); }};
}

Edit move_work(const course::Course& course, int lesson, int item, int to_lesson) {
  const auto in = [&](int n) { return n >= 0 && n < static_cast<int>(course.lessons.size()); };
  if (!in(lesson) || !in(to_lesson) || item < 0 || item >= static_cast<int>(course.lessons[lesson].work.size()))
    return {"move work", [](std::string_view) { return std::optional<std::string>(); }};
  std::vector<std::string> from = texts(course.lessons[lesson]), to = texts(course.lessons[to_lesson]);
  const std::string moved = from[item];
  from.erase(from.begin() + item);
  if (lesson == to_lesson) to = from;
  to.push_back(moved);
  return {"move work", [=](std::string_view text) -> std::optional<std::string> {
            auto without = file::with_key(text, lesson_table(lesson), {"work", file::in_toml(from)});
            return without ? file::with_key(*without, lesson_table(to_lesson), {"work", file::in_toml(to)}) : without;
          }};
}

Edit write_lessons(std::vector<std::vector<std::string>> work) {
  return {"write lessons", [work = std::move(work)](std::string_view text) {
            std::optional<std::string> now(text);
            for (std::size_t n = 0; n < work.size() && now; ++n)
              now = file::with_table(*now, lesson_table(static_cast<int>(n)), {{"work", file::in_toml(work[n])}});
            return now;
          }};
}

Edit take_split(const course::Course& course, std::vector<std::vector<std::string>> work) {
  return {"split again", [course, work = std::move(work)](std::string_view text) { return file::with_lessons(text, course, work); }};
}

Edit lock_lesson(int lesson, bool locked) {
  return {locked ? "lock lesson" : "unlock lesson", [=](std::string_view text) {
            return locked ? file::with_key(text, lesson_table(lesson), {"locked", "true"}) : file::without_key(text, lesson_table(lesson), "locked");
          }};
}

Edit change_notes(int lesson, std::string notes) {
  return {"change notes", [lesson, notes = std::move(notes)](std::string_view text) {
            return notes.empty() ? file::without_key(text, lesson_table(lesson), "notes")
                                 : file::with_key(text, lesson_table(lesson), {"notes", file::in_toml(notes)});
          }};
}

}  // namespace session
