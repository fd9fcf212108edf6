// Edits of the course as a whole: how long its lessons are, how fast the class stitches.
#include <fmt/format.h>

#include "file/edit.h"
#include "session/edits.h"

namespace session {
namespace {

/// The key in its table, which is made where it is not there.
std::optional<std::string> put(std::string_view text, const char* table, const file::Pair& pair) {
  auto changed = file::with_key(text, {table, 0}, pair);
  return changed ? changed : file::with_table(text, {table, 0}, {pair});
}

/// The text without the key; as it is where the table or the key is not there.
std::optional<std::string> take_out(std::string_view text, const char* table, std::string_view key) {
  auto changed = file::without_key(text, {table, 0}, key);
  return changed ? changed : std::optional<std::string>(text);
}

constexpr const char* speeds = "habits.stitches_a_minute";

}  // namespace

Edit change_course(std::string key, std::string value, std::string name) {
  return {std::move(name), [pair = file::Pair{std::move(key), std::move(value)}](std::string_view text) {
            return file::with_key(text, {"course", 0}, pair);
          }};
}

Edit add_student() {
  return {"add student", [](std::string_view text) { return file::with_table(text, {"student", course::student_limit}, {}); }};
}

Edit change_student(int number, std::string name, course::Hand hand) {
  return {"change student", [=](std::string_view text) -> std::optional<std::string> {
            const file::TableName student{"student", number};
            auto now = file::with_key(text, student, {"name", file::in_toml(name)});
            if (now && name.empty()) now = file::without_key(*now, student, "name");
            if (now) now = file::with_key(*now, student, {"hand", file::in_toml("left")});
            return now && hand == course::Hand::right ? file::without_key(*now, student, "hand") : now;
          }};
}

Edit remove_student(int number) {
  return {"remove student", [=](std::string_view text) { return file::without_table(text, {"student", number}); }};
}

Edit change_habit(std::string key, std::string value, std::string name) {
  return {std::move(name), [pair = file::Pair{std::move(key), std::move(value)}](std::string_view text) { return put(text, "habits", pair); }};
}

Edit change_pace(course::Pace pace) {
  return change_habit("pace", file::in_toml(pace == course::Pace::beginner ? "beginner" : "practised"), "change pace");
}

Edit change_speed(std::string kind, std::optional<double> speed) {
  return {"change speed", [kind = std::move(kind), speed](std::string_view text) {
            return speed ? put(text, speeds, {kind, fmt::format("{:g}", *speed)}) : take_out(text, speeds, kind);
          }};
}

}  // namespace session
