#include "picture/column.h"

#include <numeric>
#include <string_view>

#include "picture/ink.h"

namespace picture {
namespace {

bool starts_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

/// A word wider than the column, in pieces that fit.
std::vector<std::string> in_pieces(const std::string& word, list::TypeStyle style, double width, const list::Measure& measure) {
  std::vector<std::string> pieces;
  std::string piece;
  for (std::size_t i = 0; i < word.size();) {
    std::size_t next = i + 1;
    while (next < word.size() && !starts_letter(word[next])) ++next;
    const std::string longer = piece + word.substr(i, next - i);
    if (!piece.empty() && measure.measure(longer, style).width > width) {
      pieces.push_back(piece);
      piece = word.substr(i, next - i);
    } else {
      piece = longer;
    }
    i = next;
  }
  pieces.push_back(piece);
  return pieces;
}

bool begins_with_figure(const std::string& word) { return !word.empty() && word[0] >= '0' && word[0] <= '9'; }
bool ends_clause(const std::string& word) { return std::string_view(".,;:)").find(word.back()) != std::string_view::npos; }

/// Numbers stay with what they count ("8 threads"), and a last one with the word before it ("there: 1.").
std::vector<std::string> with_their_numbers(const std::vector<std::string>& words) {
  std::vector<std::string> glued;
  bool open = false;
  for (const std::string& word : words) {
    const bool number = begins_with_figure(word);
    if (!glued.empty() && (open || (number && ends_clause(word) && word.size() < 5)) && glued.back().size() + word.size() < 24)
      glued.back() += ' ' + word;
    else
      glued.push_back(word);
    open = number && !ends_clause(word);
  }
  return glued;
}

std::vector<std::string> words_of(const std::string& text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : text) {
    if (c != ' ' && c != '\t' && c != '\r') {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  if (!word.empty()) words.push_back(std::move(word));
  return with_their_numbers(words);
}

void wrap_paragraph(const std::string& text, list::TypeStyle style, double width, const list::Measure& measure,
                    std::vector<std::string>& lines) {
  const double space = measure.measure(" ", style).width;
  std::string line;
  double filled = 0;
  for (const std::string& word : words_of(text)) {
    const double wide = measure.measure(word, style).width;
    if (!line.empty() && filled + space + wide <= width) {
      line += " " + word;
      filled += space + wide;
      continue;
    }
    if (!line.empty()) lines.push_back(line);
    if (wide <= width) {
      line = word;
      filled = wide;
      continue;
    }
    const std::vector<std::string> pieces = in_pieces(word, style, width, measure);
    lines.insert(lines.end(), pieces.begin(), pieces.end() - 1);
    line = pieces.back();
    filled = measure.measure(line, style).width;
  }
  lines.push_back(line);
}

}  // namespace

std::vector<std::string> wrapped(const std::string& text, list::TypeStyle style, double width, const list::Measure& measure) {
  std::vector<std::string> lines;
  std::size_t from = 0;
  while (from <= text.size()) {
    const std::size_t to = std::min(text.find('\n', from), text.size());
    wrap_paragraph(text.substr(from, to - from), style, width, measure, lines);
    from = to + 1;
  }
  return lines;
}

void Column::set(const std::string& text, list::TypeStyle style, list::Colour colour, list::Role role, double indent, bool keep_all) {
  const std::vector<std::string> parts = wrapped(text, style, width_ - indent, measure_);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool keep = keep_all || i == 0 || i + 2 == parts.size();  // no single line of a paragraph on a page of its own
    lines_.push_back({parts[i], {}, style, colour, role, indent, line_height(style), keep && (keep_all || i + 1 < parts.size())});
  }
}

void Column::heading(const std::string& text, list::Colour colour) {
  space(0.6);
  set(text, styles_.heading, colour, list::Role::heading, 0, true);
  lines_.back().height += 0.25 * em(styles_.body);
}

void Column::strong(const std::string& text) {
  space(0.5);
  set(text, styles_.strong, colour::ink, list::Role::heading, 0, true);
}

void Column::paragraph(const std::string& text) {
  if (text.empty()) return;
  set(text, styles_.body, colour::ink, list::Role::text, 0, false);
  lines_.back().height += 0.35 * em(styles_.body);
}

void Column::marked(const std::string& mark, const std::string& text) {
  const std::size_t first = lines_.size();
  const double indent = measure_.measure("00", styles_.strong).width + 0.6 * em(styles_.body);
  set(text, styles_.body, colour::ink, list::Role::text, indent, false);
  lines_[first].mark = mark;
  lines_.back().height += 0.2 * em(styles_.body);
}

void Column::space(double ems) {
  if (lines_.empty()) return;
  lines_.push_back({{}, {}, styles_.body, {}, list::Role::text, 0, ems * em(styles_.body), true});
}

double Column::height() const {
  return std::accumulate(lines_.begin(), lines_.end(), 0.0, [](double sum, const SetLine& line) { return sum + line.height; });
}

void draw_line_of_type(list::List& list, const SetLine& line, Point at) {
  if (line.text.empty()) return;
  const double base = at.y + line_height(line.style) - 0.36 * em(line.style);
  list::TypeStyle number_style = line.style;
  number_style.weight = list::Weight::semibold;
  if (!line.mark.empty()) add_text(list, line.role, {at.x, base}, line.mark, number_style, line.colour);
  add_text(list, line.role, {at.x + line.indent, base}, line.text, line.style, line.colour);
}

void draw_column(list::List& list, const Column& column, Point at) {
  for (const SetLine& line : column.lines()) {
    draw_line_of_type(list, line, at);
    at.y += line.height;
  }
}

}  // namespace picture
