#include "file/table_reader.h"

#include <fmt/format.h>

#include <algorithm>

namespace file {

const Node* TableReader::find(std::string_view key) const {
  const Entry* entry = site_.table->find(key);
  return entry ? &entry->node : nullptr;
}

void TableReader::require(std::string_view key, std::string_view example) const {
  if (!find(key)) faults_.add(site_.place, site_.length, fmt::format("no \"{}\" in {}", key, site_.name), std::string(example));
}

void TableReader::refuse_others(const std::vector<std::string>& keys, const std::function<bool(const std::string&)>& told) const {
  for (const Entry& entry : site_.table->entries) {
    if (std::find(keys.begin(), keys.end(), entry.key) != keys.end() || (told && told(entry.key))) continue;
    std::string nearest = faults_.nearest(entry.key, keys);
    const std::string all = nearest.empty() ? fmt::format(": {}", fmt::join(keys, ", ")) : "";
    faults_.add_key(entry, fmt::format("the key {}", shown(entry.key)), fmt::format("a key of {}{}", site_.name, all), std::move(nearest));
  }
}

void TableReader::line(std::string_view key, int most, std::string& into) const {
  if (const Node* node = find(key)) set(read_line(*node, most, faults_), into);
}

const std::vector<Node>& TableReader::items(std::string_view key, std::size_t most) const {
  static const std::vector<Node> none;
  const Node* node = find(key);
  if (!node) return none;
  const List* list = node->as<List>();
  if (list && list->items.size() <= most) return list->items;
  faults_.add(*node, list ? fmt::format("a list of {}", list->items.size()) : kind_of_value(*node),
              list ? fmt::format("at most {} in it", most) : "a list in [ ]");
  return none;
}

std::optional<Site> table_at(const Entry* entry, std::string name, FaultList& faults) {
  if (!entry) return std::nullopt;
  if (const Table* table = entry->node.as<Table>()) return Site{table, entry->node.place, entry->node.length, std::move(name)};
  const List* list = entry->node.as<List>();
  const bool doubled = list && !list->items.empty() && list->items[0].as<Table>();
  faults.add(entry->node, doubled ? fmt::format("[{}]", name) : kind_of_value(entry->node),
             doubled ? fmt::format("{} once, in single brackets", name) : fmt::format("the table {}", name));
  return std::nullopt;
}

std::vector<Site> tables_at(const Entry* entry, const std::string& name, FaultList& faults) {
  std::vector<Site> sites;
  if (!entry) return sites;
  const List* list = entry->node.as<List>();
  if (!list) {
    const bool single = entry->node.as<Table>() != nullptr;
    faults.add(entry->node, single ? fmt::format("[{}]", name) : kind_of_value(entry->node),
               fmt::format("[[{}]] in double brackets, each time", name));
    return sites;
  }
  for (const Node& item : list->items) {
    if (const Table* table = item.as<Table>()) sites.push_back({table, item.place, item.length, fmt::format("[[{}]]", name)});
    else faults.add(item, kind_of_value(item), fmt::format("the table [[{}]]", name));
  }
  return sites;
}

}  // namespace file
