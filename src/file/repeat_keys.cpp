#include "file/repeat_keys.h"

#include <fmt/format.h>

#include "file/edit.h"
#include "file/values.h"

namespace file {
namespace {

void read_turn(const Node& node, int& into, FaultList& faults) {
  const std::int64_t* turn = node.as<std::int64_t>();
  if (turn && (*turn == 2 || *turn == 4))
    into = static_cast<int>(*turn);
  else
    faults.add(node, turn ? fmt::format("the number {}", *turn) : kind_of_value(node), "4 (quarter turns) or 2 (a half turn)");
}

void read_mirror(const Node& node, std::string& into, FaultList& faults) {
  const std::vector<std::string> words{"x", "y", "xy"};
  if (const auto index = read_word(node, words, faults)) into = words[*index];
}

/// Of a middle that quarter turns do not fit, two near ones that they do.
void refuse_middle(const Node& node, const stitch::Repeat& repeat, FaultList& faults) {
  const cloth::Hole at = repeat.about_twice;
  faults.add(node, "a middle about which quarter turns put the image off the holes",
             fmt::format("both numbers whole or both halves, e.g. {} or {}", in_toml_halves(at + cloth::Hole{1, 0}),
                         in_toml_halves(at + cloth::Hole{0, 1})));
}

}  // namespace

void read_images(const TableReader& table, int& turn, std::string& mirror) {
  if (const Node* node = table.find("turn")) read_turn(*node, turn, table.faults());
  if (const Node* node = table.find("mirror")) read_mirror(*node, mirror, table.faults());
}

bool read_repeat(const TableReader& table, stitch::Repeat& repeat) {
  const std::size_t before = table.faults().size();
  const Node *turn = table.find("turn"), *mirror = table.find("mirror"), *about = table.find("about");
  read_images(table, repeat.turn, repeat.mirror);
  if ((turn || mirror) && !about) table.require("about", "about = [x, y], the middle of the repeat, in whole or half threads");
  if (!turn && !mirror && about)
    table.faults().add(*about, "a middle with nothing to repeat about it", "turn = 4 or mirror = \"x\" beside it, or no about");
  const auto middle = about ? read_middle(*about, table.faults()) : std::nullopt;
  if (middle) repeat.about_twice = *middle;
  if (table.faults().size() == before && !stitch::fits(repeat)) refuse_middle(*about, repeat, table.faults());
  return table.faults().size() == before;
}

}  // namespace file
