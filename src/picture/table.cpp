#include "picture/table.h"

#include <algorithm>

#include "picture/column.h"
#include "picture/ink.h"

namespace picture {
namespace {

constexpr double pad = 0.9;  // mm above and below a line of type

}  // namespace

SetTable::SetTable(const Sheet& sheet, const Table& table, double width) : sheet_(sheet), width_(width), heads_(table.heads) {
  const Styles& s = sheet.styles;
  for (const std::string& head : heads_) column_ = std::max(column_, sheet.measure.measure(head, s.body).width);
  for (const Table::Row& row : table.rows)
    for (const int n : row.numbers) column_ = std::max(column_, sheet.measure.measure(std::to_string(n), s.strong).width);
  column_ += 4;
  label_width_ = width - column_ * static_cast<double>(heads_.size());
  title_ = wrapped(table.title, s.strong, label_width_ - 1, sheet.measure);
  if (!table.note.empty()) note_ = wrapped(table.note, s.body, width, sheet.measure);
  height_ = static_cast<double>(title_.size()) * line_height(s.strong) + pad;
  for (const Table::Row& row : table.rows) {
    Row set{wrapped(row.label, row.total ? s.strong : s.body, label_width_ - 1, sheet.measure), {}, row.total};
    for (const int n : row.numbers) set.numbers.push_back(std::to_string(n));
    height_ += row_height(set);
    rows_.push_back(std::move(set));
  }
  if (!note_.empty()) height_ += static_cast<double>(note_.size()) * line_height(s.body) + 2 * pad;
}

double SetTable::row_height(const Row& row) const {
  return static_cast<double>(row.label.size()) * line_height(sheet_.styles.body) + 2 * pad;
}

void SetTable::draw(list::List& list, Point at) const {
  const Styles& s = sheet_.styles;
  const double drop = line_height(s.body) - 0.36 * em(s.body);
  const auto column_end = [&](std::size_t c) { return at.x + label_width_ + column_ * static_cast<double>(c + 1); };
  double y = at.y;
  for (const std::string& line : title_) {
    add_text(list, list::Role::heading, {at.x, y + drop}, line, s.strong, colour::ink);
    y += line_height(s.strong);
  }
  for (std::size_t c = 0; c < heads_.size(); ++c)
    add_text(list, list::Role::text, {column_end(c), y - line_height(s.body) + drop}, heads_[c], s.body, colour::ink, list::Align::right);
  y += pad;
  for (const Row& row : rows_) {
    add_line(list, list::Role::rule_line, {at.x, y}, {at.x + width_, y}, row.total ? 0.35 : 0.15, row.total ? colour::ink : colour::rule,
             list::Cap::flat);
    double base = y + pad + drop;
    for (const std::string& line : row.label) {
      add_text(list, list::Role::text, {at.x, base}, line, row.total ? s.strong : s.body, colour::ink);
      base += line_height(s.body);
    }
    for (std::size_t c = 0; c < row.numbers.size(); ++c)
      add_text(list, list::Role::text, {column_end(c), base - line_height(s.body)}, row.numbers[c], s.strong, colour::ink,
               list::Align::right);
    y += row_height(row);
  }
  y += 2 * pad;
  for (const std::string& line : note_) {
    add_text(list, list::Role::text, {at.x, y + drop}, line, s.body, colour::ink);
    y += line_height(s.body);
  }
}

}  // namespace picture
