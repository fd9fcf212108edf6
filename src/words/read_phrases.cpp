// Reads a table of phrases and looks it through: what it lets pass can be said without a further check. Stops at the first fault it meets.
#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <optional>

#include "base/fault.h"
#include "base/nearest.h"
#include "words/phrases.h"
#include "words/text.h"

namespace words {

/// Thrown and caught in this file only: the first fault ends the reading.
struct BadTable {
  base::Fault fault;
};

namespace {

using Names = std::vector<std::string>;

base::TextPlace place_of(const toml::source_position& at) { return {static_cast<int>(at.line), static_cast<int>(at.column)}; }

[[noreturn]] void bad(const toml::source_region& where, std::string found, std::string expected, std::string suggestion = {}) {
  throw BadTable{{place_of(where.begin), 1, std::move(found), std::move(expected), std::move(suggestion)}};
}

void known_keys_only(const toml::table& table, const Names& known) {
  for (auto&& [key, value] : table)
    if (std::find(known.begin(), known.end(), key.str()) == known.end())
      bad(key.source(), fmt::format("the key {}", key.str()), fmt::format("one of {}", fmt::join(known, ", ")), base::nearest_word(key.str(), known));
}

template <class T>
T value_of(const toml::node& node, std::string_view expected) {
  const auto value = node.value_exact<T>();
  if (!value) bad(node.source(), "something else", std::string(expected));
  return *value;
}

std::string text_of(const toml::node& node) {
  std::string text = value_of<std::string>(node, "words in quotes");
  if (text.empty()) bad(node.source(), "no words", "words in quotes");
  return text;
}

std::string text_of(const toml::table& table, std::string_view key) {
  const toml::node* node = table.get(key);
  return node ? text_of(*node) : std::string{};
}

Names arguments_in(const std::string& text, const toml::node& node) {
  const auto pieces = cut(text);
  if (!pieces) bad(node.source(), pieces.error().what, "arguments as {name}, a brace itself as {{ or }}");
  Names names;
  for (const Piece& piece : *pieces)
    if (piece.kind == Piece::argument) names.push_back(piece.text);
  return names;
}

Argument argument_of(const toml::node& node) {
  constexpr std::string_view forms = "words, a whole number, { ordinal = 2 } or { decimal = 1.5, places = 1 }";
  if (const auto text = node.value_exact<std::string>()) return *text;
  if (const auto number = node.value_exact<std::int64_t>()) return *number;
  const toml::table* table = node.as_table();
  if (!table) bad(node.source(), "something else", std::string(forms));
  known_keys_only(*table, {"decimal", "ordinal", "places"});
  const toml::node *ordinal = table->get("ordinal"), *decimal = table->get("decimal"), *places = table->get("places");
  if (ordinal && table->size() == 1) {
    const auto n = value_of<std::int64_t>(*ordinal, "a whole number from 1 up");
    if (n < 1) bad(ordinal->source(), fmt::format("the number {}", n), "a whole number from 1 up");
    return Ordinal{n};
  }
  if (!decimal || !places || table->size() != 2) bad(node.source(), "something else", std::string(forms));
  const auto digits = value_of<std::int64_t>(*places, "a whole number from 0 to 9");
  if (digits < 0 || digits > 9) bad(places->source(), fmt::format("the number {}", digits), "a whole number from 0 to 9");
  return Decimal{value_of<double>(*decimal, "a number with a decimal point"), static_cast<int>(digits)};
}

}  // namespace

class TableReader {
 public:
  TableReader(std::string_view toml, std::string_view file_name) : root_(toml::parse(toml, file_name)), source_(toml) {}

  Phrases read() {
    known_keys_only(root_, {"decimal_sign", "language", "ordinal_beyond", "ordinals", "phrase"});
    phrases_.language_ = required_text("language");
    if (root_.contains("decimal_sign")) phrases_.decimal_sign_ = text_of(root_, "decimal_sign");
    read_ordinals();
    read_beyond();
    if (const toml::node* node = root_.get("phrase")) {
      const toml::table* all = node->as_table();
      if (!all) bad(node->source(), "something else", "phrases as tables: [phrase.\"key\"]");
      for (auto&& [key, value] : *all) phrases_.forms_.emplace(key.str(), form(key, value));
    }
    return std::move(phrases_);
  }

 private:
  std::string required_text(std::string_view key) const {
    if (const toml::node* node = root_.get(key)) return text_of(*node);
    throw BadTable{{{1, 1}, 1, "no " + std::string(key), fmt::format("{} = \"...\"", key), {}}};
  }

  void read_ordinals() {
    const toml::node* node = root_.get("ordinals");
    if (!node) return;
    const toml::array* words = node->as_array();
    if (!words) bad(node->source(), "something else", "a list of words for first, second, third...");
    for (const toml::node& word : *words) phrases_.ordinals_.push_back(text_of(word));
  }

