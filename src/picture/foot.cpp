#include "picture/foot.h"

#include <algorithm>
#include <cmath>

#include "picture/cut_pages.h"
#include "picture/facts.h"
#include "picture/ink.h"
#include "picture/tell.h"

namespace picture {
namespace {

constexpr double gap = 8;            // mm between map and key
constexpr double caution_pad = 2.4;  // mm round the cautions

Column cautions_of(const Sheet& sheet) {
  Column column(sheet.width() - 2 * caution_pad, sheet.styles, sheet.measure);
  column.paragraph(sentences({sheet.say("page.caution.title.sentence"), sentences(say::cutting_cautions(sheet.voice))}));
  return column;
}

std::vector<cloth::Hole> corners_of(const Sheet& sheet) {
  std::vector<cloth::Hole> corners;
  for (const guide::Mark& mark : sheet.plan.marks)
    if (mark.lesson == sheet.lesson.number) corners.push_back(mark.hole);
  return corners;
}

}  // namespace

Foot::Foot(const Sheet& sheet, const DesignMap& map, const Block* first, const Block* last) : sheet_(sheet), design_(map) {
  order_.width = 62;
  order_.height = 52;
  Uses uses;
  bool corners = false, cutting = false;
  for (const Block* block = first; block != last; ++block) {
    uses.add(block->uses);
    order_.frames.insert(order_.frames.end(), block->frames.begin(), block->frames.end());
    scales_.insert(scales_.end(), block->scales.begin(), block->scales.end());
    gridded_ = gridded_ || block->gridded;
    corners = corners || block->corners;
    cutting = cutting || block->cutting;
  }
  if (corners) order_.corners = corners_of(sheet);
  if (!order_.frames.empty() || !order_.corners.empty()) {
    map_ = map.outline(order_);
    uses.add(map_->uses);
  }
  if (cutting) cautions_.emplace(cautions_of(sheet));
  set_key(uses, first, last);
  lines_ = line_words();
}

double Foot::cautions_height(const Sheet& sheet) { return cautions_of(sheet).height() + 2 * caution_pad + 4; }

double Foot::cautions_height() const { return cautions_ ? cautions_->height() + 2 * caution_pad + 4 : 0; }

/// In a frame of the accent, thicker on the left, so that it is seen first of all.
void Foot::draw_cautions(list::List& list, Point at) const {
  const Rect rect{at.x, at.y, sheet_.width(), cautions_height() - 4};
  add_frame(list, list::Role::caution, rect, 0, 0.4, colour::accent);
  add_line(list, list::Role::caution, {at.x, at.y}, {at.x, at.y + rect.h}, 1.4, colour::accent, list::Cap::flat);
  draw_column(list, *cautions_, {at.x + caution_pad + 0.6, at.y + caution_pad});
}

double Foot::map_room() const { return map_ ? std::max(map_->width, 40.0) + gap : 0; }

/// Beside the first block that has room for it, else here.
void Foot::set_key(const Uses& uses, const Block* first, const Block* last) {
  if (uses.marks.empty()) return;
  for (const Block* block = first; block != last; ++block) {
    if (!block->aside) continue;
    Legend legend(sheet_, uses, block->aside->w);
    if (legend.height() > block->aside->h) continue;
    legend_.emplace(std::move(legend));
    aside_.emplace(static_cast<std::size_t>(block - first), *block->aside);
    return;
  }
  legend_.emplace(sheet_, uses, sheet_.width() - map_room());
}

double Foot::strip() const { return line_beside() ? 0 : std::max(map_ ? map_->height : 0.0, legend_ && !aside_ ? legend_->height() : 0.0); }

std::string Foot::scale_words() const {
  std::vector<std::pair<int, std::vector<std::string>>> groups;  // tenths of life size, letters
  const double thread = cloth::mm_a_thread(sheet_.course.cloth.count);
  for (const auto& [letter, scale] : scales_) {
    const int tenths = static_cast<int>(std::lround(10 * scale / thread));
    auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return g.first == tenths; });
    if (group == groups.end()) group = groups.insert(groups.end(), {tenths, {}});
    group->second.push_back(letter);
  }
  std::vector<std::string> said;
  for (const auto& [tenths, letters] : groups)
    said.push_back(sheet_.say("page.foot.scale", {{"letters", sheet_.all_of(letters)},
                                                  {"n", static_cast<std::int64_t>(letters.size())},
                                                  {"times", words::Decimal{tenths / 10.0, 1}}}));
  return sentences(said);
}

std::vector<std::string> Foot::line_words() const {
  std::vector<std::string> said;
  if (gridded_)
    said.push_back(sheet_.say(sheet_.course.choices.line == course::Line::thread ? "page.foot.line.thread" : "page.foot.line.hole"));
  said.push_back(sheet_.say(sheet_.voice.hand == say::Hand::right ? "page.foot.right-handed" : "page.foot.left-handed"));
  said.push_back(sheet_.say("page.foot.cloth", {{"count", cloth_count(sheet_)}}));
  if (!scales_.empty()) said.push_back(scale_words());
  const double number_room = sheet_.measure.measure("00 / 00", sheet_.styles.body).width + 4;
  return wrapped(sentences(said), sheet_.styles.body, sheet_.width() - number_room - (line_beside() ? map_room() : 0), sheet_.measure);
}

double Foot::below_rule() const { return line_beside() ? std::max(lines_height(), map_->height + 3) : lines_height(); }

double Foot::height() const { return below_rule() + (strip() > 0 ? strip() + 4 : 0) + cautions_height(); }

void Foot::draw(list::List& list, std::size_t page, std::size_t of) const {
  const double left = sheet_.margin(), right = left + sheet_.width(), bottom = sheet_.page.height - 11;
  const double rule = bottom - below_rule(), line_left = left + (line_beside() ? map_room() : 0);
  add_line(list, list::Role::rule_line, {left, rule}, {right, rule}, 0.25, colour::rule, list::Cap::flat);
  double base = bottom - lines_height() + 1.2 + line_height_mm() - 0.36 * em(sheet_.styles.body);
  for (const std::string& line : lines_) {
    add_text(list, list::Role::text, {line_left, base}, line, sheet_.styles.body, colour::ink);
    base += line_height_mm();
  }
  add_text(list, list::Role::text, {right, base - line_height_mm()},
           sheet_.say("page.foot.page", {{"page", static_cast<std::int64_t>(page)}, {"of", static_cast<std::int64_t>(of)}}),
           sheet_.styles.body, colour::ink, list::Align::right);
  const double top = rule - 4 - strip();
  if (map_) put(list, design_.draw(order_).list, {left, line_beside() ? rule + 3 : top});
  if (legend_ && !aside_) legend_->draw(list, {left + map_room(), top});
  if (cautions_) draw_cautions(list, {left, (strip() > 0 ? top : rule - 4) - cautions_height()});
}

}  // namespace picture
