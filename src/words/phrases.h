// Sentences from data: a key, named arguments, plurals and ordinals. Knows nothing of stitching; tables are handed in as text.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.h"

namespace words {

/// A number said as "first", "2nd"... in the phrase's language.
struct Ordinal {
  std::int64_t n = 1;
};
/// A number with so many decimals, written with the language's decimal sign.
struct Decimal {
  double value = 0;
  int places = 1;
};

using Argument = std::variant<std::string, std::int64_t, Ordinal, Decimal>;
using Arguments = std::map<std::string, Argument, std::less<>>;

/// One language's table. Read once, then never changed; safe to share between threads.
class Phrases {
 public:
  /// The table is TOML; its form is described at the top of assets/phrases/en.toml. Trouble names file, line and column.
  static base::Result<Phrases> read(std::string_view toml, std::string_view file_name);

  /// The sentence of the key with its arguments. An unknown key, or an argument that the phrase wants and does not get, is a
  /// mistake of the program (base::require).
  std::string say(std::string_view key, const Arguments& arguments = {}) const;
  bool has(std::string_view key) const;
  std::vector<std::string> keys() const;  ///< sorted
  /// What the key would say with the arguments of its own example; every key has one.
  std::string example(std::string_view key) const;
  const std::string& language() const { return language_; }

  struct Form {
    std::string one;    ///< text for the count 1, or empty where the phrase does not count
    std::string other;  ///< the text
    std::string by;     ///< name of the argument that is counted, or empty
    Arguments example;
  };

 private:
  std::string language_;
  std::string decimal_sign_ = ".";
  std::vector<std::string> ordinals_;     ///< words for 1st, 2nd... in order
  std::string ordinal_beyond_ = "{n}th";  ///< for numbers beyond the list
  std::map<std::string, Form, std::less<>> forms_;
};

}  // namespace words