  void read_beyond() {
    const toml::node* node = root_.get("ordinal_beyond");
    if (!node) return;
    const toml::table* endings = node->as_table();
    if (!endings || !endings->contains("")) bad(node->source(), "something else", "texts by last digits, with one for \"\": { \"\" = \"{n}th\" }");
    for (auto&& [digits, text] : *endings) {
      if (digits.str().find_first_not_of("0123456789") != std::string_view::npos)
        bad(digits.source(), fmt::format("the ending {}", digits.str()), "digits");
      const std::string said = text_of(text);
      if (arguments_in(said, text) != Names{"n"}) bad(text.source(), fmt::format("\"{}\"", said), "a text with {n} in it, once");
      phrases_.beyond_.emplace(digits.str(), said);
    }
  }

  Phrases::Form form(const toml::key& key, const toml::node& node) const {
    const toml::table* table = node.as_table();
    if (!table) bad(node.source(), "something else", fmt::format("a table [phrase.\"{}\"]", key.str()));
    known_keys_only(*table, {"by", "example", "one", "other", "text"});
    const bool counts = table->contains("one") || table->contains("other") || table->contains("by");
    const bool all = table->contains("one") && table->contains("other") && table->contains("by");
    if (counts ? !all || table->contains("text") : !table->contains("text"))
      bad(key.source(), fmt::format("the phrase {} with {}", key.str(), keys_of(*table)), "either text, or by, one and other");
    Phrases::Form form{text_of(*table, "one"), text_of(*table, counts ? "other" : "text"), text_of(*table, "by"), {}};
    if (const toml::node* example = table->get("example")) form.example = example_of(*example);
    hold_together(*table, key, form);
    return form;
  }

  static std::string keys_of(const toml::table& table) {
    Names names;
    for (auto&& [key, value] : table) names.emplace_back(key.str());
    return names.empty() ? "nothing in it" : fmt::format("{}", fmt::join(names, ", "));
  }

  static Arguments example_of(const toml::node& node) {
    const toml::table* table = node.as_table();
    if (!table) bad(node.source(), "something else", "the arguments of an example: { n = 3 }");
    Arguments example;
    for (auto&& [name, value] : *table) example.emplace(name.str(), argument_of(value));
    return example;
  }

  /// Text and example have the same arguments, and what is counted is a whole number.
  void hold_together(const toml::table& table, const toml::key& key, const Phrases::Form& form) const {
    Names used;
    if (!form.by.empty()) used.push_back(form.by);
    for (const std::string_view text_key : {"text", "one", "other"}) {
      const toml::node* node = table.get(text_key);
      if (!node) continue;
      for (const std::string& name : arguments_in(text_of(*node), *node)) {
        if (!form.example.contains(name)) no_example(*node, name, form.example);
        used.push_back(name);
      }
    }
    for (const auto& [name, value] : form.example)
      if (std::find(used.begin(), used.end(), name) == used.end())
        bad(table.get("example")->source(), fmt::format("{} in the example", name), "only arguments that the text has", base::nearest_word(name, used));
    if (form.by.empty()) return;
    const auto counted = form.example.find(form.by);
    if (counted == form.example.end() || !std::holds_alternative<std::int64_t>(counted->second))
      bad(table.get("by")->source(), fmt::format("the phrase {} counted by {}", key.str(), form.by), "a whole number of that name in the example");
  }

  /// The fault stands at the argument's own place in the text.
  [[noreturn]] void no_example(const toml::node& text, const std::string& name, const Arguments& example) const {
    Names names;
    for (const auto& [given, value] : example) names.push_back(given);
    base::Fault fault{place_of(text.source().begin), 1, fmt::format("the argument {{{}}}", name), "an argument that the example fills",
                      base::nearest_word(name, names)};
    find_in_source(fault.place, fmt::format("{{{}}}", name));
    throw BadTable{fault};
  }

  /// Moves the place on to where the words next stand in the source.
  void find_in_source(base::TextPlace& place, std::string_view words) const {
    std::size_t at = 0;
    for (int line = 1; line < place.line; ++line) at = source_.find('\n', at) + 1;
    base::TextPlace here{place.line, 1};
    for (; at < source_.size(); ++at) {
      if (here >= place && source_.substr(at).starts_with(words)) {
        place = here;
        return;
      }
      if (source_[at] == '\n') here = {here.line + 1, 1};
      else if ((static_cast<unsigned char>(source_[at]) & 0xC0) != 0x80) ++here.column;
    }
  }

  toml::table root_;
  std::string_view source_;
  Phrases phrases_;
};

base::Result<Phrases> Phrases::read(std::string_view toml, std::string_view file_name) {
  base::Fault fault;
  try {
    return TableReader(toml, file_name).read();
  } catch (const BadTable& table) {
    fault = table.fault;
  } catch (const toml::parse_error& error) {
    fault = {place_of(error.source().begin), 1, std::string(error.description()), {}, {}};
  }
  std::string what = base::render(file_name, {}, fault);
  what.pop_back();  // its line break
  return base::trouble(base::TroubleKind::input, what);
}

}  // namespace words
