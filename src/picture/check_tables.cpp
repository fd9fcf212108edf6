// How much is stitched by each corner: what a student compares on the way.
#include "picture/table.h"
#include "picture/tell.h"

namespace picture {
namespace {

using plan::Checkpoint;

constexpr std::size_t most = 8;

std::string_view note_key(const Sheet& sheet, int trail) {
  if (sheet.by_rows(trail)) return "page.check.note.to";
  if (sheet.looped(trail) || stitch::stitch_by_stitch(sheet.pass(trail))) return "page.check.note.round";
  return "page.check.note.with";
}

std::vector<Checkpoint> spread(const std::vector<Checkpoint>& points) {
  const std::size_t each = (points.size() + most - 1) / most;
  std::vector<Checkpoint> some;
  for (std::size_t i = each - 1; i < points.size(); i += each) some.push_back(points[i]);
  return some;
}

/// A column for each corner: wide and low.
Table table_of(const Sheet& sheet, const std::vector<Checkpoint>& points) {
  const int trail = points[0].trail;
  Table table;
  const std::string what = say::section_title(sheet.voice, sheet.plan, {trail, points[0].section});
  table.title = sheet.lesson.sections.size() < 2 ? sheet.say("page.check.title")
                                                 : sheet.say("page.check.title.of", {{"what", words::capitalised(what)}});
  table.note = sheet.say(note_key(sheet, trail));
  if (sheet.by_rows(trail))
    for (const int run : {0, 1}) table.rows.push_back({words::capitalised(short_row(sheet, trail, run)), {}, 1, false});
  table.rows.push_back({words::capitalised(sheet.by_rows(trail) ? sheet.say("page.check.together")
                                                                : sheet.say(std::string("page.count.") + std::string(sheet.pieces(trail)))),
                        {},
                        1,
                        false});
  for (const Checkpoint& point : spread(points)) {
    table.heads.push_back(std::to_string(point.corner));
    for (std::size_t row = 0; row < point.numbers.size(); ++row) table.rows[row].numbers.push_back(point.numbers[row]);
    if (sheet.by_rows(trail)) table.rows.back().numbers.push_back(point.numbers[0] + point.numbers[1]);
  }
  return table;
}

}  // namespace

std::vector<Table> check_tables(const Sheet& sheet) {
  std::vector<Table> tables;
  const auto& all = sheet.plan.checkpoints;
  for (std::size_t i = 0; i < all.size();) {
    std::size_t end = i;
    std::vector<Checkpoint> points;
    for (; end < all.size() && all[end].trail == all[i].trail && all[end].section == all[i].section; ++end) points.push_back(all[end]);
    if (all[i].lesson == sheet.lesson.number && sheet.trail(all[i].trail).place == 0) tables.push_back(table_of(sheet, points));
    i = end;
  }
  return tables;
}

}  // namespace picture
