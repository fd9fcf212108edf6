// Edits of the parts of the design.
#include <algorithm>

#include "file/course_file.h"
#include "file/edit.h"
#include "session/edits.h"

namespace session {
namespace {

file::TableName part_table(int number) { return {"part", number}; }

std::vector<file::Pair> pairs_of(const NewPart& part) {
  std::vector<file::Pair> pairs{{"name", file::in_toml(part.name)}, {"kind", file::in_toml(part.kind)}, {"thread", file::in_toml(part.thread)}};
  const stitch::Kind* kind = stitch::find_kind(part.kind);
  if (!kind) return pairs;
  for (const stitch::KeySpec& spec : kind->keys)
    if (const auto found = part.values.find(spec.name); found != part.values.end() && spec.fallback != found->second)
      pairs.push_back({std::string(spec.name), value_in_toml(found->second)});
  return pairs;
}

/// The keys of a repeat; none where it does not repeat.
std::vector<file::Pair> pairs_of(const stitch::Repeat& repeat) {
  std::vector<file::Pair> pairs;
  if (repeat.turn > 1) pairs.push_back({"turn", std::to_string(repeat.turn)});
  if (!repeat.mirror.empty()) pairs.push_back({"mirror", file::in_toml(repeat.mirror)});
  if (repeat.repeats()) pairs.push_back({"about", file::in_toml_halves(repeat.about_twice)});
  return pairs;
}

template <class Items, class Write>
std::string list_text(const Items& items, Write write) {
  std::string text = "[";
  for (std::size_t i = 0; i < items.size(); ++i) text += (i > 0 ? ", " : "") + write(items[i]);
  return text + ']';
}

std::optional<std::string> with_values(std::string_view text, int number, const course::Part& part, const stitch::Values& values) {
  std::optional<std::string> next(text);
  const stitch::Kind* kind = stitch::find_kind(part.kind);
  if (!kind) return std::nullopt;
  for (const stitch::KeySpec& spec : kind->keys) {
    const auto was = part.values.find(spec.name), is = values.find(spec.name);
    if (is == values.end() && part.key_places.contains(spec.name)) next = file::without_key(*next, part_table(number), spec.name);
    if (is != values.end() && (was == part.values.end() || was->second != is->second))
      next = file::with_key(*next, part_table(number), {std::string(spec.name), value_in_toml(is->second)});
    if (!next) return std::nullopt;
  }
  return next;
}

std::string filling_in_toml(const stitch::FillingRule& rule) {
  using Where = stitch::FillingRule::Where;
  std::string text = "{ kind = " + file::in_toml(std::string(stitch::filling_names()[static_cast<std::size_t>(rule.kind)])) + ", where = ";
  text += rule.where == Where::at    ? list_text(rule.at, [](cloth::Hole h) { return file::in_toml(h); })
          : rule.where == Where::all ? "\"all\""
                                     : "\"every second\"";
  if (rule.turn > 1) text += ", turn = " + std::to_string(rule.turn);
  if (!rule.mirror.empty()) text += ", mirror = " + file::in_toml(rule.mirror);
  return text + " }";
}

/// The same place of the design moved: the keys that say where a part lies.
stitch::Value moved_by(stitch::Value value, cloth::Hole by) {
  if (auto* hole = std::get_if<cloth::Hole>(&value)) *hole = *hole + by;
  if (auto* holes = std::get_if<std::vector<cloth::Hole>>(&value))
    for (cloth::Hole& hole : *holes) hole = hole + by;
  if (auto* rules = std::get_if<std::vector<stitch::FillingRule>>(&value))
    for (stitch::FillingRule& rule : *rules)
      for (cloth::Hole& hole : rule.at) hole = hole + by;
  return value;
}

struct NamesChanged {
  int part = 0;
  std::string key;
  std::vector<std::string> names;
};
/// Lists of other parts' names in which one is called otherwise, or is no longer there: the last one of a list stays.
std::vector<NamesChanged> names_changed(const course::Course& course, const std::string& old, const std::optional<std::string>& name) {
  std::vector<NamesChanged> changed;
  for (std::size_t n = 0; n < course.parts.size(); ++n)
    for (const auto& [key, value] : course.parts[n].values) {
      const auto* names = std::get_if<std::vector<std::string>>(&value);
      if (!names || std::find(names->begin(), names->end(), old) == names->end() || (!name && names->size() == 1)) continue;
      std::vector<std::string> next = *names;
      name ? std::replace(next.begin(), next.end(), old, *name) : void(std::erase(next, old));
      changed.push_back({static_cast<int>(n), key, std::move(next)});
    }
  return changed;
}

std::optional<std::string> with_names(std::optional<std::string> text, const std::vector<NamesChanged>& changed) {
  for (const NamesChanged& change : changed)
    if (text) text = file::with_key(*text, part_table(change.part), {change.key, file::in_toml(change.names)});
  return text;
}

}  // namespace

std::string free_name(const course::Course& course, const std::string& name) {
  if (course::find_part(course, name) < 0) return name;
  for (int n = 2;; ++n) {
    std::string tried = name + " " + std::to_string(n);
    if (course::find_part(course, tried) < 0) return tried;
  }
}

std::string value_in_toml(const stitch::Value& value) {
  if (const auto* hole = std::get_if<cloth::Hole>(&value)) return file::in_toml(*hole);
  if (const auto* number = std::get_if<int>(&value)) return std::to_string(*number);
  if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "true" : "false";
  if (const auto* holes = std::get_if<std::vector<cloth::Hole>>(&value)) return list_text(*holes, [](cloth::Hole h) { return file::in_toml(h); });
  if (const auto* wholes = std::get_if<std::vector<int>>(&value)) return list_text(*wholes, [](int n) { return std::to_string(n); });
  if (const auto* names = std::get_if<std::vector<std::string>>(&value)) return list_text(*names, [](const std::string& name) { return file::in_toml(name); });
  if (const auto* rules = std::get_if<std::vector<stitch::FillingRule>>(&value)) return list_text(*rules, filling_in_toml);
  return file::in_toml(std::get<std::string>(value));
}

Edit add_part(NewPart part) {
  constexpr int behind_all = 1 << 20;
  return {"add " + part.kind,
          [part = std::move(part)](std::string_view text) { return file::with_table(text, part_table(behind_all), pairs_of(part)); }};
}

Edit rename_part(const course::Course& course, int part, std::string name) {
  const std::string old = course.parts[static_cast<std::size_t>(part)].name;
  std::vector<std::pair<int, std::vector<std::string>>> changed;  // lessons whose work names it
  for (std::size_t n = 0; n < course.lessons.size(); ++n) {
    std::vector<std::string> work;
    bool any = false;
    for (const course::WorkItem& item : course.lessons[n].work) {
      any = any || item.part == part;
      work.push_back(item.part == part && item.text.starts_with(old) ? name + item.text.substr(old.size()) : item.text);
    }
    if (any) changed.emplace_back(static_cast<int>(n), std::move(work));
  }
  return {"rename part", [=, elsewhere = names_changed(course, old, name)](std::string_view text) {
            std::optional<std::string> now = with_names(file::with_key(text, part_table(part), {"name", file::in_toml(name)}), elsewhere);
            for (const auto& [lesson, work] : changed)
              if (now) now = file::with_key(*now, {"lesson", lesson}, {"work", file::in_toml(work)});
            return now;
          }};
}

Edit remove_part(const course::Course& course, int part) {
  std::vector<std::pair<int, std::vector<std::string>>> kept;  // lessons whose work changes
  for (std::size_t n = 0; n < course.lessons.size(); ++n) {
    std::vector<std::string> work;
    for (const course::WorkItem& item : course.lessons[n].work)
      if (item.part != part) work.push_back(item.text);
    if (work.size() != course.lessons[n].work.size()) kept.emplace_back(static_cast<int>(n), std::move(work));
  }
  const std::string& name = course.parts[static_cast<std::size_t>(part)].name;
  return {"remove part", [=, elsewhere = names_changed(course, name, std::nullopt)](std::string_view text) -> std::optional<std::string> {
            const auto unnamed = with_names(std::string(text), elsewhere);
            std::optional<std::string> now = unnamed ? file::without_table(*unnamed, part_table(part)) : std::nullopt;
            for (const auto& [lesson, work] : kept)
              if (now) now = file::with_key(*now, {"lesson", lesson}, {"work", file::in_toml(work)});
            return now;
          }};
}

Edit move_part(const course::Course& course, int part, cloth::Hole by, std::uint64_t run) {
  const course::Part& moved = course.parts[static_cast<std::size_t>(part)];
  std::vector<file::Pair> pairs;
  for (const auto& [key, value] : moved.values)
    if (std::holds_alternative<cloth::Hole>(value) || std::holds_alternative<std::vector<cloth::Hole>>(value))
      pairs.push_back({key, value_in_toml(moved_by(value, by))});
  if (moved.begin_at) pairs.push_back({"begin_at", file::in_toml(*moved.begin_at + by)});
  if (moved.repeat.repeats()) pairs.push_back({"about", file::in_toml_halves(moved.repeat.about_twice + 2 * by)});
  return {"move part",
          [=](std::string_view text) {
            std::optional<std::string> now(text);
            for (const file::Pair& pair : pairs)
              if (now) now = file::with_key(*now, part_table(part), pair);
            return now;
          },
          run};
}

Edit change_key(int part, std::string key, std::string value, std::string name, std::uint64_t run) {
  return {std::move(name),
          [part, pair = file::Pair{std::move(key), std::move(value)}](std::string_view text) {
            return file::with_key(text, part_table(part), pair);
          },
          run};
}

Edit remove_key(int part, std::string key, std::string name) {
  return {std::move(name), [part, key = std::move(key)](std::string_view text) { return file::without_key(text, part_table(part), key); }};
}

Edit change_values(int part, stitch::Values values, std::string name, std::uint64_t run) {
  return {std::move(name),
          [part, values = std::move(values)](std::string_view text) -> std::optional<std::string> {
            const course::Course now = file::read(text).course;  // what an edit before this one of the same drag has written
            if (part >= static_cast<int>(now.parts.size())) return std::nullopt;
            return with_values(text, part, now.parts[static_cast<std::size_t>(part)], values);
          },
          run};
}

Edit change_path(int part, std::string path, std::string name, std::uint64_t run) {
  return {std::move(name),
          [=](std::string_view text) {
            return file::with_key(text, part_table(part), {"path", file::in_toml(path)});
          },
          run};
}

Edit change_repeat(int part, const stitch::Repeat& repeat) {
  return {"change repeat", [=](std::string_view text) {
            std::optional<std::string> now(text);
            for (const char* key : {"turn", "mirror", "about"})
              if (auto without = file::without_key(*now, part_table(part), key)) now = std::move(without);
            for (const file::Pair& pair : pairs_of(repeat))
              if (now) now = file::with_key(*now, part_table(part), pair);
            return now;
          }};
}

Edit copy_part(const course::Course& course, int part, cloth::Hole by) {
  const course::Part& from = course.parts[static_cast<std::size_t>(part)];
  std::vector<file::Pair> pairs{
      {"name", file::in_toml(free_name(course, from.name))}, {"kind", file::in_toml(from.kind)}, {"thread", file::in_toml(from.thread)}};
  for (const auto& [key, value] : from.values) {
    if (!from.key_places.contains(key)) continue;
    pairs.push_back({key, value_in_toml(moved_by(value, by))});
  }
  stitch::Repeat repeat = from.repeat;
  repeat.about_twice = repeat.about_twice + 2 * by;
  for (file::Pair& pair : pairs_of(repeat)) pairs.push_back(std::move(pair));
  return {"copy part", [=](std::string_view text) { return file::with_table(text, part_table(part + 1), pairs); }};
}

}  // namespace session
