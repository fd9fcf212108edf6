// Numbers, dates, holes: what is not text.
#include "file/values.h"

#include <fmt/format.h>

#include <cmath>

#include "stitch/kind.h"

namespace file {
namespace {

std::string found_number(const Node& node) {
  if (const auto* whole = node.as<std::int64_t>()) return fmt::format("the number {}", *whole);
  if (const auto* decimal = node.as<Decimal>()) return fmt::format("the number {}", decimal->written);
  return kind_of_value(node);
}

std::optional<cloth::Hole> read_pair(const Node& node, int least, int most, std::string_view what, FaultList& faults) {
  const List* list = node.as<List>();
  if (!list || list->items.size() != 2) {
    faults.add(node, list ? fmt::format("a list of {}", list->items.size()) : kind_of_value(node),
               fmt::format("{} in whole numbers", what));
    return std::nullopt;
  }
  const auto x = read_whole(list->items[0], least, most, faults), y = read_whole(list->items[1], least, most, faults);
  return x && y ? std::optional(cloth::Hole{*x, *y}) : std::nullopt;
}

}  // namespace

std::optional<int> read_whole(const Node& node, int least, int most, FaultList& faults) {
  const auto* value = node.as<std::int64_t>();
  if (value && *value >= least && *value <= most) return static_cast<int>(*value);
  const bool decimal = node.as<Decimal>() != nullptr;
  faults.add(node, value || decimal ? found_number(node) : kind_of_value(node), fmt::format("a whole number from {} to {}", least, most));
  return std::nullopt;
}

std::optional<double> read_number(const Node& node, double least, double most, FaultList& faults) {
  std::optional<double> value;
  if (const auto* whole = node.as<std::int64_t>()) value = static_cast<double>(*whole);
  if (const auto* decimal = node.as<Decimal>()) value = decimal->value;
  if (value && *value >= least && *value <= most) return *value == 0 ? 0.0 : *value;
  faults.add(node, value ? found_number(node) : kind_of_value(node), fmt::format("a number from {} to {}", least, most));
  return std::nullopt;
}

std::optional<bool> read_flag(const Node& node, FaultList& faults) {
  if (const bool* value = node.as<bool>()) return *value;
  faults.add(node, kind_of_value(node), "true or false");
  return std::nullopt;
}

std::optional<base::Date> read_date(const Node& node, FaultList& faults) {
  constexpr std::string_view expected = "a date as year-month-day without quotation marks, e.g. 2027-01-12";
  const auto* date = node.as<base::Date>();
  if (!date) {
    const Text* text = node.as<Text>();
    const auto meant = text ? base::parse_date(text->value) : std::nullopt;
    faults.add(node, kind_of_value(node), std::string(expected), meant ? base::iso(*meant) : "");
    return std::nullopt;
  }
  if (date->year() >= first_year && date->year() <= last_year) return *date;
  faults.add(node, fmt::format("the year {}", static_cast<int>(date->year())),
             fmt::format("a year from {} to {}", static_cast<int>(first_year), static_cast<int>(last_year)));
  return std::nullopt;
}

std::optional<cloth::Hole> read_hole(const Node& node, FaultList& faults) {
  return read_pair(node, -stitch::coordinate_limit, stitch::coordinate_limit, "a hole [x, y]", faults);
}

std::optional<cloth::Hole> read_middle(const Node& node, FaultList& faults) {
  const List* list = node.as<List>();
  if (!list || list->items.size() != 2) {
    faults.add(node, list ? fmt::format("a list of {}", list->items.size()) : kind_of_value(node), "a middle [x, y] in whole or half threads");
    return std::nullopt;
  }
  const auto half = [&](const Node& item) -> std::optional<int> {
    const auto value = read_number(item, -stitch::coordinate_limit, stitch::coordinate_limit, faults);
    if (!value) return std::nullopt;
    if (2 * *value == std::floor(2 * *value)) return static_cast<int>(2 * *value);
    const double down = std::floor(2 * *value) / 2;
    faults.add(item, found_number(item), fmt::format("whole or half threads, e.g. {} or {}", down, down + 0.5));
    return std::nullopt;
  };
  const auto x = half(list->items[0]), y = half(list->items[1]);
  return x && y ? std::optional(cloth::Hole{*x, *y}) : std::nullopt;
}

std::optional<cloth::Hole> read_size(const Node& node, FaultList& faults) {
  return read_pair(node, 1, stitch::coordinate_limit, "a size [width, height]", faults);
}

}  // namespace file
