// Faults of a path's items that only the craft can see: a step that the stitches do not allow, a number that does not fit.
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "stitch/kind.h"
#include "stitch/path.h"

namespace stitch {

/// Gathers the faults of one path. A place is told once, however often a group repeats it.
class ItemFaults {
 public:
  /// The text must outlive this.
  explicit ItemFaults(std::string_view text) : text_(text) {}
  /// Marks the whole item; `found` is what the item is said to be, after its own words.
  void at_item(const PathItem& item, std::string_view found, std::string expected);
  /// Marks its number.
  void at_number(const PathItem& item, std::string expected);
  bool any() const { return !faults_.empty(); }
  /// All faults, in order of place.
  std::vector<KeyFault> take();

 private:
  void add(std::size_t offset, std::size_t length, std::string found, std::string expected);
  std::string_view text_;
  std::set<std::size_t> told_;
  std::vector<KeyFault> faults_;
};

/// Both coordinates within the limit?
bool within_limit(std::int64_t x, std::int64_t y);
/// The hole `start` lies too far out.
KeyFault start_beyond_limit(cloth::Hole start);
std::string hole_limit_in_words();
std::string stitch_limit_in_words();

}  // namespace stitch
