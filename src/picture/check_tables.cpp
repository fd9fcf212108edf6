// How much is stitched by each corner: what a student compares on the way.
#include <algorithm>

#include "picture/places.h"
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

/// The corners of one section, or of several that are alike.
struct Checked {
  int trail = 0;
  std::vector<Checkpoint> points;
  std::vector<int> places{};
};

bool same_numbers(const Checked& a, const Checked& b) {
  const auto same = [](const Checkpoint& x, const Checkpoint& y) { return x.corner == y.corner && x.numbers == y.numbers; };
  return std::equal(a.points.begin(), a.points.end(), b.points.begin(), b.points.end(), same);
}

/// A column for each corner: wide and low.
Table table_of(const Sheet& sheet, const Checked& checked) {
  const int trail = checked.trail;
  const std::vector<Checkpoint>& points = checked.points;
  Table table;
  const std::string what =
      at_places(sheet, trail, say::section_title(sheet.voice, sheet.plan, {trail, points[0].section}), checked.places);
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
  std::vector<Checked> alike;
  const auto& all = sheet.plan.checkpoints;
  for (std::size_t i = 0; i < all.size();) {
    Checked checked{all[i].trail, {}};
    const Checkpoint& first = all[i];
    for (; i < all.size() && all[i].trail == first.trail && all[i].section == first.section; ++i) checked.points.push_back(all[i]);
    if (first.lesson == sheet.lesson.number) add_at_place(sheet, std::move(checked), same_numbers, alike);
  }
  std::vector<Table> tables;
  for (const Checked& checked : alike) tables.push_back(table_of(sheet, checked));
  return tables;
}

}  // namespace picture
