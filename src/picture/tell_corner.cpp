// Corners: what is done there, why, how many times and where, and what does not change.
#include <fmt/format.h>

#include <algorithm>

#include "picture/facts.h"
#include "picture/numbering.h"
#include "picture/tell.h"

namespace picture {
namespace {

std::string sort_key(bool from_slant, bool to_slant) {
  return std::string(from_slant ? "slant" : "straight") + "-" + (to_slant ? "slant" : "straight");
}

/// The title by what the place is: every corner, every corner of a sort, or some.
std::string title(const Sheet& sheet, const guide::CloseUp& close_up, const std::vector<CornerSort>& sorts) {
  const auto places = static_cast<std::int64_t>(close_up.stands_for.size());
  if (places >= corners_in(sorts)) return sheet.say("page.corner.title.all", {{"n", places}});
  for (const CornerSort& sort : sorts)
    if (sort.from_slant == close_up.from_slant && sort.to_slant == close_up.to_slant && places >= sort.corners)
      return sheet.say("page.corner.title." + sort_key(sort.from_slant, sort.to_slant), {{"n", places}});
  const std::vector<int> numbers = sheet.by_rows(close_up.trail) && places <= 3
                                       ? corner_numbers(sheet.trail(close_up.trail).trail, section_of(sheet, close_up), close_up.stands_for)
                                       : std::vector<int>{};
  if (numbers.empty()) return sheet.say("page.corner.title.some", {{"n", places}, {"number", sheet.number(static_cast<int>(places))}});
  std::vector<std::string> said;
  for (const int n : numbers) said.push_back(sheet.say("page.corner.nth", {{"nth", words::Ordinal{n}}}));
  return sheet.say("page.corner.title.nth", {{"n", places}, {"nths", sheet.all_of(said)}});
}

std::string row(const Sheet& sheet, const guide::CloseUp& close_up, int run) {
  return say::row_name(sheet.voice, sheet.trail(close_up.trail).part, sheet.row(close_up.trail, run));
}

/// "9 to 10": the stitches that one row has more.
std::vector<std::string> stitches_over(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::vector<std::string> said;
  const auto& stitches = sheet.trail(close_up.trail).trail.stitches;
  for (int k = close_up.first; k <= close_up.last; ++k)
    if (stitches[k].over && stitches[k].run == close_up.row_over)
      said.push_back(sheet.say("page.back.over.stitch", {{"up", std::int64_t{up_number(k, close_up.first)}},
                                                         {"down", std::int64_t{down_number(k, close_up.first)}}}));
  return said;
}

/// "The outer row has one stitch more than the inner row here: 9 to 10."
std::string over(const Sheet& sheet, const guide::CloseUp& close_up) {
  if (close_up.row_over < 0) return {};
  const std::vector<std::string> stitches = stitches_over(sheet, close_up);
  if (stitches.empty()) return {};
  const auto n = static_cast<int>(stitches.size());
  return sheet.say("page.back.over", {{"row", words::capitalised(row(sheet, close_up, close_up.row_over))},
                                      {"other", row(sheet, close_up, 1 - close_up.row_over)},
                                      {"n", std::int64_t{n}},
                                      {"number", sheet.number(n)},
                                      {"stitches", sheet.all_of(stitches)}});
}

/// "up at 11, one stitch ahead, and down at 12, in the corner hole"
std::string back_stitch(const Sheet& sheet, const guide::CloseUp& close_up, int k) {
  const trail::Worked& w = sheet.trail(close_up.trail).trail.stitches[k];
  const bool corner = !close_up.stands_for.empty() && w.down == close_up.stands_for.front();
  return sheet.say(corner ? "page.back.stitch.corner" : "page.back.stitch",
                   {{"up", std::int64_t{up_number(k, close_up.first)}}, {"down", std::int64_t{down_number(k, close_up.first)}}});
}

std::string backs(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::vector<std::string> said;
  for (const int k : close_up.steps_back)
    if (close_up.first <= k && k <= close_up.last) said.push_back(back_stitch(sheet, close_up, k));
  if (said.empty()) return {};
  const auto n = static_cast<std::int64_t>(said.size());
  return sheet.say("page.back.do", {{"n", n}, {"number", sheet.number(static_cast<int>(n))}, {"stitches", sheet.all_of(said)}});
}

/// Sorts of corner where nothing is special and that no other close-up shows.
void tell_unchanged(const Sheet& sheet, const guide::CloseUp& close_up, const std::vector<CornerSort>& sorts, Telling& telling) {
  for (const CornerSort& sort : sorts) {
    if (sort.with_back > 0 || (sort.from_slant == close_up.from_slant && sort.to_slant == close_up.to_slant)) continue;
    const bool shown = std::any_of(sheet.plan.close_ups.begin(), sheet.plan.close_ups.end(), [&](const guide::CloseUp& other) {
      return other.lesson == close_up.lesson && other.trail == close_up.trail && other.shows == guide::Shows::corner &&
             other.from_slant == sort.from_slant && other.to_slant == sort.to_slant;
    });
    if (!shown) telling.paragraph(sheet.say("page.unchanged." + sort_key(sort.from_slant, sort.to_slant)));
  }
}

void tell_like(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  if (close_up.like < 0) return;
  const guide::CloseUp& like = sheet.plan.close_ups[close_up.like];
  telling.paragraph(sheet.say("page.like", {{"letter", like.letter}, {"lesson", std::int64_t{like.lesson}}}));
}

// ---- blocks ----

/// Holes with two numbers: "Two stitches share the corner hole of both blocks: 4 with 7."
std::string shared_holes(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::vector<std::string> pairs;
  for (const HoleNumbers& hole : numbers_of(sheet.trail(close_up.trail).trail, close_up.first, close_up.last))
    if (hole.numbers.size() > 1)
      pairs.push_back(
          sheet.say("page.blocks.shared.pair", {{"first", std::int64_t{hole.numbers[0]}}, {"second", std::int64_t{hole.numbers[1]}}}));
  if (pairs.empty() || sheet.pass(close_up.trail).runs.front().freedom != stitch::Freedom::all_alike) return {};
  return sheet.say(fmt::format("page.{}.shared", sheet.pieces(close_up.trail)),
                   {{"pairs", sheet.all_of(pairs)}, {"n", static_cast<std::int64_t>(pairs.size())}});
}

/// First stitches of the blocks in the close-up.
std::vector<int> block_starts(const trail::Trail& trail, const guide::CloseUp& close_up) {
  std::vector<int> starts;
  for (int k = close_up.first; k <= close_up.last; ++k)
    if (k == close_up.first || trail.stitches[k].run != trail.stitches[k - 1].run) starts.push_back(k);
  return starts;
}

/// Which numbers end one block and begin the next.
std::string block_change(const Sheet& sheet, const guide::CloseUp& close_up) {
  const std::vector<int> starts = block_starts(sheet.trail(close_up.trail).trail, close_up);
  if (starts.size() < 2) return {};
  const bool bend = starts.size() > 2;
  const int next = starts.back(), from = bend ? starts[starts.size() - 2] : next - 1;
  return sheet.say(fmt::format("page.{}.{}", sheet.pieces(close_up.trail), bend ? "bend" : "step"),
                   {{"up", std::int64_t{up_number(from, close_up.first)}},
                    {"down", std::int64_t{down_number(next - 1, close_up.first)}},
                    {"next", std::int64_t{up_number(next, close_up.first)}}});
}

void tell_block_corner(const Sheet& sheet, const guide::CloseUp& close_up, const std::vector<CornerSort>& sorts, Telling& telling) {
  telling.heading(close_up.turn_eighths == 0 ? sheet.say(fmt::format("page.{}.step.title", sheet.pieces(close_up.trail)))
                                             : title(sheet, close_up, sorts));
  telling.paragraph(sentences({stitches_between(sheet, close_up), block_change(sheet, close_up), shared_holes(sheet, close_up)}));
}

// ---- a row alone ----

void tell_row_alone(const Sheet& sheet, const guide::CloseUp& close_up, const std::vector<CornerSort>& sorts, Telling& telling) {
  constexpr int half_turn = 4;
  const bool turns_back = close_up.turn_eighths == half_turn;
  const bool there_and_back = sheet.part(close_up.trail).work.piece == stitch::Piece::side_there_and_back;
  telling.heading(turns_back ? sheet.say("page.turn-back.title") : title(sheet, close_up, sorts));
  telling.paragraph(sentences({stitches_between(sheet, close_up), sheet.say(turns_back       ? "page.turn-back"
                                                                            : there_and_back ? "page.corner.there-and-back"
                                                                                             : "page.corner.single")}));
}

}  // namespace

std::string tell_back_stitches(const Sheet& sheet, const guide::CloseUp& close_up) {
  return sentences({over(sheet, close_up), backs(sheet, close_up), sheet.say("page.back.go-on")});
}

std::string short_row(const Sheet& sheet, int trail, int run) {
  constexpr const char* keys[] = {"first", "second", "third", "outer", "middle", "inner"};
  const say::RowPlace place = say::row_place(sheet.course, sheet.trail(trail).part, sheet.row(trail, run));
  return sheet.say(std::string("page.row.") + keys[static_cast<int>(place)]);
}

std::string times_and_where(const Sheet& sheet, const guide::CloseUp& close_up) {
  const auto n = static_cast<int>(close_up.stands_for.size());
  if (n == 0) return {};
  if (n == 2) return sheet.say("page.times.twice", {{"letter", close_up.letter}});
  return sheet.say("page.times", {{"n", std::int64_t{n}}, {"number", words::capitalised(sheet.number(n))}, {"letter", close_up.letter}});
}

void tell_corner(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  if (sheet.looped(close_up.trail)) return tell_edge_corner(sheet, close_up, telling);
  const std::vector<CornerSort> sorts = corner_sorts(sheet.trail(close_up.trail).trail, section_of(sheet, close_up));
  if (stitch::stitch_by_stitch(sheet.pass(close_up.trail))) {
    tell_row_alone(sheet, close_up, sorts, telling);
  } else if (!sheet.by_rows(close_up.trail)) {
    tell_block_corner(sheet, close_up, sorts, telling);
  } else {
    telling.heading(title(sheet, close_up, sorts));
    telling.paragraph(stitches_between(sheet, close_up));
    if (close_up.steps_back.empty())
      telling.paragraph(sheet.say("page.corner.nothing"));
    else
      telling.paragraph(tell_back_stitches(sheet, close_up));
  }
  telling.strong(times_and_where(sheet, close_up));
  if (sheet.by_rows(close_up.trail)) tell_unchanged(sheet, close_up, sorts, telling);
  tell_like(sheet, close_up, telling);
}

void tell_second_pass(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  telling.heading(sheet.say("page.second.title"));
  telling.paragraph(stitches_between(sheet, close_up));
  if (close_up.steps_back.empty())
    telling.paragraph(sheet.say("page.second.no-back"));
  else
    telling.paragraph(tell_back_stitches(sheet, close_up));
  if (!close_up.stands_for.empty()) telling.strong(times_and_where(sheet, close_up));
  tell_like(sheet, close_up, telling);
}

}  // namespace picture
