// [[part]]: the keys of every part, the keys of its kind, and the work that the kind makes of them.
#include <fmt/format.h>

#include <algorithm>

#include "file/filling_rules.h"
#include "file/repeat_keys.h"
#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"

namespace file {
namespace {

void read_part_name(const TableReader& table, course::Part& part, Reading& reading) {
  table.require("name", "name = \"...\", a name of its own");
  const Node* node = table.find("name");
  const auto name = node ? read_name(*node, reading.faults) : std::nullopt;
  if (!name) {
    reading.names_known = false;
    return;
  }
  part.name = *name;
  part.place = node->place;
  if (*name == "wash" || *name == "cut out")
    reading.faults.add(*node, shown(*name), "another name: this one stands for a step of the work that needs no thread");
  const auto [other, fresh] = reading.part_index.emplace(*name, static_cast<int>(reading.course.parts.size()));
  if (!fresh)
    reading.faults.add(*node, fmt::format("the name {} a second time", shown(*name)),
                       fmt::format("a name of its own; the other part stands in line {}", reading.course.parts[other->second].place.line));
}

void read_part_thread(const TableReader& table, course::Part& part, Reading& reading) {
  table.require("thread", "thread = \"...\", the name of a table [thread.NAME]");
  const Node* node = table.find("thread");
  const auto name = node ? read_any_text(*node, reading.faults) : std::nullopt;
  if (!name) return;
  part.thread = *name;
  if (!reading.threads_known || reading.thread_index.count(*name) > 0) return;
  Keys names;
  for (const course::Thread& thread : reading.course.threads) names.push_back(thread.name);
  const std::string expected = names.empty() ? "a thread with a table of its own, e.g. [thread.heavy]" : "a thread of the file";
  constexpr std::size_t told = 6;
  reading.faults.add(*node, fmt::format("the thread {}", shown(*name)),
                     names.empty() || names.size() > told ? expected : fmt::format("{}: {}", expected, one_of(names)),
                     reading.faults.nearest(*name, names));
}

/// No kind is written: a key that is nearly "kind" is what is wrong, else the table.
void tell_no_kind(const TableReader& table) {
  for (const Entry& entry : table.site().table->entries)
    if (std::string nearest = table.faults().nearest(entry.key, {"kind"}); !nearest.empty())
      return table.faults().add_key(entry, fmt::format("the key {}", shown(entry.key)), fmt::format("a key of {}", table.site().name), std::move(nearest));
  table.require("kind", "kind = " + one_of(kind_names()));
}

const stitch::Kind* read_kind(const TableReader& table, course::Part& part) {
  if (!table.find("kind")) tell_no_kind(table);
  const Node* node = table.find("kind");
  const auto name = node ? read_any_text(*node, table.faults()) : std::nullopt;
  if (!name) return nullptr;
  part.kind = *name;
  const stitch::Kind* kind = stitch::find_kind(*name);
  if (!kind)
    table.faults().add(*node, fmt::format("the kind {}", shown(*name)), one_of(kind_names()), table.faults().nearest(*name, kind_names()));
  return kind;
}

/// A list, each of its items read by itself; every faulty one is told.
template <class Read>
auto read_items(const Node& node, std::string_view what, FaultList& faults, Read read)
    -> std::optional<std::vector<typename decltype(read(node))::value_type>> {
  const List* list = node.as<List>();
  if (!list || list->items.empty()) {
    faults.add(node, list ? "an empty list" : kind_of_value(node), std::string(what));
    return std::nullopt;
  }
  std::vector<typename decltype(read(node))::value_type> values;
  for (const Node& item : list->items)
    if (const auto value = read(item)) values.push_back(*value);
  return values.size() == list->items.size() ? std::optional(std::move(values)) : std::nullopt;
}

std::optional<stitch::Value> read_whole_or_word(const Node& node, const stitch::KeySpec& key, FaultList& faults) {
  if (const Text* text = node.as<Text>();
      text && std::find(key.words.begin(), key.words.end(), std::string_view(text->value)) != key.words.end())
    return stitch::Value(text->value);
  const auto* number = node.as<std::int64_t>();
  if (number && key.least <= *number && *number <= key.most) return stitch::Value(static_cast<int>(*number));
  faults.add(node, number ? fmt::format("the number {}", *number) : kind_of_value(node),
             fmt::format("{}, or a whole number from {} to {}", one_of(Keys(key.words.begin(), key.words.end())), key.least, key.most));
  return std::nullopt;
}

std::optional<stitch::Value> read_kind_value(const Node& node, const stitch::KeySpec& key, FaultList& faults) {
  const auto wrapped = [](const auto& value) { return value ? std::optional(stitch::Value(*value)) : std::nullopt; };
  switch (key.type) {
    case stitch::KeyType::hole: return wrapped(read_hole(node, faults));
    case stitch::KeyType::flag: return wrapped(read_flag(node, faults));
    case stitch::KeyType::path: return wrapped(read_any_text(node, faults));
    case stitch::KeyType::parts:
      return wrapped(read_items(node, "a list of parts' names, e.g. [\"ring\"]", faults,
                                [&](const Node& item) { return read_any_text(item, faults); }));
    case stitch::KeyType::whole: {
      const bool bounded = key.least != 0 || key.most != 0;
      return wrapped(
          read_whole(node, bounded ? key.least : -stitch::coordinate_limit, bounded ? key.most : stitch::coordinate_limit, faults));
    }
    case stitch::KeyType::whole_or_word: return read_whole_or_word(node, key, faults);
    case stitch::KeyType::holes:
      return wrapped(read_items(node, "a list of holes, e.g. [[0, 0], [8, 0]]", faults,
                                [&](const Node& item) { return read_hole(item, faults); }));
    case stitch::KeyType::wholes:
      return wrapped(read_items(node, "a list of whole numbers, e.g. [2, 3, 4, 3, 2]", faults,
                                [&](const Node& item) { return read_whole(item, key.least, key.most, faults); }));
    case stitch::KeyType::fillings: return wrapped(read_fillings(node, faults));
    case stitch::KeyType::word: {
      const Keys words(key.words.begin(), key.words.end());
      const auto index = read_word(node, words, faults);
      return index ? std::optional(stitch::Value(words[*index])) : std::nullopt;
    }
  }
  return std::nullopt;
}

std::string example(const stitch::KeySpec& key) {
  switch (key.type) {
    case stitch::KeyType::hole: return "[x, y]";
    case stitch::KeyType::parts: return "[\"...\"], the names of the blocks that hold it";
    case stitch::KeyType::whole: return fmt::format("{}", key.least);
    case stitch::KeyType::flag: return "true";
    case stitch::KeyType::word: return one_of(Keys(key.words.begin(), key.words.end()));
    case stitch::KeyType::path: return "\"...\", e.g. \"E 12, S 12\"";
    case stitch::KeyType::whole_or_word: return one_of(Keys(key.words.begin(), key.words.end()));
    case stitch::KeyType::holes: return "[[x, y]], a list of holes";
    case stitch::KeyType::wholes: return "[...], a list of whole numbers";
    case stitch::KeyType::fillings: return "[{ kind = \"dove's eye\" }]";
  }
  return {};
}

/// The keys of the kind, defaults filled in. True where all are there.
bool read_kind_values(const TableReader& table, const stitch::Kind& kind, course::Part& part) {
  const std::size_t before = table.faults().size();
  for (const stitch::KeySpec& key : kind.keys) {
    const Node* node = table.find(key.name);
    std::optional<stitch::Value> value = node ? read_kind_value(*node, key, table.faults()) : key.fallback;
    if (!node && key.required) table.require(key.name, fmt::format("{} = {}", key.name, example(key)));
    if (value) part.values[std::string(key.name)] = std::move(*value);
  }
  return table.faults().size() == before;
}

/// Keys that are neither the part's nor its kind's.
void refuse_part_keys(const TableReader& table, const stitch::Kind* kind) {
  if (kind) table.refuse_others(part_keys(*kind));
}

/// Lets the kind work it out; its faults are put in their places. True where there are none.
bool build(const TableReader& table, const stitch::Kind& kind, course::Part& part) {
  stitch::Outcome outcome = kind.build(part.values);
  for (const stitch::KeyFault& fault : outcome.faults) {
    const Node* node = table.find(fault.key);
    const List* list = node ? node->as<List>() : nullptr;
    if (list && 0 <= fault.item && fault.item < static_cast<int>(list->items.size()))
      table.faults().add(list->items[static_cast<std::size_t>(fault.item)], fault.found, fault.expected, fault.suggestion);
    else if (!node) table.faults().add(table.site().place, table.site().length, fault.found, fault.expected, fault.suggestion);
    else if (fault.offset == 0 && fault.length == 0) table.faults().add(*node, fault.found, fault.expected, fault.suggestion);
    else table.faults().add_within(*node, fault.offset, fault.length, fault.found, fault.expected, fault.suggestion);
  }
  if (!outcome.faults.empty()) return false;
  part.work = std::move(outcome.work);
  return true;
}

PartFacts facts_of(const stitch::Work& work) {
  PartFacts facts{!work.passes.empty() || work.cut, work.cut.has_value(), std::vector<int>(static_cast<std::size_t>(work.passes_a_place()), 0)};
  for (int place = 0; place < work.places; ++place)
    for (int pass = 1; pass <= work.passes_a_place(); ++pass)
      for (const stitch::Run& run : work.pass(pass, place).runs)
        facts.stitches[static_cast<std::size_t>(pass - 1)] += static_cast<int>(run.stitches.size());
  return facts;
}

class PartReader {
 public:
  explicit PartReader(Reading& reading) : reading_(reading) {}

