// The kinds there are, and their keys as the course file's description has them (the project's own form).
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "stitch/kind.h"

using namespace stitch;

namespace {

const KeySpec& key(std::string_view kind, std::string_view name) {
  const Kind* found = find_kind(kind);
  REQUIRE(found != nullptr);
  const auto at = std::find_if(found->keys.begin(), found->keys.end(), [&](const KeySpec& spec) { return spec.name == name; });
  REQUIRE(at != found->keys.end());
  return *at;
}

}  // namespace

TEST_CASE("every kind is found by its name and can be built") {
  REQUIRE(kinds().size() >= 2);
  for (const Kind* kind : kinds()) {
    CHECK(find_kind(kind->name) == kind);
    CHECK(bool(kind->build));
    CHECK(kind->stitches_a_minute > 0);
  }
  CHECK(find_kind("Blocks") == nullptr);
  CHECK(find_kind("") == nullptr);
}

TEST_CASE("a key is required or has a fallback of its own type") {
  for (const Kind* kind : kinds()) {
    for (const KeySpec& spec : kind->keys) {
      CAPTURE(spec.name);
      // A hole may be left out, rules of fillings too; how often a bar is woven follows from the cloth where it is not given.
      const bool worked_out = spec.type == KeyType::hole || spec.type == KeyType::fillings || spec.name == "weaves";
      if (!worked_out || spec.required) CHECK(spec.required != spec.fallback.has_value());
      CHECK((spec.type == KeyType::word || spec.type == KeyType::whole_or_word) == !spec.words.empty());
      if (!spec.fallback) continue;
      if (spec.type == KeyType::word) CHECK(std::count(spec.words.begin(), spec.words.end(), std::get<std::string>(*spec.fallback)) == 1);
      if (spec.type == KeyType::whole) CHECK((spec.least <= std::get<int>(*spec.fallback) && std::get<int>(*spec.fallback) <= spec.most));
    }
  }
}

TEST_CASE("keys and defaults") {
  CHECK(key("blocks", "start").required);
  CHECK(key("blocks", "path").type == KeyType::path);
  CHECK(std::get<std::string>(*key("blocks", "first").fallback) == "upright");
  CHECK(key("cable", "path").required);
  CHECK(std::get<int>(*key("cable", "rows").fallback) == 2);
  CHECK(key("cable", "rows").least == 2);
  CHECK(key("cable", "rows").most == 3);
  CHECK(std::get<std::string>(*key("cable", "rows_lie").fallback) == "right");
}
