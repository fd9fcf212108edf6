// A course file as a tree of values with their places, in the order in which they are written. Free of the library that reads TOML.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/date.h"
#include "base/fault.h"

namespace file {

struct Node;
struct Entry;

struct Time {
  int hour = 0, minute = 0, second = 0, nanosecond = 0;
};
struct Moment {};  ///< a date with a time: no key takes one

struct List {
  std::vector<Node> items;
};
struct Table {
  std::vector<Entry> entries;  ///< in written order
  bool in_braces = false;      ///< written as { key = value }
  const Entry* find(std::string_view key) const;
};

/// A number with decimals, and the digits as written ("4.50"; never empty).
struct Decimal {
  double value = 0;
  std::string written;
};

struct Text {
  std::string value;
  bool plain = false;  ///< written without escapes between single quotation marks: its characters stand one by one behind its place
};

struct Node {
  std::variant<Text, std::int64_t, Decimal, bool, base::Date, Time, Moment, List, Table> value;
  base::TextPlace place;  ///< of its first character
  int length = 1;         ///< characters of its first line
  template <class T>
  const T* as() const {
    return std::get_if<T>(&value);
  }
};

struct Entry {
  std::string key;
  base::TextPlace place;
  int length = 1;
  Node node;
};

inline const Entry* Table::find(std::string_view key) const {
  for (const Entry& entry : entries)
    if (entry.key == key) return &entry;
  return nullptr;
}

}  // namespace file
