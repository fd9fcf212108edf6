// POSIX extended regular expressions behind a small face. (Those of the standard library take seconds to compile in every file that has them.)
#pragma once

#include <memory>
#include <string>
#include <vector>

namespace house {

struct Match {
  std::size_t at = 0;
  std::size_t end = 0;              ///< one past the last letter
  std::vector<std::string> groups;  ///< 0 is the whole; "" where a group has no part
};

/// A pattern, looked for anywhere in a text that holds no NUL. Beyond POSIX: \w \s \S \b, but not within brackets.
class Pattern {
 public:
  explicit Pattern(const std::string& pattern);
  bool in(const std::string& text) const;
  std::vector<Match> all(const std::string& text) const;

 private:
  struct Compiled;
  std::shared_ptr<const Compiled> compiled_;
};

}  // namespace house
