#include "file/syntax_fault.h"

#include <fmt/format.h>

#include <array>

#include "file/slip.h"

namespace file {
namespace {

/// What stands between the first and the last ' of the reason.
std::string_view named(std::string_view reason) {
  const std::size_t first = reason.find('\''), last = reason.rfind('\'');
  return first == last ? std::string_view{} : reason.substr(first + 1, last - first - 1);
}

std::string since(const Slip& slip, std::string_view what) {
  const Statement* s = slip.statement();
  return s && slip.lines.place_of(slip.byte).line > s->first_line ? fmt::format("{} that begins in line {}", what, s->first_line)
                                                                  : std::string(what);
}

base::Fault key_again(const Slip& slip) {
  const std::string_view name = named(slip.reason);
  if (name.empty())
    return {slip.lines.place_of(slip.byte), 1, "a key that has a value already, used as a table", "each name for one thing", ""};
  const Statement* s = slip.statement();
  const bool in_braces = !s || s->depth > 0;
  const base::TextPlace place = slip.lines.place_of(in_braces ? slip.byte : s->begin);
  return {place, in_braces ? 1 : characters(name), fmt::format("the key \"{}\" a second time", name), "each key once in its table", ""};
}

/// The place of the header that the reason names: the library tells either its own or that of the next line.
base::TextPlace header_place(const Slip& slip, std::string_view name) {
  const auto& all = slip.outline.statements;
  const Statement* s = slip.statement();
  if (!s) return slip.lines.place_of(slip.byte);
  const std::string_view opening = slip.text().substr(s->begin, name.size() + 2);
  const bool own = s->header && opening.find(name) != std::string_view::npos;
  return slip.lines.place_of(!own && s->begin == slip.byte && s != all.data() ? std::prev(s)->begin : s->begin);
}

base::Fault header_again(const Slip& slip) {
  const std::string_view name = named(slip.reason);
  const base::TextPlace place = header_place(slip, name);
  const int length = slip.lines.rest_of_line(place);
  const bool many = name == "part" || name == "lesson" || name == "student";
  if (slip.says("array-of-tables") && slip.says("existing table"))
    return {place, length, fmt::format("[[{0}]] after [{0}]", name),
            many ? "double brackets, each time" : fmt::format("[{}] once, in single brackets", name), ""};
  if (slip.says("existing array") && slip.says("as table"))
    return {place, length, fmt::format("[{}]", name), fmt::format("[[{}]] in double brackets, each time", name), ""};
  if (slip.says("as table") || slip.says("array-of-tables"))
    return {place, length, fmt::format("the table [{}] where there is a value already", name), "each name for one thing", ""};
  if (many) return {place, length, fmt::format("[{}] a second time", name), fmt::format("[[{}]] in double brackets, each time", name), ""};
  return {place, length, fmt::format("the table [{}] a second time", name), "each table once", ""};
}

base::Fault pair_slip(const Slip& slip) {
  if (slip.says("cannot redefine")) return key_again(slip);
  if (slip.says("expected '='")) {
    const bool letter = !slip.at_file_end() && static_cast<unsigned char>(slip.text()[slip.byte]) >= 0x80;
    return slip.here(letter ? std::string(plain_name) : "= and a value behind the key");
  }
  const std::string_view text = slip.text();
  const std::size_t before = slip.byte == 0 ? std::string_view::npos : text.find_last_not_of(" \t\r\n", slip.byte - 1);
  const bool after_sign = before != std::string_view::npos && text[before] == '=';
  if (slip.says("expected value") || slip.says("end-of-file"))
    return slip.here(after_sign ? "a value behind the =" : "= and a value behind the key");
  const auto digit = [&](std::size_t at) { return at < text.size() && text[at] >= '0' && text[at] <= '9'; };
  if (slip.byte > 0 && !slip.at_file_end() && text[slip.byte] == ',' && digit(slip.byte - 1) && digit(slip.byte + 1))
    return slip.here("a decimal point in a number, e.g. 8.7");
  return slip.here("the end of the line behind the value, or a comment after #");
}

base::Fault header_slip(const Slip& slip) {
  if (slip.says("cannot redefine")) return header_again(slip);
  if (slip.says("cannot insert")) {
    const base::TextPlace place = header_place(slip, named(slip.reason));
    return {place, slip.lines.rest_of_line(place), fmt::format("the table [{}]", named(slip.reason)),
            "nothing more for a table that is written in { }", ""};
  }
  if (slip.says("blank bare keys")) return slip.here("the name of a table between the brackets");
  if (slip.says("contiguous")) return slip.here("two brackets without a blank between them: [[part]]");
  if (slip.says("comment or whitespace")) return slip.here("the end of the line behind the table's name, or a comment after #");
  return slip.here("] behind the table's name");
}

base::Fault text_slip(const Slip& slip) {
  if (slip.at_file_end()) return slip.here(since(slip, "the closing quotation mark of the text"));
  if (slip.at_line_end()) return slip.here("the closing quotation mark of the text");
  if (slip.says("escape sequence") || slip.scope == "unicode scalar sequence" || slip.says("backslash")) {
    base::Fault fault = slip.here("\\\\ for a backslash itself, \\\" for a quotation mark, \\n for a new line");
    fault.found += " behind a backslash";
    return fault;
  }
  return slip.here("letters, digits and signs");
}

base::Fault list_slip(const Slip& slip) {
  if (slip.says("saw comma")) return slip.here("a value between two commas");
  return slip.here(since(slip, "a comma, or ] to close the list"));
}

base::Fault braces_slip(const Slip& slip) {
  if (slip.at_line_end()) return slip.here("} in the same line: a table in { } stands on one line");
  if (slip.says("dangling comma")) return slip.here("a key behind the comma, or no comma");
  return slip.here("a comma, a key, or } to close the table");
}

struct Scope {
  std::string_view name;
  base::Fault (*tell)(const Slip&);
};

base::Fault tell(const Slip& slip) {
  static constexpr std::array<Scope, 18> scopes{{
      {"value", value_slip}, {"boolean", value_slip}, {"floating-point", value_slip}, {"hexadecimal floating-point", value_slip},
      {"decimal integer", value_slip}, {"hexadecimal integer", value_slip}, {"octal integer", value_slip}, {"binary integer", value_slip},
      {"date", value_slip}, {"time", value_slip}, {"date-time", value_slip}, {"date-time offset", value_slip},
      {"key-value pair", pair_slip}, {"table header", header_slip}, {"string", text_slip}, {"literal string", text_slip},
      {"array", list_slip}, {"inline table", braces_slip}}};
  if (slip.says("space or tab")) return slip.here("an ordinary blank");
  if (slip.says("'\\n' after '\\r'") || slip.says("vertical tabs")) return slip.here("an ordinary line end");
  for (const Scope& scope : scopes)
    if (scope.name == slip.scope) return scope.tell(slip);
  if (slip.scope == "unicode scalar sequence") return text_slip(slip);
  if (slip.scope == "key") return slip.here(std::string(plain_name));
  if (slip.scope == "comment") return slip.here("letters, digits and signs");
  return slip.here("a key, a table in [ ], or a comment after #");
}

}  // namespace

base::Fault syntax_fault(std::string_view description, base::TextPlace at, const Lines& lines, const Outline& outline) {
  constexpr std::string_view opening = "Error while parsing ";
  std::string_view scope, reason = description;
  if (description.substr(0, opening.size()) == opening) {
    const std::size_t colon = description.find(": ");
    if (colon != std::string_view::npos) {
      scope = description.substr(opening.size(), colon - opening.size());
      reason = description.substr(colon + 2);
    }
  }
  return tell({scope, reason, lines.byte_of(at), lines, outline});
}

}  // namespace file
