// Changes of a course file as text: a key set or taken out, a table added, taken out or moved. Comments stay with what they belong to; the result is
// in the canonical form. Whether the changed text is still a course is for read() to say.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cloth/hole.h"
#include "course/course.h"

namespace file {

/// A table of the file: `course`, `cloth`, `habits`, `thread.NAME`, or the n-th `part`, `lesson` or `student` (from 0).
struct TableName {
  std::string name;
  int number = 0;
};

/// A key and its value as TOML text (see in_toml).
struct Pair {
  std::string key, value;
};

std::string in_toml(std::string_view text);  ///< a basic string
std::string in_toml(cloth::Hole hole);       ///< [x, y]
std::string in_toml_halves(cloth::Hole twice);  ///< [x, y] of a place given in half threads: {3, 4} is [1.5, 2]
std::string in_toml(const std::vector<std::string>& texts);

/// Each returns the whole new text, or nothing where the table is not there.
std::optional<std::string> with_key(std::string_view text, const TableName& table, const Pair& pair);
std::optional<std::string> without_key(std::string_view text, const TableName& table, std::string_view key);
/// A new table of a list ("part", "lesson", "student") before the n-th one, or behind the last; or a single table ("habits", "thread.fine") behind the rest.
std::optional<std::string> with_table(std::string_view text, const TableName& before, const std::vector<Pair>& pairs);
std::optional<std::string> without_table(std::string_view text, const TableName& table);
/// The lessons with this work: those that are locked stay, further ones come behind the last. `course` is what the text says.
std::optional<std::string> with_lessons(std::string_view text, const course::Course& course, const std::vector<std::vector<std::string>>& work);
/// Moves the n-th table of a list so that it becomes number `to`.
std::optional<std::string> with_table_moved(std::string_view text, const TableName& table, int to);

}  // namespace file
