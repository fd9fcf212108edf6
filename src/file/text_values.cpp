// Texts: names, lines, notes, words, colours, prices, times.
#include <fmt/format.h>

#include <algorithm>

#include "file/lines.h"
#include "file/values.h"

namespace file {
namespace {

/// The first byte of a character that cannot stand in one line: C0 and C1 controls, DEL, U+2028, U+2029; npos where there is none.
std::size_t control_in(std::string_view text, bool line_breaks_allowed) {
  for (std::size_t at = 0; at < text.size(); ++at) {
    const auto c = static_cast<unsigned char>(text[at]);
    if (line_breaks_allowed && (c == '\n' || c == '\t')) continue;
    if (c < 0x20 || c == 0x7F) return at;
    if (c == 0xC2 && at + 1 < text.size() && static_cast<unsigned char>(text[at + 1]) < 0xA0) return at;
    if (!line_breaks_allowed && (text.substr(at, 3) == "\u2028" || text.substr(at, 3) == "\u2029")) return at;
  }
  return std::string_view::npos;
}

std::optional<std::string> read_text(const Node& node, int most, bool line_breaks_allowed, FaultList& faults) {
  const auto text = read_any_text(node, faults);
  if (!text) return std::nullopt;
  if (const std::size_t at = control_in(*text, line_breaks_allowed); at != std::string_view::npos) {
    faults.add_within(node, at, 1, (*text)[at] == '\n' ? "a line break" : "a control character",
                      line_breaks_allowed ? "letters, signs and line breaks" : "letters and signs in one line");
    return std::nullopt;
  }
  if (const int length = characters(*text); length > most) {
    faults.add(node, fmt::format("a text of {} characters", length), fmt::format("at most {}", most));
    return std::nullopt;
  }
  return text;
}

bool is_decimal(std::string_view text) {
  const std::size_t point = text.find('.');
  const std::string_view whole = text.substr(0, point), part = point == std::string_view::npos ? "0" : text.substr(point + 1);
  const auto digits = [](std::string_view s) {
    return !s.empty() && s.size() <= 9 && s.find_first_not_of("0123456789") == std::string_view::npos;
  };
  return digits(whole) && digits(part);
}

std::string price_text(const Node& node) {
  if (const auto* whole = node.as<std::int64_t>()) return fmt::format("{}", *whole);
  if (const Text* text = node.as<Text>()) return text->value;
  std::string written;
  if (const auto* decimal = node.as<Decimal>()) written = decimal->written;
  written.erase(std::remove(written.begin(), written.end(), '_'), written.end());
  return !written.empty() && written[0] == '+' ? written.substr(1) : written;
}

}  // namespace

std::optional<std::string> read_any_text(const Node& node, FaultList& faults) {
  if (const Text* text = node.as<Text>()) return text->value;
  faults.add(node, kind_of_value(node), "a text in quotation marks");
  return std::nullopt;
}

std::optional<std::string> read_line(const Node& node, int most, FaultList& faults) { return read_text(node, most, false, faults); }

std::optional<std::string> read_notes(const Node& node, FaultList& faults) { return read_text(node, notes_limit, true, faults); }

bool name_is_right(std::string_view name, base::TextPlace place, int length, FaultList& faults) {
  const auto wrong = [&](std::string found, std::string expected) {
    faults.add(place, length, std::move(found), std::move(expected));
    return false;
  };
  if (name.empty()) return wrong("an empty name", "a name");
  if (name.front() == ' ' || name.back() == ' ') return wrong("a name with a blank before or behind it", "a name without");
  if (name.find('/') != std::string_view::npos) return wrong("a / in a name", "a name without / (it parts the stages of a lesson's work)");
  if (control_in(name, false) != std::string_view::npos) return wrong("a control character in a name", "letters and signs in one line");
  if (characters(name) > name_limit)
    return wrong(fmt::format("a name of {} characters", characters(name)), fmt::format("at most {}", name_limit));
  return true;
}

std::optional<std::string> read_name(const Node& node, FaultList& faults) {
  const auto name = read_any_text(node, faults);
  if (!name || !name_is_right(*name, node.place, node.length, faults)) return std::nullopt;
  return name;
}

std::optional<std::size_t> read_word(const Node& node, const std::vector<std::string>& words, FaultList& faults) {
  const auto word = read_any_text(node, faults);
  if (!word) return std::nullopt;
  const auto found = std::find(words.begin(), words.end(), *word);
  if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
  faults.add(node, shown(*word), one_of(words), faults.nearest(*word, words));
  return std::nullopt;
}

std::optional<std::string> read_colour(const Node& node, FaultList& faults) {
  const auto text = read_any_text(node, faults);
  if (!text) return std::nullopt;
  const bool right = text->size() == 7 && (*text)[0] == '#' && text->find_first_not_of("0123456789abcdefABCDEF", 1) == std::string::npos;
  if (right) return text;
  faults.add(node, shown(*text), "a colour as # and six digits 0-9, A-F: red, green, blue, e.g. \"#F2EBDD\"");
  return std::nullopt;
}

std::optional<std::string> read_price(const Node& node, FaultList& faults) {
  const std::string text = price_text(node);
  if (is_decimal(text)) return text;
  const bool price_like = node.as<Text>() || node.as<std::int64_t>() || node.as<Decimal>();
  std::string with_point = text;
  std::replace(with_point.begin(), with_point.end(), ',', '.');
  faults.add(node, price_like ? shown(text) : kind_of_value(node), "a price such as 4.50, at most 9 digits before and behind the point",
             is_decimal(with_point) ? with_point : "");
  return std::nullopt;
}

std::optional<std::string> read_time(const Node& node, FaultList& faults) {
  if (const Time* time = node.as<Time>(); time && time->second == 0 && time->nanosecond == 0)
    return fmt::format("{:02}:{:02}", time->hour, time->minute);
  constexpr std::string_view expected = "a time from \"00:00\" to \"23:59\" in quotation marks, e.g. \"18:30\"";
  const Text* text = node.as<Text>();
  if (!text) {
    faults.add(node, node.as<Time>() ? "a time with seconds" : kind_of_value(node), std::string(expected));
    return std::nullopt;
  }
  const std::string& t = text->value;
  const auto digit = [&](std::size_t i) { return t[i] >= '0' && t[i] <= '9'; };
  const bool form = t.size() == 5 && t[2] == ':' && digit(0) && digit(1) && digit(3) && digit(4);
  if (form && t.substr(0, 2) < "24" && t[3] < '6') return t;
  faults.add(node, shown(t), std::string(expected));
  return std::nullopt;
}

}  // namespace file
