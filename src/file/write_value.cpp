#include "file/write_value.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>

#include "file/lines.h"

namespace file {
namespace {

enum class Breaks { escaped, kept };

void add_escaped(std::string& out, char c, Breaks breaks) {
  switch (c) {
    case '"': out += "\\\""; return;
    case '\\': out += "\\\\"; return;
    case '\b': out += "\\b"; return;
    case '\t': out += "\\t"; return;
    case '\n': out += breaks == Breaks::kept ? "\n" : "\\n"; return;
    case '\f': out += "\\f"; return;
    case '\r': out += "\\r"; return;
    default: break;
  }
  const auto u = static_cast<unsigned char>(c);
  if (u < 0x20 || u == 0x7F) out += fmt::format("\\u{:04X}", u);
  else out += c;
}

std::string one_line(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) add_escaped(out, c, Breaks::escaped);
  return out + '"';
}

std::string several_lines(std::string_view text) {
  std::string out = "\"\"\"\n";
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool lone_mark = text[i] == '"' && i + 1 < text.size() && text[i + 1] != '"';
    if (lone_mark && (i == 0 || text[i - 1] != '"')) out += '"';
    else add_escaped(out, text[i], Breaks::kept);
  }
  return out + "\"\"\"";
}

std::string shortest(double value) {
  if (value == 0) return "0";  // also for -0.0
  std::array<char, 400> digits{};  // the longest double has 309 digits before its point, the smallest some 340 behind it
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed).ptr;
  return {digits.data(), end};
}

/// A price keeps the zeros behind its point.
std::string decimal(std::string_view key, const Decimal& number) {
  if (key != "price") return shortest(number.value);
  std::string written = number.written;
  written.erase(std::remove_if(written.begin(), written.end(), [](char c) { return c == '_' || c == '+'; }), written.end());
  return written;
}

std::string write(std::string_view key, const Node& node);

struct Writer {
  std::string_view key;
  std::string operator()(const Text& text) const { return one_line(text.value); }
  std::string operator()(std::int64_t number) const { return fmt::format("{}", number); }
  std::string operator()(const Decimal& number) const { return decimal(key, number); }
  std::string operator()(bool flag) const { return flag ? "true" : "false"; }
  std::string operator()(const base::Date& date) const { return base::iso(date); }
  std::string operator()(const Time& t) const { return fmt::format("{:02}:{:02}:{:02}", t.hour, t.minute, t.second); }
  std::string operator()(const Moment&) const { return {}; }  // no key takes one
  std::string operator()(const List& list) const {
    std::string out = "[";
    for (std::size_t i = 0; i < list.items.size(); ++i) out += (i > 0 ? ", " : "") + write(key, list.items[i]);
    return out + ']';
  }
  std::string operator()(const Table& table) const {
    std::string out = "{";
    for (std::size_t i = 0; i < table.entries.size(); ++i)
      out += (i > 0 ? ", " : " ") + write_pair(table.entries[i].key, table.entries[i].node);
    return out + " }";
  }
};

std::string write(std::string_view key, const Node& node) { return std::visit(Writer{key}, node.value); }

std::string item_a_line(std::string_view key, const List& list) {
  std::string out = "[\n";
  for (const Node& item : list.items) out += "  " + write(key, item) + ",\n";
  return out + ']';
}

}  // namespace

std::string write_key(std::string_view key) {
  constexpr std::string_view bare = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
  return !key.empty() && key.find_first_not_of(bare) == std::string_view::npos ? std::string(key) : one_line(key);
}

std::string write_pair(std::string_view key, const Node& node) {
  const std::string opening = write_key(key) + " = ";
  const Text* text = node.as<Text>();
  if (text && text->value.find('\n') != std::string::npos) return opening + several_lines(text->value);
  const std::string pair = opening + write(key, node);
  const List* list = node.as<List>();
  return list && !list->items.empty() && characters(pair) > line_width ? opening + item_a_line(key, *list) : pair;
}

}  // namespace file