  void read(const Site& site) {
    const TableReader table(site, reading_.faults);
    course::Part part;
    part.place = site.place;
    for (const Entry& entry : site.table->entries) part.key_places[entry.key] = entry.node.place;
    read_part_name(table, part, reading_);
    const stitch::Kind* kind = read_kind(table, part);
    read_part_thread(table, part, reading_);
    table.take("notes", read_notes, part.notes);
    table.take("begin_at", read_hole, part.begin_at);
    table.take("count_from", read_hole, part.count_from);
    const bool repeat_fits = read_repeat(table, part.repeat);
    const bool complete = kind && read_kind_values(table, *kind, part);
    refuse_part_keys(table, kind);
    if (kind && kind->needle_in_middle)
      part.values["eyelet_needle"] = std::string(reading_.course.choices.habits.eyelet_needle == course::EyeletNeedle::up_in_the_middle ? "up" : "down");
    reading_.parts.push_back(complete && repeat_fits ? work_out(table, *kind, part) : PartFacts{});
    reading_.course.parts.push_back(std::move(part));
  }

 private:
  /// Not called any more once the course has too many stitches: nothing grows beyond the limit by more than one part.
  PartFacts work_out(const TableReader& table, const stitch::Kind& kind, course::Part& part) {
    if (stitches_ > stitch::stitch_limit || !build(table, kind, part)) return {};
    if (!images_fit(table, part)) return {};
    const auto images = static_cast<std::int64_t>(stitch::images_of(part.repeat).size());
    if (stitches_ + images * static_cast<std::int64_t>(part.work.stitches.size()) <= stitch::stitch_limit) {
      if (images > 1) part.work = stitch::repeated(std::move(part.work), part.repeat);
      stitches_ += static_cast<std::int64_t>(part.work.stitches.size());
      return facts_of(part.work);
    }
    stitches_ += images * static_cast<std::int64_t>(part.work.stitches.size());
    reading_.faults.add(part.place, 1, fmt::format("{} stitches in all up to this part", stitches_),
                        fmt::format("at most {} in a course", stitch::stitch_limit));
    return {};
  }

