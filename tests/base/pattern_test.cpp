// The small face of regular expressions, and its test.
#include "base/pattern.h"

#include <doctest/doctest.h>
#include <regex.h>

namespace house {

struct Pattern::Compiled {
  explicit Compiled(const std::string& pattern) { REQUIRE_MESSAGE(regcomp(&regex, pattern.c_str(), REG_EXTENDED) == 0, pattern); }
  ~Compiled() { regfree(&regex); }
  Compiled(const Compiled&) = delete;
  Compiled& operator=(const Compiled&) = delete;
  regex_t regex{};
};

Pattern::Pattern(const std::string& pattern) : compiled_(std::make_shared<const Compiled>(pattern)) {}

bool Pattern::in(const std::string& text) const { return regexec(&compiled_->regex, text.c_str(), 0, nullptr, 0) == 0; }

std::vector<Match> Pattern::all(const std::string& text) const {
  std::vector<Match> matches;
  std::vector<regmatch_t> parts(compiled_->regex.re_nsub + 1);
  std::size_t from = 0;
  while (from <= text.size() && regexec(&compiled_->regex, text.c_str() + from, parts.size(), parts.data(), from > 0 ? REG_NOTBOL : 0) == 0) {
    const auto place = [&](regoff_t offset) { return from + static_cast<std::size_t>(offset); };
    Match match{place(parts[0].rm_so), place(parts[0].rm_eo), {}};
    for (const regmatch_t& part : parts)
      match.groups.push_back(part.rm_so < 0 ? "" : text.substr(place(part.rm_so), static_cast<std::size_t>(part.rm_eo - part.rm_so)));
    from = match.end > match.at ? match.end : match.end + 1;
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
  CHECK_FALSE(pattern.in("b"));
  CHECK(house::Pattern("^a").all("aa").size() == 1);
  CHECK(house::Pattern("x*").all("aa").size() == 3);
}

TEST_CASE("words, blanks and their edges") {
  const house::Pattern pattern("\\bmap\\s*<\\S");
  CHECK(pattern.in("std::map \n<int"));
  CHECK_FALSE(pattern.in("bitmap<int"));
  CHECK_FALSE(pattern.in("map< int"));
  CHECK(house::Pattern("\\w+").all("a1_b -c").size() == 2);
}
