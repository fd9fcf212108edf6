// The lines of the counts to be sure, named; sums that a reader would make are made here.
#include <fmt/format.h>

#include <algorithm>
#include <numeric>

#include "base/require.h"
#include "picture/cut_pages.h"
#include "picture/facts.h"
#include "picture/places.h"
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

/// The lines of one trail, or of several that are alike.
struct Counted {
  int trail = 0;
  std::vector<CountLine> lines;
  int stitches = 0;
  std::vector<int> places{};
};

bool same_counts(const Counted& a, const Counted& b) {
  const auto same = [](const CountLine& x, const CountLine& y) { return x.what == y.what && x.numbers == y.numbers && x.legs == y.legs && x.each == y.each; };
  return a.stitches == b.stitches && std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(), b.lines.end(), same);
}

int stitches_of(const Sheet& sheet, int trail) {
  int n = 0;
  for (const auto& [t, s] : sheet.lesson.sections)
    if (t == trail) n += sheet.trail(t).sections[s].last - sheet.trail(t).sections[s].first + 1;
  return n;
}

/// "56 stitches in all", or at each place and together; nothing where the table says so already.
std::string in_all(const Sheet& sheet, const Counted& counted) {
  const auto places = static_cast<std::int64_t>(counted.places.size());
  if (places > 1)
    return sheet.say("page.count.stitches.each", {{"n", std::int64_t{counted.stitches}}, {"sum", places * counted.stitches}});
  const CountLine& last = counted.lines.back();
  if (is_total(last.what) && last.numbers.front() == counted.stitches && stitch::stitch_by_stitch(sheet.pass(counted.trail))) return {};
  return sheet.say("page.count.stitches", {{"n", std::int64_t{counted.stitches}}});
}

/// Corner blocks belong to two flights, so flights add up to more than the ring has.
void add_shared(const Sheet& sheet, const Counted& counted, Table& table) {
  table.note = in_all(sheet, counted);
  int sum = 0;
  for (const Table::Row& row : table.rows)
    if (!row.total) sum += row.times * row.numbers.front();
  const int over = table.rows.empty() || sum == 0 ? 0 : sum - table.rows.back().numbers.front();
  if (over > 0)
    table.note = sentences({table.note, sheet.say(fmt::format("page.count.shared.{}", sheet.pieces(counted.trail)),
                                                  {{"n", std::int64_t{over}}, {"sum", std::int64_t{sum}}})});
}

Table table_for(const Sheet& sheet, const Counted& counted) {
  Table table;
  const int trail = counted.trail;
  table.title = sheet.lesson.sections.size() < 2
                    ? sheet.say("page.count.title")
                    : sheet.say("page.count.title.of", {{"what", at_places(sheet, trail, part_and_pass(sheet, trail), counted.places)}});
  const bool rows = sheet.by_rows(trail);
  if (rows)
    for (const int run : {0, 1}) table.heads.push_back(short_row(sheet, trail, run));
  else
    table.heads.push_back(sheet.say(fmt::format("page.count.{}", sheet.pieces(trail))));
  for (const CountLine& line : counted.lines) table.rows.push_back({label(sheet, line), line.numbers, line.legs, is_total(line.what)});
  if (!sheet.looped(trail)) rows ? add_both(sheet, table) : add_shared(sheet, counted, table);
  return table;
}

}  // namespace

std::vector<Table> count_tables(const Sheet& sheet) {
  std::vector<Counted> all;
  const auto& lines = sheet.plan.counts[sheet.lesson.number - 1];
  for (std::size_t i = 0; i < lines.size();) {
    Counted counted{lines[i].trail, {}, stitches_of(sheet, lines[i].trail)};
    for (; i < lines.size() && lines[i].trail == counted.trail; ++i) counted.lines.push_back(lines[i]);
    add_at_place(sheet, std::move(counted), same_counts, all);
  }
  std::vector<Table> tables;
  for (const Counted& counted : all) tables.push_back(table_for(sheet, counted));
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

std::vector<Telling> lesson_ready_to_cut(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice) {
  const Unmeasured unmeasured;
  const Sheet sheet{course, plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, unmeasured, {}, {}};
  std::vector<Telling> all;
  for (const CutWork& work : cut_work(sheet))
    for (Telling& telling : tell_ready(sheet, work)) all.push_back(std::move(telling));
  return all;
}

std::vector<Table> lesson_counts(const course::Course& course, const plan::Plan& plan, int number, const say::Voice& voice) {
  const Unmeasured unmeasured;
  const Sheet sheet{course, plan, plan.lessons[static_cast<std::size_t>(number - 1)], voice, unmeasured, {}, {}};
  std::vector<Table> tables = count_tables(sheet);
  for (Table& table : check_tables(sheet)) tables.push_back(std::move(table));
  for (Table& table : cut_tables(sheet)) tables.push_back(std::move(table));
  return tables;
}

}  // namespace picture
