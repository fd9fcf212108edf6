// The course file as a whole: its letters, its form, its version, then table by table.
#include <fmt/format.h>

#include <algorithm>

#include "file/course_file.h"
#include "file/guard.h"
#include "file/schema.h"
#include "file/syntax.h"
#include "file/table_reader.h"
#include "file/tables.h"
#include "file/text_check.h"

namespace file {
namespace {

constexpr base::TextPlace top{1, 1};

Read only(base::Fault fault) { return {{}, {std::move(fault)}}; }

/// The fault for which nothing else of the file can be told, or nothing. Other faults of the version go into the list.
std::optional<base::Fault> check_format(const Table& root, FaultList& faults) {
  const Entry* entry = root.find("format");
  if (!entry) {
    faults.add(top, 1, "no \"format\"", "format = 1 as the first line");
    return std::nullopt;
  }
  const auto* value = entry->node.as<std::int64_t>();
  if (value && *value > format_version)
    return base::Fault{entry->node.place, entry->node.length, fmt::format("the format {}", *value),
                       fmt::format("a format up to {}: this program reads up to {}; a newer one is needed", format_version, format_version),
                       ""};
  if (!value || *value < 1)
    faults.add(entry->node, value ? fmt::format("the format {}", *value) : kind_of_value(entry->node), "format = 1");
  return std::nullopt;
}

/// A key that stands before all headers, or a table of another name.
void refuse_root(const Entry& entry, FaultList& faults) {
  const auto has = [&](const Keys& keys) { return std::find(keys.begin(), keys.end(), entry.key) != keys.end(); };
  if (entry.node.as<Table>() || entry.node.as<List>())
    return faults.add_key(entry, fmt::format("the table {}", shown(entry.key)),
                          "[course], [cloth], [thread.NAME], [habits], [[part]], [[lesson]] or [[student]]", faults.nearest(entry.key, root_keys()));
  std::string expected = "format = 1 alone before the first table";
  for (const auto& [table, keys] : {std::pair("[course]", course_keys()), {"[cloth]", cloth_keys()}, {"[habits]", habits_keys()}})
    if (has(keys)) expected = fmt::format("it below the line {}", table);
  faults.add_key(entry, fmt::format("the key {} outside of a table", shown(entry.key)), expected, faults.nearest(entry.key, {"format"}));
}

void check_tables(const Table& root, FaultList& faults) {
  for (const char* name : {"course", "cloth"})
    if (!root.find(name)) faults.add(top, 1, fmt::format("no table [{}]", name), fmt::format("[{}] with its keys", name));
  const Keys names = root_keys();
  for (const Entry& entry : root.entries)
    if (std::find(names.begin(), names.end(), entry.key) == names.end()) refuse_root(entry, faults);
}

void read_tables(const Table& root, Reading& reading) {
  check_tables(root, reading.faults);
  read_course_table(root.find("course"), reading);
  read_cloth_table(root.find("cloth"), reading);
  read_thread_tables(root.find("thread"), reading);
  read_habits_table(root.find("habits"), reading);
  read_part_tables(root.find("part"), reading);
  read_lesson_tables(root.find("lesson"), reading);
  read_student_tables(root.find("student"), reading);
}

}  // namespace

Read read(std::string_view text) {
  if (auto fault = check_text(text)) return only(std::move(*fault));
  text = without_mark(text);
  const Lines lines(text);
  const Outline shape = outline(text);
  if (auto fault = guard(shape, lines)) return only(std::move(*fault));
  const Parsed parsed = parse(lines, shape);
  if (parsed.fault) return only(*parsed.fault);
  if (parsed.root.entries.empty())
    return only({top, 1, "a file without a single key", "a course: format = 1, then [course], [cloth], [thread.NAME] and [[part]]", ""});
  FaultList faults;
  if (auto fault = check_format(parsed.root, faults)) return only(std::move(*fault));
  Read result;
  Reading reading{result.course, faults};
  read_tables(parsed.root, reading);
  result.faults = faults.take();
  return result;
}

}  // namespace file
