// Paths: "NE 8, SE 7, 6 x (S 4, E 4), E 5 apart". Parsed with places, checked against the limits before anything is expanded.
#pragma once

#include <string_view>
#include <vector>

#include "cloth/way.h"
#include "stitch/kind.h"

namespace stitch {

struct PathItem {
  cloth::Way way = cloth::Way::N;
  int number = 0;
  bool apart = false;
  std::size_t offset = 0, length = 0;  ///< the whole item in the text, bytes
  std::size_t number_offset = 0, number_length = 0;
};

struct ParsedPath {
  std::vector<PathItem> items;  ///< groups written out
  std::vector<KeyFault> faults;
};

enum class Apart { allowed, refused };

inline constexpr int item_number_limit = 200000;       ///< threads or blocks of one item
inline constexpr int path_item_limit = 100000;         ///< items with groups written out; also the most times of a group
inline constexpr std::size_t path_fault_limit = 1000;  ///< further faults of one path are not told

/// Reads the path of key `key`. Reports every faulty item, not only the first, in order of place; where there is one, no items are
/// returned. Takes time and memory in proportion to the text and the items, whatever numbers are written.
ParsedPath parse_path(std::string_view key, std::string_view text, Apart apart);

}  // namespace stitch
