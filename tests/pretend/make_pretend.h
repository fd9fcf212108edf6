// A pretend language made from a table of phrases: other letters, longer words, a bracket at each end of every run. Whatever a page shows
// in plain letters did not come from the table; what is too long for its place shows too. All its letters are in the font of the pages.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "words/phrases.h"

namespace pretend {

inline constexpr std::array<std::string_view, 26> small_letters{"á", "ƀ", "ç", "đ", "é", "ƒ", "ĝ", "ĥ", "í", "ĵ", "ķ", "ĺ", "ɱ",
                                                                "ñ", "ó", "þ", "ɋ", "ŕ", "š", "ţ", "ú", "ṽ", "ŵ", "ẋ", "ý", "ž"};
inline constexpr std::array<std::string_view, 26> large_letters{"Á", "Ƀ", "Ç", "Đ", "É", "Ƒ", "Ĝ", "Ĥ", "Í", "Ĵ", "Ķ", "Ĺ", "Ṁ",
                                                                "Ñ", "Ó", "Þ", "Ɋ", "Ŕ", "Š", "Ţ", "Ú", "Ṽ", "Ŵ", "Ẋ", "Ý", "Ž"};

/// "From " is "[Fŕóóɱ ]" with the letters above: vowels twice, everything that is no plain letter as it is.
inline std::string pretend_words(std::string_view words) {
  std::string made = "[";
  for (const char c : words) {
    const bool vowel = std::string_view("aeiouAEIOU").find(c) != std::string_view::npos;
    for (int times = vowel ? 2 : 1; times > 0; --times) {
      if (c >= 'a' && c <= 'z') made += small_letters[static_cast<std::size_t>(c - 'a')];
      else if (c >= 'A' && c <= 'Z') made += large_letters[static_cast<std::size_t>(c - 'A')];
      else made += c;
    }
  }
  return made + "]";
}

inline words::Phrases make_pretend(const words::Phrases& phrases) { return phrases.reworded(pretend_words); }

/// Runs of plain letters, in order: what did not come from the table. Arguments that a test puts in itself (titles, names of parts)
/// are best written in figures.
inline std::vector<std::string> plain_words(std::string_view text) {
  std::vector<std::string> runs;
  bool within = false;
  for (const char c : text) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    if (plain && !within) runs.emplace_back();
    if (plain) runs.back() += c;
    within = plain;
  }
  return runs;
}

}  // namespace pretend
