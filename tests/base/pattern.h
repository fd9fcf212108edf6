// Regular expressions of the standard library behind a small face, compiled in one place only: their templates cost more time to build than
// all the tests that use them.
#pragma once

#include <memory>
#include <string>
#include <vector>

namespace house {

struct Match {
  std::size_t at = 0;
  std::size_t end = 0;                ///< one past the last letter
  std::vector<std::string> groups;    ///< 0 is the whole; "" where a group has no part
};

/// An ECMAScript pattern, looked for anywhere in a text.
class Pattern {
 public:
  explicit Pattern(const std::string& pattern);
  bool in(const std::string& text) const;
  bool is(const std::string& text) const;  ///< the whole text
  std::vector<Match> all(const std::string& text) const;

 private:
  struct Compiled;
  std::shared_ptr<const Compiled> compiled_;
};

}  // namespace house
