// What a table says: arguments, plurals, ordinals, decimals; a table of another language; large first letters.
#include "words/phrases.h"

#include <doctest/doctest.h>
#include <fmt/format.h>

using words::Argument;
using words::Decimal;
using words::Ordinal;
using words::Phrases;

namespace {

constexpr std::string_view head = R"(
language = "en"
ordinals = ["first", "second", "third"]
ordinal_beyond = { "" = "{n}th", "1" = "{n}st", "2" = "{n}nd", "3" = "{n}rd", "11" = "{n}th", "12" = "{n}th", "13" = "{n}th" }
)";

Phrases table(std::string_view entries, std::string_view before = head) {
  auto phrases = Phrases::read(std::string(before) + std::string(entries), "t.toml");
  REQUIRE_MESSAGE(phrases.has_value(), phrases.error().what);
  return *std::move(phrases);
}

Phrases one_argument() { return table("[phrase.it]\ntext = \"<{it}>\"\nexample = { it = 1 }\n"); }
std::string said(const Argument& it) { return one_argument().say("it", {{"it", it}}); }

}  // namespace

TEST_CASE("arguments are put in by name, in the order of the text") {
  const Phrases phrases = table("[phrase.\"count-in\"]\ntext = \"From {landmark} count {legs}; {legs}.\"\nexample = { legs = \"4 up\", landmark = \"the edge\" }\n");
  CHECK(phrases.say("count-in", {{"landmark", "the star"}, {"legs", "9 down"}}) == "From the star count 9 down; 9 down.");
  CHECK(phrases.example("count-in") == "From the edge count 4 up; 4 up.");
}

TEST_CASE("an argument's own braces are not looked at again") { CHECK(said("{it} {{") == "<{it} {{>"); }

TEST_CASE("whole numbers are figures") {
  CHECK(said(std::int64_t{0}) == "<0>");
  CHECK(said(std::int64_t{2'000'000}) == "<2000000>");
  CHECK(said(std::int64_t{-7}) == "<-7>");
}

TEST_CASE("what is counted chooses between one and other") {
  const Phrases phrases = table("[phrase.threads]\nby = \"n\"\none = \"a thread\"\nother = \"{n} threads\"\nexample = { n = 3 }\n");
  CHECK(phrases.say("threads", {{"n", std::int64_t{1}}}) == "a thread");
  CHECK(phrases.say("threads", {{"n", std::int64_t{0}}}) == "0 threads");
  CHECK(phrases.say("threads", {{"n", std::int64_t{21}}}) == "21 threads");
  CHECK(phrases.example("threads") == "3 threads");
}

TEST_CASE("ordinals are words at first, figures with their ending beyond") {
  CHECK(said(Ordinal{1}) == "<first>");
  CHECK(said(Ordinal{3}) == "<third>");
  const std::pair<std::int64_t, std::string_view> figures[] = {{4, "4th"},     {10, "10th"},   {11, "11th"},   {12, "12th"},   {13, "13th"},  {20, "20th"},
                                                               {21, "21st"},   {22, "22nd"},   {23, "23rd"},   {24, "24th"},   {101, "101st"}, {111, "111th"},
                                                               {112, "112th"}, {113, "113th"}, {121, "121st"}, {1003, "1003rd"}, {2012, "2012th"}};
  for (const auto& [n, words] : figures) CHECK(said(Ordinal{n}) == fmt::format("<{}>", words));
}

TEST_CASE("another language needs no code: its endings and its decimal sign are data") {
  const Phrases phrases = table("[phrase.it]\ntext = \"{it}\"\nexample = { it = 1 }\n",
                                "language = \"nb\"\ndecimal_sign = \",\"\nordinals = [\"første\", \"andre\"]\nordinal_beyond = { \"\" = \"{n}.\" }\n");
  CHECK(phrases.language() == "nb");
  CHECK(phrases.say("it", {{"it", Ordinal{2}}}) == "andre");
  CHECK(phrases.say("it", {{"it", Ordinal{21}}}) == "21.");
  CHECK(phrases.say("it", {{"it", Decimal{12.34, 1}}}) == "12,3");
}

