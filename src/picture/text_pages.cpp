#include "picture/text_pages.h"

#include <fmt/format.h>

#include <algorithm>

namespace picture {
namespace {

constexpr double margin = 14, head_top = 11, gap = 4, foot = 16;  // mm

}  // namespace

TextPages::TextPages(std::string course, std::string title, Styles styles, PageSize page, const list::Measure& measure)
    : course_(std::move(course)), title_(std::move(title)), styles_(styles), page_(page), measure_(measure) {}

void TextPages::add(const Telling& telling) {
  const double width = std::min(page_.width - 2 * margin, styles_.text_most_mm);
  for (std::size_t i = 0; i < telling.pieces().size(); ++i) {
    Piece piece;
    piece.columns.emplace_back(0, set(telling.parted(i).second.parted(1).first, width, styles_, measure_));
    piece.height = piece.columns[0].second.height() + 0.4 * em(styles_.body);
    piece.keep = telling.pieces()[i].how == Telling::How::heading || telling.pieces()[i].how == Telling::How::strong;
    piece.before = piece.keep && !pieces_.empty() ? 0.8 * em(styles_.body) : 0;
    pieces_.push_back(std::move(piece));
  }
}

void TextPages::add_row(const std::vector<std::string>& cells, const std::vector<double>& shares, Weight weight) {
  const double width = page_.width - 2 * margin;
  Piece piece;
  piece.ruled = true;
  double left = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    Column column(shares[i] * width - gap, styles_, measure_);
    if (!cells[i].empty()) weight == Weight::strong ? column.strong(cells[i]) : column.paragraph(cells[i]);
    piece.height = std::max(piece.height, column.height() + 0.7 * em(styles_.body));
    piece.columns.emplace_back(left, std::move(column));
    left += shares[i] * width;
  }
  pieces_.push_back(std::move(piece));
}

double TextPages::top() const { return head_top + line_height(styles_.head) + 7; }

list::List TextPages::fresh(std::size_t number, std::size_t of) const {
  list::List list;
  list.width = page_.width;
  list.height = page_.height;
  list.title = title_;
  list::TypeStyle head = styles_.head;
  head.weight = list::Weight::semibold;
  const double base = head_top + line_height(styles_.head) - 0.36 * em(styles_.head);
  add_text(list, list::Role::text, {margin, base}, course_, head, colour::ink);
  add_line(list, list::Role::rule_line, {margin, base + 2.4}, {page_.width - margin, base + 2.4}, 0.4, colour::ink, list::Cap::flat);
  add_text(list, list::Role::text, {page_.width - margin, page_.height - 9}, fmt::format("{} / {}", number, of), styles_.head, colour::ink,
           list::Align::right);
  return list;
}

double TextPages::kept_together(std::size_t i) const {
  double needed = pieces_[i].before + pieces_[i].height;
  for (std::size_t next = i; pieces_[next].keep && next + 1 < pieces_.size(); ++next)
    needed += pieces_[next + 1].before + pieces_[next + 1].height;
  return needed;
}

std::vector<std::vector<std::size_t>> TextPages::parted(double first_top) const {
  std::vector<std::vector<std::size_t>> pages(1);
  double y = first_top;
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    if (y + kept_together(i) > page_.height - foot && !pages.back().empty()) {
      pages.emplace_back();
      y = top();
    }
    y += (pages.back().empty() ? 0 : pieces_[i].before) + pieces_[i].height;
    pages.back().push_back(i);
  }
  return pages;
}

void TextPages::draw(list::List& list, const std::vector<std::size_t>& pieces, double y) const {
  for (const std::size_t i : pieces) {
    const Piece& piece = pieces_[i];
    if (i != pieces.front()) y += piece.before;
    for (const auto& [left, column] : piece.columns) draw_column(list, column, {margin + left, y});
    y += piece.height;
    const double line = y - 0.3 * em(styles_.body);
    if (piece.ruled)
      add_line(list, list::Role::rule_line, {margin, line}, {page_.width - margin, line}, 0.2, colour::rule, list::Cap::flat);
  }
}

std::vector<list::List> TextPages::finish() {
  Styles large = styles_;
  large.heading = styles_.title;
  Column title(page_.width - 2 * margin, large, measure_);
  title.heading(title_);
  const double first_top = top() + title.height() + 2;
  const std::vector<std::vector<std::size_t>> pages = parted(first_top);
  std::vector<list::List> lists;
  for (std::size_t p = 0; p < pages.size(); ++p) {
    lists.push_back(fresh(p + 1, pages.size()));
    if (p == 0) draw_column(lists.back(), title, {margin, top()});
    draw(lists.back(), pages[p], p == 0 ? first_top : top());
  }
  return lists;
}

}  // namespace picture
