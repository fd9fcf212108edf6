// The lines of the counts to be sure, named; sums that a reader would make are made here.
#include <fmt/format.h>

#include <numeric>

#include "base/require.h"
#include "picture/cut_pages.h"
#include "picture/facts.h"
#include "picture/table.h"
#include "picture/tell.h"

namespace picture {
namespace {

using plan::CountLine;

std::string_view key_of(CountLine::What what) {
  switch (what) {
    case CountLine::to_first_corner:
      return "page.count.to-first-corner";
    case CountLine::straight_side:
      return "page.count.straight";
    case CountLine::slant:
      return "page.count.slant";
    case CountLine::flight:
      return "page.count.flight";
    case CountLine::fanned:
      return "page.count.fanned";
    case CountLine::last_to_start:
      return "page.count.last-to-start";
    case CountLine::after_last_corner:
      return "page.count.after-last-corner";
    case CountLine::whole_round:
      return "page.count.whole-round";
    case CountLine::whole_run:
      return "page.count.whole-run";
    case CountLine::section_total:
      return "page.count.section";
  }
  return "page.count.section";
}

bool is_total(CountLine::What what) {
  return what == CountLine::whole_round || what == CountLine::whole_run || what == CountLine::section_total;
}

std::string label(const Sheet& sheet, const CountLine& line) {
  std::string key(key_of(line.what));
  const stitch::Pass& pass = sheet.pass(line.trail);
  const bool pieces = !sheet.by_rows(line.trail) && !stitch::stitch_by_stitch(pass);
  if (line.what == CountLine::whole_run && pieces && (sheet.scattered(line.trail) || pass.runs.size() == 1)) key = "page.count.in-all";
  if (line.what == CountLine::flight) key += fmt::format(".{}", sheet.pieces(line.trail));
  return words::capitalised(sheet.say(key, {{"n", std::int64_t{line.legs}}, {"number", sheet.number(line.legs)}}));
}

/// "2 rows together": what a student counts who does not keep them apart.
void add_both(const Sheet& sheet, Table& table) {
  if (table.rows.empty() || table.heads.size() < 2) return;
  const Table::Row& total = table.rows.back();
  if (total.total)
    table.note = sheet.say("page.count.both", {{"n", std::int64_t{std::accumulate(total.numbers.begin(), total.numbers.end(), 0)}}});
}

int stitches_of(const Sheet& sheet, int trail) {
  int n = 0;
  for (const auto& [t, s] : sheet.lesson.sections)
    if (t == trail) n += sheet.trail(t).sections[s].last - sheet.trail(t).sections[s].first + 1;
  return n;
}

/// Corner blocks belong to two flights, so flights add up to more than the ring has.
void add_shared(const Sheet& sheet, int trail, Table& table) {
  table.note = sheet.say("page.count.stitches", {{"n", std::int64_t{stitches_of(sheet, trail)}}});
  int sum = 0;
  for (const Table::Row& row : table.rows)
    if (!row.total) sum += row.times * row.numbers.front();
  const int over = table.rows.empty() || sum == 0 ? 0 : sum - table.rows.back().numbers.front();
  if (over > 0)
    table.note = sentences({table.note, sheet.say(fmt::format("page.count.shared.{}", sheet.pieces(trail)),
                                                  {{"n", std::int64_t{over}}, {"sum", std::int64_t{sum}}})});
}

std::string title(const Sheet& sheet, int trail) {
  if (sheet.lesson.sections.size() < 2) return sheet.say("page.count.title");
  const course::Part& part = sheet.part(trail);
  const std::string key = part.work.passes_a_place() > 1 ? "page.count.title.pass" : "page.count.title.part";
  return sheet.say(
      key + (part.work.places > 1 ? "-place" : ""),
      {{"part", part.name}, {"pass", words::Ordinal{sheet.trail(trail).pass}}, {"place", std::int64_t{sheet.trail(trail).place + 1}}});
}

Table table_for(const Sheet& sheet, int trail, const std::vector<CountLine>& lines) {
  Table table;
  table.title = title(sheet, trail);
  const bool rows = sheet.by_rows(trail);
  if (rows)
    for (const int run : {0, 1}) table.heads.push_back(short_row(sheet, trail, run));
  else
    table.heads.push_back(sheet.say(fmt::format("page.count.{}", sheet.pieces(trail))));
  for (const CountLine& line : lines) table.rows.push_back({label(sheet, line), line.numbers, line.legs, is_total(line.what)});
  if (!sheet.looped(trail)) rows ? add_both(sheet, table) : add_shared(sheet, trail, table);
  return table;
}

}  // namespace

std::vector<Table> count_tables(const Sheet& sheet) {
  std::vector<Table> tables;
  const auto& lines = sheet.plan.counts[sheet.lesson.number - 1];
  for (std::size_t i = 0; i < lines.size();) {
    std::size_t end = i;
    while (end < lines.size() && lines[end].trail == lines[i].trail) ++end;
    tables.push_back(table_for(sheet, lines[i].trail,
                               {lines.begin() + static_cast<std::ptrdiff_t>(i), lines.begin() + static_cast<std::ptrdiff_t>(end)}));
    i = end;
  }
  return tables;
}

namespace {

/// Counts are words and numbers: whoever asks how wide they are has made a mistake.
class Unmeasured : public list::Measure {
 public:
  list::TypeSize measure(std::string_view, list::TypeStyle) const override {
    base::require(false, "counts for the screen are not measured");
    return {};
  }
};

}  // namespace

std::vector<Table> lesson_counts(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice) {
  const Unmeasured unmeasured;
  const Sheet sheet{course, plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, unmeasured, {}, {}};
  std::vector<Table> tables = count_tables(sheet);
  for (Table& table : check_tables(sheet)) tables.push_back(std::move(table));
  for (Table& table : cut_tables(sheet)) tables.push_back(std::move(table));
  return tables;
}

}  // namespace picture
