// The words of cutting: what is looked over before, which threads, the check before each snip, what is left alone, mending.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "picture/cut_pages.h"

namespace picture {
namespace {

using cutwork::Axis;

std::int64_t wide(std::size_t n) { return static_cast<std::int64_t>(n); }

std::string numbers_words(const Sheet& sheet, const std::vector<int>& numbers) {
  std::vector<std::string> said;
  for (const int n : numbers) said.push_back(std::to_string(n));
  return sheet.all_of(said);
}

/// With the part's name where the lesson cuts several.
std::string titled(const Sheet& sheet, const CutWork& work, const char* key, bool several) {
  return sheet.say(several ? std::string(key) + ".part" : key,
                   {{"part", sheet.course.parts[static_cast<std::size_t>(work.cut->part)].name}});
}

/// Where the other threads lie from the first one's hole, as seen on the page.
const char* side_of(const Sheet& sheet, const CutEnd& end) {
  if (end.axis == Axis::h) return "down";
  return sheet.voice.hand == say::Hand::left ? "left" : "right";
}

std::string find_words(const Sheet& sheet, const CutEnd& end, const guide::Count& count) {
  const words::Arguments arguments{{"n", std::int64_t{end.number}},
                                   {"landmark", say::landmark(sheet.voice, count.landmark)},
                                   {"legs", say::legs(sheet.voice, count.legs)}};
  return sheet.say(count.legs.empty() ? "page.cut.find" : "page.cut.find.count", arguments);
}

std::string threads_words(const Sheet& sheet, const CutEnd& end) {
  return sheet.say(fmt::format("page.cut.threads.{}", side_of(sheet, end)),
                   {{"n", std::int64_t{end.snips()}}, {"number", sheet.number(end.snips())}});
}

/// Sets of cuttings with the same length of thread between their ends, in order of the first.
std::vector<std::pair<int, std::vector<CutTogether>>> by_length(const CutWork& work) {
  std::vector<std::pair<int, std::vector<CutTogether>>> all;
  for (CutTogether& together : cut_together(work)) {
    auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == together.length; });
    if (found == all.end()) found = all.insert(all.end(), {together.length, {}});
    found->second.push_back(std::move(together));
  }
  return all;
}

/// "1 and 2; 13 and 14"; how many where that would be too long to read.
std::string sets_words(const Sheet& sheet, const std::vector<CutTogether>& sets) {
  constexpr std::size_t most = 14;
  if (sets.size() > most) return sheet.say("page.cut.sets.many", {{"n", wide(sets.size())}});
  std::string text;
  for (const CutTogether& set : sets) {
    const std::string one = numbers_words(sheet, set.numbers);
    text = text.empty() ? one : sheet.say("page.cut.sets", {{"first", text}, {"second", one}});
  }
  return text;
}

int snips_of(const CutWork& work) { return static_cast<int>(work.cut->cutting.cuts.size()); }

Table::Row area_row(const Sheet& sheet, const CutWork& work, int area) {
  std::set<int> blocks;
  int cuttings = 0, snips = 0, first = 0, last = 0;
  for (const CutEnd& end : work.ends) {
    if (end.area != area) continue;
    blocks.insert(end.block);
    ++cuttings;
    snips += end.snips();
    first = first == 0 ? end.number : first;
    last = end.number;
  }
  return {
      sheet.say("page.cut.ready.area", {{"area", std::int64_t{area + 1}}, {"first", std::int64_t{first}}, {"last", std::int64_t{last}}}),
      {static_cast<int>(blocks.size()), cuttings, snips, snips / 2},
      1,
      false};
}

}  // namespace

Telling tell_before_cutting(const Sheet& sheet, const CutWork& work, bool several) {
  Telling telling;
  telling.heading(titled(sheet, work, "page.cut.before", several));
  int number = 0;
  for (const char* key : {"page.cut.before.front", "page.cut.before.back", "page.cut.before.scrap", "page.cut.before.teacher"})
    telling.numbered(++number, sheet.say(key));
  return telling;
}

Table table_of_areas(const Sheet& sheet, const CutWork& work) {
  Table table;
  table.title = sheet.say("page.cut.ready");
  for (const char* head : {"blocks", "cuttings", "snips", "threads"})
    table.heads.push_back(sheet.say(fmt::format("page.cut.ready.{}", head)));
  Table::Row total{sheet.say("page.cut.ready.total"), {0, 0, 0, 0}, 1, true};
  for (int area = 0; area < work.areas(); ++area) {
    table.rows.push_back(area_row(sheet, work, area));
    for (std::size_t i = 0; i < 4; ++i) total.numbers[i] += table.rows.back().numbers[i];
  }
  if (table.rows.size() > 1) {
    std::set<int> blocks;  // one may hold two areas
    for (const CutEnd& end : work.ends) blocks.insert(end.block);
    total.numbers[0] = static_cast<int>(blocks.size());
    table.rows.push_back(std::move(total));
  }
  return table;
}

