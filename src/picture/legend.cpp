#include "picture/legend.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "picture/column.h"
#include "picture/cut_marks.h"
#include "picture/ink.h"

namespace picture {
namespace {

std::string_view key_of(Mark mark, const Uses& uses) {
  if (const std::string_view key = cut_mark_key(mark); !key.empty()) return key;
  switch (mark) {
    case Mark::up:
      return "page.key.up";
    case Mark::down:
      return "page.key.down";
    case Mark::both:
      return uses.both_example.empty() || uses.both_example[0] % 2 == 0 ? "page.key.both.down-first" : "page.key.both.up-first";
    case Mark::twice_up:
      return uses.often ? "page.key.often-up" : "page.key.twice-up";
    case Mark::twice_down:
      return uses.often ? "page.key.often-down" : "page.key.twice-down";
    case Mark::now:
      return "page.key.now";
    case Mark::now_double:
      return "page.key.now-double";
    case Mark::before:
      return "page.key.before";
    case Mark::before_double:
      return "page.key.before-double";
    case Mark::later:
      return "page.key.later";
    case Mark::back:
      return "page.key.back";
    case Mark::needle:
      return "page.key.needle";
    case Mark::cut:
      return "page.key.cut";
    case Mark::landmark:
      return "page.key.landmark";
    case Mark::ruler:
      return "page.key.ruler";
    case Mark::proof:
      return "page.key.proof";
    case Mark::fold:
      return "page.key.fold";
    case Mark::cloth_edge:
      return "page.key.cloth-edge";
    case Mark::frame:
      return "page.key.frame";
    case Mark::place:
      return "page.key.place";
    case Mark::many:
      return "page.key.many";
    case Mark::corner:
      return "page.key.corner";
    default:
      return "page.key.up";
  }
}

constexpr double gap = 6;  // mm between columns

}  // namespace

double Legend::line() const { return line_height(sheet_->styles.body) * (sheet_->styles.key_aside ? 0.95 : 1.08); }
double Legend::unit() const { return sheet_->styles.body.size_pt / 12 * 3.9; }

Legend::Legend(const Sheet& sheet, const Uses& uses, double width)
    : sheet_(&sheet), width_(width), sign_(sheet.styles.body.size_pt * 0.95) {
  const double column_least = 4.0 * sheet.styles.body.size_pt;
  const int columns = std::max(1, static_cast<int>((width + gap) / (column_least + gap)));
  const double room = (width - (columns - 1) * gap) / columns - sign_;
  words::Arguments arguments;
  if (uses.both_example.size() > 1)
    arguments = {{"first", std::int64_t{uses.both_example[0]}}, {"second", std::int64_t{uses.both_example[1]}}};
  arguments.insert_or_assign("letters", sheet.all_of(uses.many));
  for (const Mark mark : uses.marks)
    entries_.push_back({mark, wrapped(sheet.say(key_of(mark, uses), arguments), sheet.styles.body, room, sheet.measure)});
  const int rows = std::accumulate(entries_.begin(), entries_.end(), 0, [](int sum, const Entry& e) { return sum + e.rows(); });
  const int a_column = (rows + columns - 1) / columns;
  int filled = a_column;
  for (const Entry& entry : entries_) {
    if (filled + entry.rows() > a_column + 1 || (filled >= a_column && static_cast<int>(columns_.size()) < columns)) {
      if (static_cast<int>(columns_.size()) < columns) columns_.emplace_back(), filled = 0;
    }
    columns_.back().push_back(entry);
    filled += entry.rows();
  }
}

double Legend::height() const {
  int most = 0;
  for (const auto& column : columns_) {
    int rows = 0;
    for (const Entry& entry : column) rows += entry.rows();
    most = std::max(most, rows);
  }
  return entries_.empty() ? 0 : line_height(sheet_->styles.strong) + 0.25 * em(sheet_->styles.body) + most * line();
}

void Legend::draw(list::List& list, Point at) const {
  if (entries_.empty()) return;
  add_text(list, list::Role::heading, {at.x, at.y + line_height(sheet_->styles.strong) - 0.36 * em(sheet_->styles.strong)},
           sheet_->say("page.key"), sheet_->styles.strong, colour::ink);
  const double top = at.y + line_height(sheet_->styles.strong) + 0.25 * em(sheet_->styles.body);
  const auto columns = static_cast<double>(columns_.size());
  const double wide = (width_ - (columns - 1) * gap) / columns;
  for (std::size_t c = 0; c < columns_.size(); ++c) {
    Point here{at.x + static_cast<double>(c) * (wide + gap), top};
    for (const Entry& entry : columns_[c]) {
      draw_sign(list, entry.mark, {here.x + (sign_ - 2) / 2, here.y + line() / 2});
      for (const std::string& words : entry.lines) {
        add_text(list, list::Role::text, {here.x + sign_, here.y + line() - 0.40 * em(sheet_->styles.body)}, words, sheet_->styles.body,
                 colour::ink);
        here.y += line();
      }
    }
  }
}

namespace {

// A hole's use that the key names; nothing for the other marks.
std::optional<HoleUse> hole_use(Mark mark) {
  switch (mark) {
    case Mark::up:
      return HoleUse::up;
    case Mark::down:
      return HoleUse::down;
    case Mark::both:
      return HoleUse::both;
    case Mark::twice_up:
      return HoleUse::twice_up;
    case Mark::twice_down:
      return HoleUse::twice_down;
    default:
      return std::nullopt;
  }
}

// How a stitch that the key names is drawn; its width in parts of the key's unit.
struct StitchSign {
  Stage stage;
  bool doubled;
  double width;
};

std::optional<StitchSign> stitch_sign(Mark mark) {
  switch (mark) {
    case Mark::now:
      return StitchSign{Stage::now, false, 0.36};
    case Mark::now_double:
      return StitchSign{Stage::now, true, 0.36};
    case Mark::before:
      return StitchSign{Stage::before, false, 0.5};
    case Mark::before_double:
      return StitchSign{Stage::before, true, 0.5};
    case Mark::later:
      return StitchSign{Stage::later, false, ratio::later};
    default:
      return std::nullopt;
  }
}

void draw_ruler_sign(list::List& list, Point left, Point right) {
  add_line(list, list::Role::ruler, left, right, 0.38, colour::accent);
  for (const double t : {0.0, 1.0 / 3, 2.0 / 3, 1.0}) {
    const Point p = between(left, right, t);
    add_line(list, list::Role::ruler, {p.x, p.y - 0.8}, {p.x, p.y + 0.8}, 0.3, colour::accent);
  }
}

void draw_cut_sign(list::List& list, Point left, Point right) {
  add_line(list, list::Role::caution, left, right, 0.6, colour::accent);
  for (const double t : {0.1, 0.35, 0.6, 0.85}) {
    const Point p = between(left, right, t);
    add_line(list, list::Role::caution, p, {p.x + 0.8, p.y + 1.4}, 0.26, colour::accent);
  }
}

void draw_needle_sign(list::List& list, Point left, Point right, double unit) {
  add_line(list, list::Role::key_mark, left, right, 0.26 * unit, colour::ink);
  add_line(list, list::Role::key_mark, between(left, right, 0.06), between(left, right, 0.22), 0.08 * unit, colour::white);
}

void draw_fold_sign(list::List& list, Point left, Point right) {
  for (const double t : {0.0, 0.55})
    add_line(list, list::Role::landmark, between(left, right, t), between(left, right, t + 0.45), 0.3, colour::accent, list::Cap::flat);
}

}  // namespace

void Legend::draw_sign(list::List& list, Mark mark, Point middle) const {
  const double u = unit(), half = (sign_ - 3) / 2;
  const Point left{middle.x - half, middle.y}, right{middle.x + half, middle.y};
  if (!cut_mark_key(mark).empty()) return draw_cut_mark_sign(list, mark, {left.x, middle.y - 1.7, right.x - left.x, 3.4}, u, sheet_->styles.number, sheet_->measure);
  if (const auto use = hole_use(mark)) return draw_hole(list, middle, *use, u);
  if (const auto sign = stitch_sign(mark)) return draw_stitch(list, left, right, sign->width * u, 0, sign->stage, sign->doubled);
  switch (mark) {
    case Mark::back:
      return draw_back(list, {left, right}, u);
    case Mark::needle:
      return draw_needle_sign(list, left, right, u);
    case Mark::cut:
      return draw_cut_sign(list, left, right);
    case Mark::landmark:
      return draw_landmark(list, left, right, 0.5 * u, 0);
    case Mark::ruler:
      return draw_ruler_sign(list, left, right);
    case Mark::proof:
      return draw_proof(list, middle, 0.34 * u);
    case Mark::fold:
      return draw_fold_sign(list, left, right);
    case Mark::cloth_edge:
      return add_line(list, list::Role::key_mark, left, right, 0.5, colour::ink, list::Cap::flat);
    case Mark::frame:
      return add_frame(list, list::Role::key_mark, {middle.x - 2.2, middle.y - 1.6, 4.4, 3.2}, 0.4, 0.3, colour::ink);
    case Mark::place:
      return add_disc(list, list::Role::key_mark, middle, 1.25, colour::white, 0.35, colour::ink);
    case Mark::many:
      return draw_one_of_many(list, middle);
    case Mark::corner:
      return draw_corner_mark(list, middle);
    default:
      break;
  }
}

}  // namespace picture
