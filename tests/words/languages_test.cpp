// Every language has every phrase of the English table, with the same arguments and the same thing counted. (A table that lacks one would
// still speak: in English.)
#include <doctest/doctest.h>

#include <set>

#include "assets/assets.h"
#include "words/phrases.h"
#include "words/text.h"

namespace {

words::Phrases table(const std::string& language) {
  auto phrases = words::Phrases::read(assets::table("phrases/" + language + ".toml"), language + ".toml");
  REQUIRE_MESSAGE(phrases.has_value(), phrases.error().what);
  return *std::move(phrases);
}

std::set<std::string> arguments(const words::Phrases::Form& form) {
  std::set<std::string> names;
  for (const std::string& text : {form.one, form.other}) {
    const auto pieces = words::cut(text);
    REQUIRE(pieces.has_value());
    for (const words::Piece& piece : pieces.value())
      if (piece.kind == words::Piece::argument) names.insert(piece.text);
  }
  return names;
}

std::string joined(const std::vector<std::string>& keys) {
  std::string all;
  for (const std::string& key : keys) all += key + ' ';
  return all;
}

}  // namespace

TEST_CASE("every language has every key of English and no other, and is called as its file is") {
  const words::Phrases english = table("en");
  CHECK(assets::languages().size() >= 2);
  for (const std::string_view language : assets::languages()) {
    CAPTURE(language);
    const words::Phrases other = table(std::string(language));
    CHECK(other.language() == language);
    CHECK(joined(words::missing_keys(other, english)) == "");
    CHECK(joined(words::missing_keys(english, other)) == "");
  }
}

TEST_CASE("a phrase has the same arguments in all, and counts by the same") {
  const words::Phrases english = table("en");
  for (const std::string_view language : assets::languages()) {
    const words::Phrases other = table(std::string(language));
    for (const std::string& key : other.keys()) {
      if (!english.has(key)) continue;
      CAPTURE(language);
      CAPTURE(key);
      CHECK(other.form(key).by == english.form(key).by);
      CHECK(arguments(other.form(key)) == arguments(english.form(key)));
    }
  }
}

TEST_CASE("numbers, ordinals and days are Norwegian") {
  const words::Phrases norwegian = table("nb");
  CHECK(norwegian.say("supplies.metres", {{"m", words::Decimal{6.2, 1}}}) == "6,2 m");
  CHECK(norwegian.say("page.start.pass", {{"part", "bord"}, {"pass", words::Ordinal{2}}}) == "Begynn her: bord, andre omgang");
  CHECK(norwegian.say("page.start.pass", {{"part", "bord"}, {"pass", words::Ordinal{21}}}) == "Begynn her: bord, 21. omgang");
  CHECK(norwegian.example("date.full") == "tirsdag 26. januar 2027");
  CHECK(norwegian.say("supplies.balls", {{"n", std::int64_t{1}}}) == "1 n\xC3\xB8ste");
  CHECK(norwegian.say("supplies.balls", {{"n", std::int64_t{2}}}) == "2 n\xC3\xB8ster");
}

TEST_CASE("what a table lacks comes from another") {
  const auto bare = words::Phrases::read("language = \"xx\"\n[phrase.\"page.notes\"]\ntext = \"Zettel\"\n", "xx.toml");
  REQUIRE(bare);
  const words::Phrases both = bare->completed_by(table("en"));
  CHECK(both.language() == "xx");
  CHECK(both.say("page.notes") == "Zettel");
  CHECK(both.say("page.to-be-sure") == "To be sure");
}
