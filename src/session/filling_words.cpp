#include "session/filling_words.h"

#include <fmt/format.h>

#include <cstdlib>
#include <sstream>

namespace session {
namespace {

using stitch::FillingRule;
using Where = FillingRule::Where;

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t");
  return first == std::string_view::npos ? std::string_view() : text.substr(first, text.find_last_not_of(" \t") + 1 - first);
}

/// Holes, then "turn 4" or "mirror x" where they come again.
bool read_holes(std::string_view words, FillingRule& rule) {
  std::string text(words);
  for (char& c : text) c = c == ',' ? ' ' : c;
  std::istringstream in(text);
  std::vector<int> numbers;
  for (std::string token; in >> token;) {
    std::string more;
    if (token == "turn" || token == "mirror") {
      if (!(in >> more)) return false;
      if (token == "mirror" && more != "x" && more != "y" && more != "xy") return false;
      if (token == "turn" && more != "2" && more != "4") return false;
      if (token == "mirror") rule.mirror = more;
      else rule.turn = more == "2" ? 2 : 4;
      continue;
    }
    if (token.find_first_not_of("-0123456789") != std::string::npos || token.size() > 7) return false;
    numbers.push_back(std::atoi(token.c_str()));
    if (std::abs(numbers.back()) > stitch::coordinate_limit) return false;
  }
  rule.where = Where::at;
  for (std::size_t i = 0; i + 1 < numbers.size(); i += 2) rule.at.push_back({numbers[i], numbers[i + 1]});
  return !numbers.empty() && numbers.size() % 2 == 0;
}

std::optional<FillingRule> rule_of(std::string_view words) {
  FillingRule rule;
  const auto names = stitch::filling_names();
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (words.substr(0, names[i].size()) != names[i]) continue;
    rule.kind = static_cast<stitch::Filling>(i);
    const std::string_view where = trimmed(words.substr(names[i].size()));
    if (where.empty() || where == "all") return rule;
    if (where == "every second") rule.where = Where::every_second;
    else if (!read_holes(where, rule)) return std::nullopt;
    return rule;
  }
  return std::nullopt;
}

}  // namespace

std::string fillings_in_words(const std::vector<FillingRule>& rules) {
  std::string words;
  for (const FillingRule& rule : rules) {
    words += fmt::format("{}{}", words.empty() ? "" : "; ", stitch::filling_names()[static_cast<std::size_t>(rule.kind)]);
    if (rule.where == Where::all) words += " all";
    if (rule.where == Where::every_second) words += " every second";
    for (std::size_t i = 0; i < rule.at.size(); ++i) words += fmt::format("{} {} {}", i > 0 ? "," : "", rule.at[i].x, rule.at[i].y);
    if (rule.turn > 1) words += fmt::format(" turn {}", rule.turn);
    if (!rule.mirror.empty()) words += " mirror " + rule.mirror;
  }
  return words;
}

std::optional<std::vector<FillingRule>> fillings_from_words(std::string_view words) {
  std::vector<FillingRule> rules;
  constexpr std::size_t most = 100;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t end = std::min(words.find(';', at), words.size());
    const std::string_view one = trimmed(words.substr(at, end - at));
    at = end + 1;
    if (one.empty()) continue;
    auto rule = rule_of(one);
    if (!rule || rules.size() == most) return std::nullopt;
    rules.push_back(std::move(*rule));
  }
  return rules;
}

}  // namespace session