Telling tell_cut_map(const Sheet& sheet, const CutWork& work, const std::vector<int>& numbers, bool several) {
  Telling telling;
  const bool whole = numbers.size() == work.ends.size();
  telling.heading(titled(sheet, work, "page.cut.map", several));
  const CutTogether first = cut_together(work).front();
  if (numbers.front() == 1) {
    telling.paragraph(sheet.say("page.cut.map.order"));
    if (first.numbers.size() > 1)
      telling.paragraph(
          sheet.say("page.cut.map.across", {{"first", std::int64_t{first.numbers[0]}}, {"second", std::int64_t{first.numbers[1]}}}));
  }
  if (!whole) telling.paragraph(sheet.say("page.cut.map.piece", {{"n", wide(numbers.size())}, {"of", wide(work.ends.size())}}));
  telling.paragraph(sheet.say("page.cut.map.sum", {{"n", wide(work.ends.size())}, {"snips", std::int64_t{snips_of(work)}}}));
  return telling;
}

namespace {

void tell_opposite(const Sheet& sheet, const CutEnd& end, const CutTold& told, Telling& telling) {
  if (end.opposite.empty()) return;
  const bool later = end.opposite.front() > end.number;
  telling.strong(sheet.say(later ? "page.cut.opposite.title" : "page.cut.opposite.done-title"));
  const words::Arguments arguments{{"numbers", numbers_words(sheet, end.opposite)}, {"n", std::int64_t{end.length()}}};
  std::vector<std::string> said{sheet.say(later ? "page.cut.opposite" : "page.cut.opposite.done", arguments)};
  if (told.shown.size() < 2) said.push_back(sheet.say("page.cut.opposite.outside"));
  if (later) said.push_back(sheet.say("page.cut.draw-out"));
  telling.paragraph(sentences(said));
}

std::string alike_words(const Sheet& sheet, const std::vector<int>& alike) {
  constexpr std::size_t few = 24;
  if (alike.empty()) return {};
  if (alike.size() > few) return sheet.say("page.cut.alike.many", {{"n", wide(alike.size())}});
  return sheet.say("page.cut.alike", {{"numbers", numbers_words(sheet, alike)}, {"n", wide(alike.size())}});
}

}  // namespace

Telling tell_cutting(const Sheet& sheet, const CutWork& work, const CutTold& told) {
  const CutEnd& end = work.end(told.shown.front());
  Telling telling;
  const std::string numbers = numbers_words(sheet, told.shown);
  const words::Arguments titles{{"numbers", numbers}, {"n", wide(told.shown.size())}};
  if (told.first)
    telling.accent_heading(sheet.say("page.cut.first", titles));
  else
    telling.heading(sheet.say("page.cut.next", titles));
  std::vector<std::string> where;
  if (told.count) where.push_back(find_words(sheet, end, *told.count));
  where.push_back(told.count ? threads_words(sheet, end)
                             : sheet.say("page.cut.here", {{"n", std::int64_t{end.snips()}}, {"number", sheet.number(end.snips())}}));
  telling.paragraph(sentences(where));
  const words::Arguments check{{"n", std::int64_t{end.snips()}}, {"number", sheet.number(end.snips())}, {"letter", told.first_letter}};
  telling.strong(sheet.say("page.cut.check.title"));
  telling.paragraph(sheet.say(told.first ? "page.cut.check" : "page.cut.check.again", check));
  tell_opposite(sheet, end, told, telling);
  if (told.first) {
    telling.strong(sheet.say("page.cut.leave.title"));
    telling.paragraph(sheet.say("page.cut.leave"));
  }
  telling.paragraph(alike_words(sheet, told.alike));
  return telling;
}

Table table_of_order(const Sheet& sheet, const CutWork& work) {
  Table table;
  table.title = sheet.say(work.areas() > 1 ? "page.cut.order" : "page.cut.ready");
  table.heads = {sheet.say("page.cut.order.apart"), sheet.say("page.cut.ready.snips"), sheet.say("page.cut.ready.threads")};
  std::set<int> blocks;
  for (const CutEnd& end : work.ends) blocks.insert(end.block);
  int threads = 0;
  for (const auto& [length, sets] : by_length(work)) {
    Table::Row row{sets_words(sheet, sets), {length, 0, 0}, 1, false};
    for (const CutTogether& set : sets) row.numbers[1] += set.snips, row.numbers[2] += set.threads;
    threads += row.numbers[2];
    table.rows.push_back(std::move(row));
  }
  table.note = sheet.say("page.cut.order.note", {{"blocks", wide(blocks.size())},
                                                 {"cuttings", wide(work.ends.size())},
                                                 {"snips", std::int64_t{snips_of(work)}},
                                                 {"n", std::int64_t{threads}}});
  return table;
}

