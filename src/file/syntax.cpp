#include "file/syntax.h"

#include <toml++/toml.h>

#include <algorithm>

#include "file/syntax_fault.h"

namespace file {
namespace {

base::TextPlace place_of(const toml::source_position& at) { return {static_cast<int>(at.line), static_cast<int>(at.column)}; }

class Converter {
 public:
  explicit Converter(const Lines& lines) : lines_(lines) {}

  Table table(const toml::table& from) const {
    Table to;
    to.in_braces = from.is_inline();
    std::vector<std::pair<const toml::key*, const toml::node*>> order;
    for (auto&& [key, node] : from) order.emplace_back(&key, &node);
    std::sort(order.begin(), order.end(), [](const auto& a, const auto& b) {
      return std::pair(place_of(a.first->source().begin), a.first->str()) < std::pair(place_of(b.first->source().begin), b.first->str());
    });
    for (const auto& [key, value] : order)
      to.entries.push_back({std::string(key->str()), place_of(key->source().begin), length(key->source()), node(*value)});
    return to;
  }

 private:
  int length(const toml::source_region& region) const {
    if (region.begin.line == region.end.line)
      return std::max(1, static_cast<int>(region.end.column) - static_cast<int>(region.begin.column));
    return std::max(1, lines_.rest_of_line(place_of(region.begin)));
  }

  Node node(const toml::node& from) const {
    Node to;
    to.place = place_of(from.source().begin);
    to.length = length(from.source());
    from.visit([&](const auto& value) { fill(to, value); });
    return to;
  }

  void fill(Node& to, const toml::table& from) const { to.value = table(from); }
  void fill(Node& to, const toml::array& from) const {
    List list;
    list.items.reserve(from.size());
    for (const toml::node& item : from) list.items.push_back(node(item));
    to.value = std::move(list);
  }
  void fill(Node& to, const toml::value<std::string>& from) const {
    const bool one_line = from.source().begin.line == from.source().end.line;
    to.value = Text{from.get(), one_line && to.length == characters(from.get()) + 2};
  }
  void fill(Node& to, const toml::value<std::int64_t>& from) const { to.value = from.get(); }
  void fill(Node& to, const toml::value<double>& from) const {
    const std::size_t begin = lines_.byte_of(to.place);
    to.value = Decimal{from.get(), std::string(lines_.text().substr(begin, static_cast<std::size_t>(to.length)))};
  }
  void fill(Node& to, const toml::value<bool>& from) const { to.value = from.get(); }
  void fill(Node& to, const toml::value<toml::date>& from) const {
    const toml::date& d = from.get();
    to.value = base::Date{std::chrono::year{d.year}, std::chrono::month{d.month}, std::chrono::day{d.day}};
  }
  void fill(Node& to, const toml::value<toml::time>& from) const {
    const toml::time& t = from.get();
    to.value = Time{t.hour, t.minute, t.second, static_cast<int>(t.nanosecond)};
  }
  void fill(Node& to, const toml::value<toml::date_time>&) const { to.value = Moment{}; }

  const Lines& lines_;
};

}  // namespace

Parsed parse(const Lines& lines, const Outline& outline) {
  try {
    return {Converter(lines).table(toml::parse(lines.text(), std::string_view{})), std::nullopt};
  } catch (const toml::parse_error& error) {
    return {{}, syntax_fault(error.description(), place_of(error.source().begin), lines, outline)};
  } catch (const std::exception& error) {
    return {{}, base::Fault{{}, 1, std::string("a file that cannot be read (") + error.what() + ")", "a smaller file", ""}};
  }
}

}  // namespace file
