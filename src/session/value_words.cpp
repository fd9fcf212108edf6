#include "session/value_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

#include "session/filling_words.h"

namespace session {
namespace {

constexpr std::size_t shortest_run = 4;      // equal numbers written as "4 x 2"
constexpr std::size_t longest_list = 20000;  // numbers; more is not meant

bool bounded(const stitch::KeySpec& spec) { return spec.least != 0 || spec.most != 0; }

bool within(const stitch::KeySpec& spec, int number) {
  const int least = bounded(spec) ? spec.least : -stitch::coordinate_limit, most = bounded(spec) ? spec.most : stitch::coordinate_limit;
  return least <= number && number <= most;
}

std::vector<std::string_view> tokens_of(std::string_view words) {
  std::vector<std::string_view> tokens;
  constexpr std::string_view gaps = " ,;[]()\t";
  for (std::size_t at = 0; (at = words.find_first_not_of(gaps, at)) != std::string_view::npos;) {
    const std::size_t end = std::min(words.size(), words.find_first_of(gaps, at));
    tokens.push_back(words.substr(at, end - at));
    at = end;
  }
  return tokens;
}

std::optional<int> number_of(std::string_view token) {
  int number = 0;
  const auto [end, error] = std::from_chars(token.data(), token.data() + token.size(), number);
  if (error != std::errc() || end != token.data() + token.size()) return std::nullopt;
  return number;
}

/// All tokens as numbers, "9 x 4" as nine fours; nothing where one is neither.
std::optional<std::vector<int>> numbers_of(std::string_view words) {
  const auto tokens = tokens_of(words);
  std::vector<int> numbers;
  for (std::size_t i = 0; i < tokens.size(); ++i) {
    if (tokens[i] == "x" && !numbers.empty() && i + 1 < tokens.size()) {
      const auto times = numbers.back();
      const auto what = number_of(tokens[++i]);
      if (!what || times < 1 || static_cast<std::size_t>(times) > longest_list) return std::nullopt;
      numbers.pop_back();
      numbers.insert(numbers.end(), static_cast<std::size_t>(times), *what);
    } else {
      const auto number = number_of(tokens[i]);
      if (!number) return std::nullopt;
      numbers.push_back(*number);
    }
    if (numbers.size() > longest_list) return std::nullopt;
  }
  return numbers;
}

std::optional<std::vector<cloth::Hole>> holes_of(std::string_view words) {
  const auto numbers = numbers_of(words);
  if (!numbers || numbers->empty() || numbers->size() % 2 != 0) return std::nullopt;
  std::vector<cloth::Hole> holes;
  for (std::size_t i = 0; i < numbers->size(); i += 2) holes.push_back({(*numbers)[i], (*numbers)[i + 1]});
  const auto fits = [](cloth::Hole h) { return std::abs(h.x) <= stitch::coordinate_limit && std::abs(h.y) <= stitch::coordinate_limit; };
  return std::all_of(holes.begin(), holes.end(), fits) ? std::optional(std::move(holes)) : std::nullopt;
}

std::string list_in_words(const std::vector<int>& numbers) {
  std::string words;
  for (std::size_t i = 0; i < numbers.size();) {
    std::size_t end = i + 1;
    while (end < numbers.size() && numbers[end] == numbers[i]) ++end;
    if (end - i < shortest_run) end = i + 1;
    words += words.empty() ? "" : " ";
    words += end - i > 1 ? fmt::format("{} x {}", end - i, numbers[i]) : fmt::format("{}", numbers[i]);
    i = end;
  }
  return words;
}

}  // namespace

std::string in_words(const stitch::Value& value) {
  if (const auto* hole = std::get_if<cloth::Hole>(&value)) return fmt::format("{} {}", hole->x, hole->y);
  if (const auto* number = std::get_if<int>(&value)) return fmt::format("{}", *number);
  if (const auto* flag = std::get_if<bool>(&value)) return *flag ? "true" : "false";
  if (const auto* numbers = std::get_if<std::vector<int>>(&value)) return list_in_words(*numbers);
  if (const auto* rules = std::get_if<std::vector<stitch::FillingRule>>(&value)) return fillings_in_words(*rules);
  std::string words;
  const auto add = [&](const std::string& item) { words += (words.empty() ? "" : ", ") + item; };
  if (const auto* holes = std::get_if<std::vector<cloth::Hole>>(&value))
    for (const cloth::Hole hole : *holes) add(in_words(stitch::Value(hole)));
  else if (const auto* names = std::get_if<std::vector<std::string>>(&value))
    for (const std::string& name : *names) add(name);
  else
    words = std::get<std::string>(value);
  return words;
}

std::optional<stitch::Value> from_words(const stitch::KeySpec& spec, std::string_view words) {
  using stitch::KeyType;
  const bool known = std::find(spec.words.begin(), spec.words.end(), words) != spec.words.end();
  switch (spec.type) {
    case KeyType::word:
      return known ? std::optional<stitch::Value>(std::string(words)) : std::nullopt;
    case KeyType::path:
      return std::string(words);
    case KeyType::whole_or_word:
      if (known) return std::string(words);
      [[fallthrough]];
    case KeyType::whole: {
      const auto numbers = numbers_of(words);
      return numbers && numbers->size() == 1 && within(spec, numbers->front()) ? std::optional<stitch::Value>(numbers->front())
                                                                               : std::nullopt;
    }
    case KeyType::wholes: {
      const auto numbers = numbers_of(words);
      if (!numbers || numbers->empty()) return std::nullopt;
      return std::all_of(numbers->begin(), numbers->end(), [&](int n) { return within(spec, n); }) ? std::optional<stitch::Value>(*numbers)
                                                                                                   : std::nullopt;
    }
    case KeyType::hole: {
      const auto holes = holes_of(words);
      return holes && holes->size() == 1 ? std::optional<stitch::Value>(holes->front()) : std::nullopt;
    }
    case KeyType::holes: {
      auto holes = holes_of(words);
      return holes ? std::optional<stitch::Value>(std::move(*holes)) : std::nullopt;
    }
    case KeyType::fillings: {
      auto rules = fillings_from_words(words);
      return rules ? std::optional<stitch::Value>(std::move(*rules)) : std::nullopt;
    }
    case KeyType::flag:
      return words == "true" || words == "false" ? std::optional<stitch::Value>(words == "true") : std::nullopt;
    case KeyType::parts:
      return std::nullopt;  // names may hold anything: they are chosen, not typed
  }
  return std::nullopt;
}

}  // namespace session
