// The table of the program itself, and the pretend language made from it.
#include <doctest/doctest.h>

#include "assets/assets.h"
#include "pretend/make_pretend.h"

namespace {

words::Phrases english() {
  auto phrases = words::Phrases::read(assets::table("phrases/en.toml"), "assets/phrases/en.toml");
  REQUIRE_MESSAGE(phrases.has_value(), phrases.error().what);
  return *std::move(phrases);
}

}  // namespace

TEST_CASE("every phrase says its example, without a brace, a double blank or a blank at an end") {
  const words::Phrases phrases = english();
  for (const std::string& key : phrases.keys()) {
    CAPTURE(key);
    const std::string said = phrases.example(key);
    CHECK(said.find_first_of("{}") == std::string::npos);
    CHECK(said.find("  ") == std::string::npos);
    CHECK_FALSE(said.empty());
    CHECK(said == said.substr(said.find_first_not_of(" \n"), said.find_last_not_of(" \n") + 1 - said.find_first_not_of(" \n")));
  }
}

TEST_CASE("keys are small letters, digits, hyphens and ways of the chart, parted by dots") {
  for (const std::string& key : english().keys()) {
    CAPTURE(key);
    CHECK(key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-.NESW") == std::string::npos);
  }
}

TEST_CASE("days have twelve months and seven weekdays") {
  const words::Phrases phrases = english();
  for (int i = 1; i <= 12; ++i) CHECK(phrases.has("month." + std::to_string(i)));
  for (int i = 1; i <= 7; ++i) CHECK(phrases.has("weekday." + std::to_string(i)));
  CHECK_FALSE(phrases.has("month.13"));
  CHECK(phrases.say("weekday.1") == "Monday");  // ISO 8601: Monday is 1
  CHECK(phrases.example("date.full") == "Tuesday 26 January 2027");
}

TEST_CASE("a list is built from the last two on") {
  const words::Phrases phrases = english();
  const std::string front = phrases.say("list.comma", {{"first", "cloth"}, {"second", "needles"}});
  CHECK(phrases.say("list.and", {{"first", front}, {"second", "thread"}}) == "cloth, needles and thread");
}

TEST_CASE("the pretend language has every key, is longer, and shows what did not come from it") {
  const words::Phrases phrases = english(), other = pretend::make_pretend(phrases);
  CHECK(words::missing_keys(other, phrases).empty());
  for (const std::string& key : phrases.keys()) {
    CAPTURE(key);
    words::Arguments figures = phrases.form(key).example;
    for (auto& [name, value] : figures)
      if (std::holds_alternative<std::string>(value)) value = "12";
    CHECK(pretend::plain_words(other.say(key, figures)).empty());
    const std::string said = phrases.say(key, figures);
    const bool has_words = !pretend::plain_words(said).empty();
    CHECK(other.say(key, figures).size() >= said.size() + (has_words ? 3 : 0));
  }
  CHECK(other.say("list.and", {{"first", "ring 1"}, {"second", "{}"}}) == "ring 1[ ááñđ ]{}");
  CHECK(pretend::plain_words("[ĺóóƀ ]ring [ááñđ ]A4") == std::vector<std::string>{"ring", "A"});
}