// ---- mending ----

namespace {

constexpr double wanted_overlap_mm = 30;  // several cm (common practice, no source)

/// Of so many threads, whichever way they lie: what is surely long enough, and what there surely is.
double longest_mm(const Sheet& sheet, int threads) {
  return std::max(cloth::mm(threads, sheet.course.cloth.count), cloth::mm_down(threads, sheet.course.cloth.count));
}
double shortest_mm(const Sheet& sheet, int threads) {
  return std::min(cloth::mm(threads, sheet.course.cloth.count), cloth::mm_down(threads, sheet.course.cloth.count));
}

/// How far a new thread can go on beyond the blocks: as far as there is cloth, 3 cm at the most.
double overlap_mm(const Sheet& sheet, const CutWork& work) {
  const cloth::Hole corner = course::corner(sheet.course), size = course::size_threads(sheet.course);
  int least = size.x + size.y;
  for (const cutwork::Span& span : work.cut->cutting.withdrawn) {
    const int low = span.axis == Axis::v ? corner.y : corner.x, high = low + (span.axis == Axis::v ? size.y : size.x);
    least = std::min({least, span.from - low, high - span.to});
  }
  return std::clamp(shortest_mm(sheet, least - 8), 5.0, wanted_overlap_mm);
}

/// Cuttings at the block, across from it, and at blocks that touch it.
std::vector<int> near_block(const CutWork& work, int number) {
  const CutEnd& own = work.end(number);
  std::set<int> near{own.number};
  near.insert(own.opposite.begin(), own.opposite.end());
  if (own.block >= 0) {
    const cloth::Box box = box_of(work.cut->blocks[static_cast<std::size_t>(own.block)]);
    for (const CutEnd& end : work.ends) {
      if (end.block < 0) continue;
      const cloth::Box other = box_of(work.cut->blocks[static_cast<std::size_t>(end.block)]);
      if (other.x0 <= box.x1 && other.x1 >= box.x0 && other.y0 <= box.y1 && other.y1 >= box.y0) near.insert(end.number);
    }
  }
  return {near.begin(), near.end()};
}

}  // namespace

Telling tell_mending(const Sheet& sheet, const CutWork& work, int number) {
  Telling telling;
  telling.accent_heading(sheet.say("page.cut.mend"));
  telling.paragraph(sheet.say("page.cut.mend.stop"));
  telling.strong(sheet.say("page.cut.mend.thread.title"));
  telling.paragraph(sheet.say("page.cut.mend.thread"));
  telling.paragraph(sheet.say("page.cut.mend.new", {{"cm", words::Decimal{overlap_mm(sheet, work) / 10, 1}}, {"n", std::int64_t{number}}}));
  telling.strong(sheet.say("page.cut.mend.stitch.title"));
  telling.paragraph(sentences({sheet.say("page.cut.mend.stitch"),
                               sheet.say("page.cut.mend.stitch.place",
                                         {{"n", std::int64_t{number}}, {"numbers", numbers_words(sheet, near_block(work, number))}})}));
  return telling;
}

Table table_of_new_threads(const Sheet& sheet, const CutWork& work) {
  constexpr int blocks_deep = 8;  // threads: the blocks at both ends, under which the new thread goes on
  Table table;
  table.title = sheet.say("page.cut.mend.table");
  table.heads = {sheet.say("page.cut.mend.between"), sheet.say("page.cut.mend.take")};
  const double beyond = 2 * overlap_mm(sheet, work);
  for (const auto& [length, sets] : by_length(work)) {
    const double between = longest_mm(sheet, length), all = longest_mm(sheet, length + blocks_deep) + beyond;
    table.rows.push_back(
        {sets_words(sheet, sets), {static_cast<int>(std::lround(between)), static_cast<int>(std::ceil(all / 10))}, 1, false});
  }
  table.note = sheet.say("page.cut.mend.note");
  return table;
}

std::vector<Table> cut_tables(const Sheet& sheet) {
  std::vector<Table> tables;
  for (const CutWork& work : cut_work(sheet)) {
    if (work.areas() > 1) tables.push_back(table_of_areas(sheet, work));
    tables.push_back(table_of_order(sheet, work));
  }
  return tables;
}

}  // namespace picture
