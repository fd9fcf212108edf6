#include "file/fault_list.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/nearest.h"
#include "file/lines.h"

namespace file {

void FaultList::add(base::TextPlace place, int length, std::string found, std::string expected, std::string suggestion) {
  faults_.push_back({place, std::max(1, length), std::move(found), std::move(expected), std::move(suggestion)});
}

void FaultList::add(const Node& node, std::string found, std::string expected, std::string suggestion) {
  add(node.place, node.length, std::move(found), std::move(expected), std::move(suggestion));
}

void FaultList::add_key(const Entry& entry, std::string found, std::string expected, std::string suggestion) {
  add(entry.place, entry.length, std::move(found), std::move(expected), std::move(suggestion));
}

void FaultList::add_within(const Node& text, std::size_t offset, std::size_t length, std::string found, std::string expected,
                           std::string suggestion) {
  const Text* value = text.as<Text>();
  if (!value || !value->plain || offset > value->value.size())
    return add(text, std::move(found), std::move(expected), std::move(suggestion));
  const std::string_view all = value->value;
  const int column = text.place.column + 1 + characters(all.substr(0, offset));
  add({text.place.line, column}, characters(all.substr(offset, length)), std::move(found), std::move(expected), std::move(suggestion));
}

bool FaultList::gives_up() const {
  constexpr std::size_t comparison_limit = 300000;
  return compared_ > comparison_limit;
}

std::string FaultList::nearest(std::string_view word, const std::vector<std::string>& candidates) {
  if (gives_up()) return {};
  compared_ += candidates.size();
  return base::nearest_word(word, candidates);
}

base::Faults FaultList::take() {
  std::stable_sort(faults_.begin(), faults_.end(), [](const base::Fault& a, const base::Fault& b) { return a.place < b.place; });
  if (faults_.size() > fault_limit + 1) {
    const std::size_t more = faults_.size() - fault_limit;
    faults_.resize(fault_limit + 1);
    faults_.back() = {faults_.back().place, 1, fmt::format("{} further faults from here on", more), "those above to be put right first",
                      ""};
  }
  return std::move(faults_);
}

std::string shown(std::string_view text) {
  constexpr int longest = 40;
  std::string out = "\"";
  int n = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const auto c = static_cast<unsigned char>(text[at]);
    if ((c & 0xC0) != 0x80 && n++ == longest) return out + "...\"";
    if (c == '\n') out += "\\n";
    else if (c == '\t') out += "\\t";
    else if (c < 0x20 || c == 0x7F) out += fmt::format("\\u{:04X}", c);
    else out += text[at];
  }
  return out + "\"";
}

std::string kind_of_value(const Node& node) {
  struct Names {
    std::string operator()(const Text&) const { return "a text"; }
    std::string operator()(std::int64_t) const { return "a whole number"; }
    std::string operator()(const Decimal&) const { return "a number with decimals"; }
    std::string operator()(bool) const { return "true or false"; }
    std::string operator()(const base::Date&) const { return "a date"; }
    std::string operator()(const Time&) const { return "a time"; }
    std::string operator()(const Moment&) const { return "a date with a time"; }
    std::string operator()(const List&) const { return "a list"; }
    std::string operator()(const Table&) const { return "a table"; }
  };
  return std::visit(Names{}, node.value);
}

std::string one_of(const std::vector<std::string>& words) {
  std::string out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) out += i + 1 == words.size() ? " or " : ", ";
    out += fmt::format("\"{}\"", words[i]);
  }
  return out;
}

}  // namespace file
