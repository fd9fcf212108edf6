#include "file/filling_rules.h"

#include <fmt/format.h>

#include "file/repeat_keys.h"
#include "file/table_reader.h"

namespace file {
namespace {

constexpr std::string_view shape = "[{ kind = \"dove's eye\", where = \"all\" }], a list of rules";
constexpr std::size_t most_rules = 100, most_holes = 10000;

using Where = stitch::FillingRule::Where;

void read_where(const TableReader& table, stitch::FillingRule& rule) {
  const Node* node = table.find("where");
  if (!node) return;
  if (node->as<List>()) {
    rule.where = Where::at;
    table.list("where", most_holes, read_hole, rule.at);
    if (node->as<List>()->items.empty()) table.faults().add(*node, "an empty list", "a hole in each opening that is meant, e.g. [[10, 2]]");
    return;
  }
  const Text* text = node->as<Text>();
  if (text && text->value == "all") rule.where = Where::all;
  else if (text && text->value == "every second") rule.where = Where::every_second;
  else
    table.faults().add(*node, text ? shown(text->value) : kind_of_value(*node), "\"all\", \"every second\", or a list of holes, one in each opening",
                       text ? table.faults().nearest(text->value, {"all", "every second"}) : "");
}

stitch::FillingRule read_rule(const Node& node, FaultList& faults) {
  stitch::FillingRule rule;
  if (!node.as<Table>()) {
    faults.add(node, kind_of_value(node), "a rule, e.g. { kind = \"wheel\", where = \"all\" }");
    return rule;
  }
  const TableReader table({node.as<Table>(), node.place, node.length, "a rule of fillings"}, faults);
  const auto names = stitch::filling_names();
  const std::vector<std::string> words(names.begin(), names.end());
  table.require("kind", "kind = \"dove's eye\"");
  if (const Node* kind = table.find("kind"))
    if (const auto index = read_word(*kind, words, faults)) rule.kind = static_cast<stitch::Filling>(*index);
  read_where(table, rule);
  read_images(table, rule.turn, rule.mirror);
  if (rule.where != Where::at)
    for (const char* key : {"turn", "mirror"})
      if (const Node* written = table.find(key)) faults.add(*written, fmt::format("the key {} without holes", shown(key)), "where = [[x, y]], holes that come again");
  table.refuse_others({"kind", "where", "turn", "mirror"});
  return rule;
}

}  // namespace

std::optional<std::vector<stitch::FillingRule>> read_fillings(const Node& node, FaultList& faults) {
  const List* list = node.as<List>();
  if (!list || list->items.size() > most_rules) {
    faults.add(node, list ? fmt::format("{} rules", list->items.size()) : kind_of_value(node),
               list ? fmt::format("at most {}", most_rules) : std::string(shape));
    return std::nullopt;
  }
  const std::size_t before = faults.size();
  std::vector<stitch::FillingRule> rules;
  for (const Node& item : list->items) rules.push_back(read_rule(item, faults));
  return faults.size() == before ? std::optional(std::move(rules)) : std::nullopt;
}

}  // namespace file