  bool images_fit(const TableReader& table, const course::Part& part) {
    const Node* about = table.find("about");
    if (!about || stitch::within_limit(part.work, part.repeat)) return true;
    reading_.faults.add(*about, "a middle that puts an image too far out",
                        fmt::format("one that keeps every image within {} of 0", stitch::coordinate_limit));
    return false;
  }

  Reading& reading_;
  std::int64_t stitches_ = 0;
};

bool has_blocks(const course::Part& part) {
  const auto& features = part.work.features;
  return std::any_of(features.begin(), features.end(), [](const stitch::Feature& f) { return stitch::holds_cuts(f.shape); });
}

/// Are the parts that a part names there, and of blocks?
void check_named(const Node& list, Reading& reading) {
  Keys names;
  for (const auto& [name, index] : reading.part_index) names.push_back(name);
  for (const Node& item : list.as<List>()->items) {
    const std::string& name = item.as<Text>()->value;
    const auto found = reading.part_index.find(name);
    if (found == reading.part_index.end() && (reading.names_known || name.empty()))
      reading.faults.add(item, fmt::format("the part {}", shown(name)), "the name of a part of blocks or satin stitch", reading.faults.nearest(name, names));
    if (found == reading.part_index.end()) continue;
    const auto index = static_cast<std::size_t>(found->second);
    if (reading.parts[index].whole && !has_blocks(reading.course.parts[index]))
      reading.faults.add(item, fmt::format("the part {}, which has no blocks", shown(name)), "the name of a part of blocks or satin stitch");
  }
}

/// Names of other parts, once all of them are read.
void check_named_parts(const std::vector<Site>& sites, Reading& reading) {
  for (std::size_t i = 0; i < sites.size() && i < reading.course.parts.size(); ++i) {
    if (!reading.course.parts[i].work.cut) continue;
    for (const Entry& entry : sites[i].table->entries)
      if (entry.node.as<List>() && std::holds_alternative<std::vector<std::string>>(reading.course.parts[i].values[entry.key]))
        check_named(entry.node, reading);
  }
}

}  // namespace

void read_part_tables(const Entry* entry, Reading& reading) {
  const std::size_t before = reading.faults.size();
  const std::vector<Site> sites = tables_at(entry, "part", reading.faults);
  if (reading.faults.size() > before) reading.names_known = false;
  PartReader parts(reading);
  for (std::size_t i = 0; i < sites.size(); ++i) {
    if (i == course::part_limit) {
      reading.names_known = false;
      return reading.faults.add(sites[i].place, sites[i].length, fmt::format("{} parts", sites.size()),
                                fmt::format("at most {}", course::part_limit));
    }
    parts.read(sites[i]);
  }
  check_named_parts(sites, reading);
}

}  // namespace file
