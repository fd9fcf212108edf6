// Sentences from data: a key, named arguments, plurals and ordinals. Knows nothing of stitching; tables are handed in as text.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.h"

namespace words {

/// A number said as "first", "2nd"... in the phrase's language. From 1 up.
struct Ordinal {
  std::int64_t n = 1;
  friend bool operator==(const Ordinal&, const Ordinal&) = default;
};
/// A number with so many decimals (0 to 9), written with the language's decimal sign. Half a last digit is rounded as fmt rounds it.
struct Decimal {
  double value = 0;
  int places = 1;
  friend bool operator==(const Decimal&, const Decimal&) = default;
};

using Argument = std::variant<std::string, std::int64_t, Ordinal, Decimal>;
using Arguments = std::map<std::string, Argument, std::less<>>;

/// One language's table. Read once, then never changed; safe to share between threads.
class Phrases {
 public:
  /// The table is TOML; its form is described at the top of assets/phrases/en.toml. Trouble names file, line and column of one
  /// thing that is wrong: syntax, an unknown key of the table, a text and an example that do not have the same arguments.
  static base::Result<Phrases> read(std::string_view toml, std::string_view file_name);

  /// The sentence of the key with its arguments. An unknown key, or an argument that the phrase wants and does not get, is a
  /// mistake of the program (base::require). Arguments that the phrase does not want are left out.
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
  /// The phrase as the table has it; the key must be there.
  const Form& form(std::string_view key) const;

  /// The same table, and what it lacks from another language's: better a foreign sentence than none.
  Phrases completed_by(const Phrases& other) const;

  /// The same table in other words: every run of letters between arguments, and every ordinal, goes through `change`; arguments,
  /// figures and keys stay. (A language made up from this one shows which words of a page did not come from the table.)
  Phrases reworded(const std::function<std::string(std::string_view)>& change) const;

 private:
  friend class TableReader;

  std::string ordinal(std::int64_t n) const;
  std::string written(const Argument& argument) const;

  std::string language_;
  std::string decimal_sign_ = ".";
  std::vector<std::string> ordinals_;                          ///< words for 1st, 2nd... in order
  std::map<std::string, std::string, std::less<>> beyond_;     ///< by the last digits of the number: "{n}th"; "" is there
  std::map<std::string, Form, std::less<>> forms_;
};

/// The text with its first letter large (a-z and the small letters of Latin-1 with an acute, a ring...); all else as it is.
std::string capitalised(std::string text);

/// Keys that `wants` has and `has` lacks, sorted: what is left to translate.
std::vector<std::string> missing_keys(const Phrases& has, const Phrases& wants);

}  // namespace words
