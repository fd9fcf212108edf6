// The faults of one file, gathered while it is read and told in order of place.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "file/node.h"

namespace file {

inline constexpr std::size_t fault_limit = 200;  ///< told at most; one more says how many there are besides

class FaultList {
 public:
  void add(base::TextPlace place, int length, std::string found, std::string expected, std::string suggestion = {});
  /// A fault of a whole value or key.
  void add(const Node& node, std::string found, std::string expected, std::string suggestion = {});
  void add_key(const Entry& entry, std::string found, std::string expected, std::string suggestion = {});
  /// A fault within a text: `offset` and `length` are bytes of its value. Where the text is written with escapes or over several lines, the
  /// whole text is marked.
  void add_within(const Node& text, std::size_t offset, std::size_t length, std::string found, std::string expected,
                  std::string suggestion = {});

  /// The nearest of the words, or "". Gives up (and says "") once a file has asked for more comparisons than a person's file ever would.
  std::string nearest(std::string_view word, const std::vector<std::string>& candidates);
  /// Has it given up? Then nobody need gather candidates.
  bool gives_up() const;

  std::size_t size() const { return faults_.size(); }
  /// In order of place, those of one place as they were found, cut at fault_limit.
  base::Faults take();

 private:
  base::Faults faults_;
  std::size_t compared_ = 0;
};

/// A text as shown in a fault: in quotation marks, shortened, control characters made visible.
std::string shown(std::string_view text);
/// "a text", "a whole number", "a list", ...
std::string kind_of_value(const Node& node);
/// "a, b or c", each in quotation marks.
std::string one_of(const std::vector<std::string>& words);

}  // namespace file
