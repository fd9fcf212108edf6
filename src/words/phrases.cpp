#include "words/phrases.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/require.h"
#include "words/text.h"

namespace words {
namespace {

/// Of the program, not of the table; the words are made only when they are needed.
void mistake(const std::string& what) { base::require(false, what); }

std::vector<Piece> pieces_of(std::string_view text) {
  auto pieces = cut(text);
  base::require(pieces.has_value(), "a phrase's text was looked through when it was read");
  return *std::move(pieces);
}

const std::string& text_for(const Phrases::Form& form, std::string_view key, const Arguments& arguments) {
  if (form.by.empty()) return form.other;
  const auto counted = arguments.find(form.by);
  if (counted == arguments.end() || !std::holds_alternative<std::int64_t>(counted->second))
    mistake(fmt::format("the phrase {} counts by {}, which must be a whole number", key, form.by));
  return std::get<std::int64_t>(counted->second) == 1 ? form.one : form.other;
}

std::string reworded_text(const std::string& text, const std::function<std::string(std::string_view)>& change) {
  std::vector<Piece> pieces = pieces_of(text);
  for (Piece& piece : pieces)
    if (piece.kind == Piece::literal) piece.text = change(piece.text);
  return joined(pieces);
}

}  // namespace

const Phrases::Form& Phrases::form(std::string_view key) const {
  const auto found = forms_.find(key);
  if (found == forms_.end()) mistake(fmt::format("no phrase has the key {}", key));
  return found->second;
}

std::string Phrases::say(std::string_view key, const Arguments& arguments) const {
  std::string said;
  for (const Piece& piece : pieces_of(text_for(form(key), key, arguments))) {
    if (piece.kind == Piece::literal) {
      said += piece.text;
      continue;
    }
    const auto given = arguments.find(piece.text);
    if (given == arguments.end()) mistake(fmt::format("the phrase {} wants the argument {}", key, piece.text));
    said += written(given->second);
  }
  return said;
}

bool Phrases::has(std::string_view key) const { return forms_.contains(key); }

std::vector<std::string> Phrases::keys() const {
  std::vector<std::string> keys;
  for (const auto& [key, form] : forms_) keys.push_back(key);
  return keys;
}

std::string Phrases::example(std::string_view key) const { return say(key, form(key).example); }

Phrases Phrases::completed_by(const Phrases& other) const {
  Phrases both = *this;
  both.forms_.insert(other.forms_.begin(), other.forms_.end());
  return both;
}

Phrases Phrases::reworded(const std::function<std::string(std::string_view)>& change) const {
  Phrases other = *this;
  for (std::string& word : other.ordinals_) word = change(word);
  for (auto& [digits, text] : other.beyond_) text = reworded_text(text, change);
  for (auto& [key, form] : other.forms_) {
    form.one = reworded_text(form.one, change);
    form.other = reworded_text(form.other, change);
  }
  return other;
}

std::string Phrases::ordinal(std::int64_t n) const {
  base::require(n >= 1, "ordinals begin at the first");
  if (static_cast<std::uint64_t>(n) <= ordinals_.size()) return ordinals_[static_cast<std::size_t>(n - 1)];
  const std::string digits = std::to_string(n);
  for (std::size_t from = 0; from <= digits.size(); ++from) {  // the longest ending first
    const auto found = beyond_.find(std::string_view(digits).substr(from));
    if (found == beyond_.end()) continue;
    std::string said;
    for (const Piece& piece : pieces_of(found->second)) said += piece.kind == Piece::argument ? digits : piece.text;
    return said;
  }
  return digits;  // a table without endings of its own
}

std::string Phrases::written(const Argument& argument) const {
  if (const auto* text = std::get_if<std::string>(&argument)) return *text;
  if (const auto* number = std::get_if<std::int64_t>(&argument)) return std::to_string(*number);
  if (const auto* nth = std::get_if<Ordinal>(&argument)) return ordinal(nth->n);
  const Decimal& decimal = std::get<Decimal>(argument);
  base::require(std::isfinite(decimal.value) && decimal.places >= 0 && decimal.places <= 9, "a decimal is a number with 0 to 9 places");
  std::string digits = fmt::format("{:.{}f}", decimal.value, decimal.places);
  if (digits.find_first_not_of("-0.") == std::string::npos && digits[0] == '-') digits.erase(0, 1);
  const std::size_t point = digits.find('.');
  if (point != std::string::npos) digits.replace(point, 1, decimal_sign_);
  return digits;
}

std::vector<std::string> missing_keys(const Phrases& has, const Phrases& wants) {
  std::vector<std::string> missing = wants.keys();
  std::erase_if(missing, [&](const std::string& key) { return has.has(key); });
  return missing;
}

}  // namespace words
