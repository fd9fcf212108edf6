// The strict reader: each thing that can be wrong with a table, with its place.
#include <doctest/doctest.h>

#include "words/phrases.h"

namespace {

/// The trouble that reading gives, or "fine". The first line of the text is line 1.
std::string trouble(const std::string& toml) {
  const auto phrases = words::Phrases::read(toml, "t.toml");
  return phrases ? "fine" : phrases.error().what;
}

std::string with(const std::string& entry) { return trouble("language = \"en\"\n[phrase.it]\n" + entry); }

}  // namespace

TEST_CASE("a table with nothing but its language is fine") { CHECK(trouble("language = \"en\"\n") == "fine"); }

TEST_CASE("a text and its example have the same arguments") {
  CHECK(with("text = \"{n}\"\nexample = { n = 3 }") == "fine");
  CHECK(with("text = \"Nothing to fill.\"") == "fine");
  CHECK(with("text = \"{n} threads\"") == "t.toml:3:9: found the argument {n}; expected an argument that the example fills");
  CHECK(with("text = \"é {n} of {legz}\"\nexample = { n = 3, legs = 4 }") ==
        "t.toml:3:18: found the argument {legz}; expected an argument that the example fills; did you mean legs?");
  CHECK(with("text = \"{n}\"\nexample = { n = 3, m = 3 }") == "t.toml:4:11: found m in the example; expected only arguments that the text has");
}

TEST_CASE("the place of an argument in a text of several lines is its own") {
  CHECK(with("text = \"\"\"\nFrom {a}\n  to {b}\"\"\"\nexample = { a = 1 }") ==
        "t.toml:5:6: found the argument {b}; expected an argument that the example fills");
}

TEST_CASE("a phrase counts wholly or not at all") {
  CHECK(with("by = \"n\"\none = \"a thread\"\nother = \"{n} threads\"\nexample = { n = 3 }") == "fine");
  CHECK(with("one = \"a thread\"\nother = \"threads\"") == "t.toml:2:9: found the phrase it with one, other; expected either text, or by, one and other");
  CHECK(with("by = \"n\"\ntext = \"{n}\"\nexample = { n = 3 }") ==
        "t.toml:2:9: found the phrase it with by, example, text; expected either text, or by, one and other");
  CHECK(with("") == "t.toml:2:9: found the phrase it with nothing in it; expected either text, or by, one and other");
  CHECK(with("by = \"n\"\none = \"one\"\nother = \"{m}\"\nexample = { m = 3 }") ==
        "t.toml:3:6: found the phrase it counted by n; expected a whole number of that name in the example");
  CHECK(with("by = \"n\"\none = \"one\"\nother = \"{n}\"\nexample = { n = \"3\" }") ==
        "t.toml:3:6: found the phrase it counted by n; expected a whole number of that name in the example");
}

TEST_CASE("braces are looked at when the table is read") {
  CHECK(with("text = \"count {n\"\nexample = { n = 3 }") == "t.toml:3:8: found a { without its }; expected arguments as {name}, a brace itself as {{ or }}");
}

TEST_CASE("arguments of an example have four forms") {
  const std::string forms = "expected words, a whole number, { ordinal = 2 } or { decimal = 1.5, places = 1 }";
  CHECK(with("text = \"{n}\"\nexample = { n = 1.5 }") == "t.toml:4:17: found something else; " + forms);
  CHECK(with("text = \"{n}\"\nexample = { n = [1] }") == "t.toml:4:17: found something else; " + forms);
  CHECK(with("text = \"{n}\"\nexample = { n = { decimal = 1.5 } }") == "t.toml:4:17: found something else; " + forms);
  CHECK(with("text = \"{n}\"\nexample = { n = { ordinal = 1, places = 1 } }") == "t.toml:4:17: found something else; " + forms);
  CHECK(with("text = \"{n}\"\nexample = { n = { ordinal = 0 } }") == "t.toml:4:29: found the number 0; expected a whole number from 1 up");
  CHECK(with("text = \"{n}\"\nexample = { n = { decimal = 1.5, places = 10 } }") == "t.toml:4:43: found the number 10; expected a whole number from 0 to 9");
  CHECK(with("text = \"{n}\"\nexample = { n = { decimal = 1, places = 1 } }") == "t.toml:4:29: found something else; expected a number with a decimal point");
  CHECK(with("text = \"{n}\"\nexample = { n = { ordnal = 1 } }") == "t.toml:4:19: found the key ordnal; expected one of decimal, ordinal, places; did you mean ordinal?");
}

TEST_CASE("unknown keys and wrong sorts of value are said") {
  CHECK(trouble("language = \"en\"\nlangage = \"en\"") ==
        "t.toml:2:1: found the key langage; expected one of decimal_sign, language, ordinal_beyond, ordinals, phrase; did you mean language?");
  CHECK(with("txt = \"a\"") == "t.toml:3:1: found the key txt; expected one of by, example, one, other, text; did you mean text?");
  CHECK(trouble("ordinals = []") == "t.toml:1:1: found no language; expected language = \"...\"");
  CHECK(trouble("language = 3") == "t.toml:1:12: found something else; expected words in quotes");
  CHECK(with("text = \"\"") == "t.toml:3:8: found no words; expected words in quotes");
  CHECK(with("text = 4") == "t.toml:3:8: found something else; expected words in quotes");
  CHECK(with("text = \"{n}\"\nexample = 3") == "t.toml:4:11: found something else; expected the arguments of an example: { n = 3 }");
  CHECK(trouble("language = \"en\"\nphrase = 3") == "t.toml:2:10: found something else; expected phrases as tables: [phrase.\"key\"]");
  CHECK(trouble("language = \"en\"\nphrase.it = \"words\"") == "t.toml:2:13: found something else; expected a table [phrase.\"it\"]");
  CHECK(trouble("language = \"en\"\nordinals = \"first\"") == "t.toml:2:12: found something else; expected a list of words for first, second, third...");
}

TEST_CASE("endings of ordinals hold the number once, and one is for all others") {
  const std::string head = "language = \"en\"\nordinal_beyond = ";
  CHECK(trouble(head + "{ \"\" = \"{n}th\" }") == "fine");
  CHECK(trouble(head + "{ \"1\" = \"{n}st\" }") == "t.toml:2:18: found something else; expected texts by last digits, with one for \"\": { \"\" = \"{n}th\" }");
  CHECK(trouble(head + "{ \"\" = \"th\" }") == "t.toml:2:25: found \"th\"; expected a text with {n} in it, once");
  CHECK(trouble(head + "{ \"\" = \"{n}th\", x = \"{n}\" }") == "t.toml:2:34: found the ending x; expected digits");
}

TEST_CASE("a slip in the TOML itself has its place and stops nothing else") {
  const std::string what = trouble("language = \"en\"\n[phrase.it]\ntext = \"open\n");
  CHECK(what.substr(0, 21) == "t.toml:3:13: found Er");
}