TEST_CASE("a table without ordinals says figures") {
  CHECK(table("[phrase.it]\ntext = \"{it}\"\nexample = { it = 1 }\n", "language = \"xx\"\n").say("it", {{"it", Ordinal{2}}}) == "2");
}

TEST_CASE("decimals have so many places and never a minus before nothing") {
  CHECK(said(Decimal{115.4545, 2}) == "<115.45>");
  CHECK(said(Decimal{2, 1}) == "<2.0>");
  CHECK(said(Decimal{7.6, 0}) == "<8>");
  CHECK(said(Decimal{-0.04, 1}) == "<0.0>");
  CHECK(said(Decimal{-0.06, 1}) == "<-0.1>");
  CHECK(said(Decimal{0.999, 2}) == "<1.00>");
}

TEST_CASE("examples are written as their arguments are") {
  const Phrases phrases = table("[phrase.it]\ntext = \"{a}|{b}|{c}|{d}\"\nexample = { a = \"words\", b = 3, c = { ordinal = 2 }, d = { decimal = 1.5, places = 2 } }\n");
  CHECK(phrases.form("it").example == words::Arguments{{"a", "words"}, {"b", std::int64_t{3}}, {"c", Ordinal{2}}, {"d", Decimal{1.5, 2}}});
  CHECK(phrases.example("it") == "words|3|second|1.50");
}

TEST_CASE("keys are sorted, and what another table lacks is named") {
  const Phrases more = table("[phrase.b]\ntext = \"B\"\n[phrase.\"a.x\"]\ntext = \"A\"\n[phrase.a]\ntext = \"A\"\n");
  const Phrases fewer = table("[phrase.a]\ntext = \"A\"\n[phrase.z]\ntext = \"Z\"\n");
  CHECK(more.keys() == std::vector<std::string>{"a", "a.x", "b"});
  CHECK(more.has("a.x"));
  CHECK_FALSE(more.has("a.y"));
  CHECK(words::missing_keys(fewer, more) == std::vector<std::string>{"a.x", "b"});
  CHECK(words::missing_keys(more, more).empty());
}

TEST_CASE("reworded changes words, not arguments, keys or figures") {
  const Phrases phrases = table("[phrase.it]\nby = \"n\"\none = \"one {{it}}\"\nother = \"{n} of {m}\"\nexample = { n = 2, m = { ordinal = 2 } }\n");
  const Phrases other = phrases.reworded([](std::string_view words) { return fmt::format("({})", words); });
  CHECK(other.example("it") == "2( of )(second)");
  CHECK(other.say("it", {{"n", std::int64_t{1}}}) == "(one {it})");
  CHECK(other.say("it", {{"n", std::int64_t{5}}, {"m", Ordinal{5}}}) == "5( of )5(th)");
  CHECK(phrases.example("it") == "2 of second");
}

TEST_CASE("the first letter is made large in ASCII and Latin-1, nothing else") {
  const std::pair<std::string, std::string> pairs[] = {{"", ""},         {"a", "A"},           {"zoo zoo", "Zoo zoo"}, {"Zoo", "Zoo"}, {"4 up", "4 up"},
                                                       {"'tis", "'tis"}, {"æra", "Æra"},       {"øye", "Øye"},         {"åk", "Åk"},   {"éa", "Éa"},
                                                       {"ÿa", "Ÿa"},     {"÷2", "÷2"},         {"×2", "×2"},           {"Åk", "Åk"},   {"ßa", "ßa"},
                                                       {"ōa", "ōa"},     {"\xC3", "\xC3"}};
  for (const auto& [small, large] : pairs) CHECK(words::capitalised(small) == large);
}
