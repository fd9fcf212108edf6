// Wording of the faults that blocks and lines have in common.
#include "stitch/item_faults.h"

#include <fmt/format.h>

#include <algorithm>

namespace stitch {

void ItemFaults::at_item(const PathItem& item, std::string_view found, std::string expected) {
  add(item.offset, item.length, fmt::format("\"{}\", {}", text_.substr(item.offset, item.length), found), std::move(expected));
}

void ItemFaults::at_number(const PathItem& item, std::string expected) {
  add(item.number_offset, item.number_length, fmt::format("the number {}", item.number), std::move(expected));
}

void ItemFaults::add(std::size_t offset, std::size_t length, std::string found, std::string expected) {
  if (faults_.size() >= path_fault_limit || !told_.insert(offset).second) return;
  faults_.push_back({"path", offset, length, std::move(found), std::move(expected), ""});
}

std::vector<KeyFault> ItemFaults::take() {
  std::sort(faults_.begin(), faults_.end(), [](const KeyFault& a, const KeyFault& b) { return a.offset < b.offset; });
  return std::move(faults_);
}

bool within_limit(std::int64_t x, std::int64_t y) {
  return -coordinate_limit <= x && x <= coordinate_limit && -coordinate_limit <= y && y <= coordinate_limit;
}

KeyFault start_beyond_limit(cloth::Hole start) {
  return {"start", 0, 0, fmt::format("the hole [{}, {}]", start.x, start.y), hole_limit_in_words(), ""};
}

std::string hole_limit_in_words() { return fmt::format("holes within {} threads of 0", coordinate_limit); }
std::string stitch_limit_in_words() { return fmt::format("at most {} stitches in one part", stitch_limit); }

}  // namespace stitch
