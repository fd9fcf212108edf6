// The small face of regular expressions, and its test.
#include "base/pattern.h"

#include <doctest/doctest.h>

#include <regex>

namespace house {

struct Pattern::Compiled {
  std::regex regex;
};

Pattern::Pattern(const std::string& pattern) : compiled_(std::make_shared<const Compiled>(Compiled{std::regex(pattern)})) {}

bool Pattern::in(const std::string& text) const { return std::regex_search(text, compiled_->regex); }
bool Pattern::is(const std::string& text) const { return std::regex_match(text, compiled_->regex); }

std::vector<Match> Pattern::all(const std::string& text) const {
  std::vector<Match> matches;
  for (auto found = std::sregex_iterator(text.begin(), text.end(), compiled_->regex); found != std::sregex_iterator(); ++found) {
    Match match{static_cast<std::size_t>(found->position()), static_cast<std::size_t>(found->position() + found->length()), {}};
    for (const auto& group : *found) match.groups.push_back(group.str());
    matches.push_back(match);
  }
  return matches;
}

}  // namespace house

TEST_CASE("patterns find every place with its groups") {
  const house::Pattern pattern("(a)(b)?");
  const auto matches = pattern.all("ab-a");
  REQUIRE(matches.size() == 2);
  CHECK(matches[0].end == 2);
  CHECK(matches[1].at == 3);
  CHECK(matches[1].groups == std::vector<std::string>{"a", "a", ""});
  CHECK(pattern.in("xa"));
  CHECK(pattern.is("ab"));
  CHECK_FALSE(pattern.is("xab"));
  CHECK_FALSE(pattern.in("b"));
}
