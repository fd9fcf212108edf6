// [cloth]: its count, size and colour, and what a line of the printed grid stands for.
#include <fmt/format.h>

#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"

namespace file {
namespace {

constexpr double least_count = 5, most_count = 100;  // threads an inch
constexpr double least_per_cm = 2, most_per_cm = 39;

/// One number, or [across, down] where warp and weft are counted apart; `scale` threads an inch to one of the unit.
void read_count_as(const Node& node, double least, double most, double scale, cloth::Count& count, FaultList& faults) {
  const List* list = node.as<List>();
  if (!list) {
    if (const auto threads = read_number(node, least, most, faults)) count = {scale * *threads};
    return;
  }
  if (list->items.size() != 2) return faults.add(node, fmt::format("a list of {}", list->items.size()), "one count, or two: [across, down]");
  const auto across = read_number(list->items[0], least, most, faults), down = read_number(list->items[1], least, most, faults);
  if (!across || !down) return;
  count = {scale * *across};
  if (*across != *down) count.down_per_inch = scale * *down;
}

void read_count(const TableReader& table, course::Cloth& cloth) {
  if (const Node* count = table.find("count")) read_count_as(*count, least_count, most_count, 1, cloth.count, table.faults());
  const Entry* per_cm = table.site().table->find("per_cm");
  if (!per_cm) return table.require("count", "count = 22 (threads an inch) or per_cm = 8.7");
  if (table.find("count"))
    table.faults().add_key(*per_cm, "both \"count\" and \"per_cm\"", "one of them: threads an inch, or threads a centimetre");
  read_count_as(*table.find("per_cm"), least_per_cm, most_per_cm, cloth::per_cm(1).per_inch, cloth.count, table.faults());
  cloth.written_per_cm = true;
}

}  // namespace

void read_cloth_table(const Entry* entry, Reading& reading) {
  const auto site = table_at(entry, "[cloth]", reading.faults);
  if (!site) return;
  const TableReader table(*site, reading.faults);
  course::Cloth& cloth = reading.course.cloth;
  course::Choices& choices = reading.course.choices;
  read_count(table, cloth);
  table.word<course::Line>("line", {{"thread", course::Line::thread}, {"hole", course::Line::hole}}, choices.line);
  table.number("margin_mm", 0, 1000, cloth.margin_mm);
  table.take("colour", read_colour, cloth.colour);
  table.take("size_threads", read_size, cloth.size_threads);
  table.take("middle", read_hole, cloth.middle);
  table.word<course::Begin>("begin", {{"middle", course::Begin::middle}, {"edges", course::Begin::edges}}, choices.begin);
  table.take("price", read_price, cloth.price);
  table.line("currency", 20, cloth.currency);
  table.refuse_others(cloth_keys());
}

}  // namespace file
