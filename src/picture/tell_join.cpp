// Where a round closes, and where an open row ends.
#include <fmt/format.h>

#include <algorithm>

#include "picture/facts.h"
#include "picture/numbering.h"
#include "picture/tell.h"

namespace picture {
namespace {

/// The last stitch of a row within the close-up, or -1.
int last_of_run(const trail::Trail& trail, const guide::CloseUp& close_up, int run) {
  for (int k = close_up.last; k >= close_up.first; --k)
    if (trail.stitches[k].run == run) return k;
  return -1;
}

int first_of_run(const trail::Trail& trail, int run) {
  const auto found = std::find_if(trail.stitches.begin(), trail.stitches.end(), [&](const trail::Worked& w) { return w.run == run; });
  return found == trail.stitches.end() ? -1 : static_cast<int>(found - trail.stitches.begin());
}

/// The close-up in which the round began, where it is on the same sheet.
const guide::CloseUp* start_of(const Sheet& sheet, const guide::CloseUp& close_up) {
  for (const guide::CloseUp& other : sheet.plan.close_ups)
    if (other.lesson == close_up.lesson && other.trail == close_up.trail && other.shows == guide::Shows::start && other.first == 0)
      return &other;
  return nullptr;
}

/// "the last stitch of the outer row goes down at 10, where its first stitch came up"
std::string row_closes(const Sheet& sheet, const guide::CloseUp& close_up, int run) {
  const trail::Trail& trail = sheet.trail(close_up.trail).trail;
  const int last = last_of_run(trail, close_up, run), first = first_of_run(trail, run);
  if (last < 0 || first < 0 || trail.stitches[last].down != trail.stitches[first].up) return {};
  words::Arguments arguments{{"row", say::row_name(sheet.voice, sheet.trail(close_up.trail).part, sheet.row(close_up.trail, run))},
                             {"down", std::int64_t{down_number(last, close_up.first)}}};
  const guide::CloseUp* start = start_of(sheet, close_up);
  if (!start || first > start->last) return sheet.say("page.join.row", arguments);
  arguments.insert_or_assign("number", std::int64_t{up_number(first, start->first)});
  arguments.insert_or_assign("letter", start->letter);
  return sheet.say("page.join.row.start", arguments);
}

std::string rows_close(const Sheet& sheet, const guide::CloseUp& close_up) {
  std::vector<std::string> said;
  for (const int run : {0, 1})
    if (std::string row = row_closes(sheet, close_up, run); !row.empty()) said.push_back(std::move(row));
  if (said.empty()) return sheet.say("page.join.last", {{"down", std::int64_t{down_number(close_up.last, close_up.first)}}});
  return sheet.say("page.join.rows", {{"rows", words::capitalised(sheet.all_of(said))}});
}

}  // namespace

std::string stitches_between(const Sheet& sheet, const guide::CloseUp& close_up) {
  const guide::CloseUp* before = nullptr;
  for (const guide::CloseUp& other : sheet.plan.close_ups) {
    if (&other == &close_up) break;
    if (other.lesson == close_up.lesson && other.trail == close_up.trail && other.first <= close_up.first &&
        (!before || other.last >= before->last))
      before = &other;
  }
  if (!before) return {};
  const int between = close_up.first - before->last - 1;
  if (between < 0)
    return sheet.say("page.between.same", {{"before", before->letter}, {"number", std::int64_t{up_number(close_up.first, before->first)}}});
  if (between == 0) return sheet.say("page.between.next", {{"before", before->letter}});
  return sheet.say("page.between", {{"before", before->letter}, {"n", std::int64_t{between}}});
}

void tell_join(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  if (sheet.looped(close_up.trail)) return tell_edge_join(sheet, close_up, telling);
  telling.heading(sheet.say("page.join.title"));
  telling.paragraph(stitches_between(sheet, close_up));
  const bool rows = sheet.by_rows(close_up.trail);
  if (rows && !close_up.steps_back.empty()) telling.paragraph(tell_back_stitches(sheet, close_up));
  const std::string last = rows ? rows_close(sheet, close_up)
                                : sheet.say("page.join.last", {{"down", std::int64_t{down_number(close_up.last, close_up.first)}}});
  telling.paragraph(sentences({last, sheet.say("page.join.closed")}));
}

void tell_end(const Sheet& sheet, const guide::CloseUp& close_up, Telling& telling) {
  if (sheet.looped(close_up.trail)) return tell_edge_end(sheet, close_up, telling);
  const bool ends = close_up.last + 1 == static_cast<int>(sheet.trail(close_up.trail).trail.stitches.size());
  telling.heading(sheet.say(!ends ? std::string("page.end.today.title") : sheet.by_rows(close_up.trail) ? std::string("page.end.title") : fmt::format("page.end.{}.title", sheet.pieces(close_up.trail))));
  telling.paragraph(
      sentences({stitches_between(sheet, close_up), sheet.say(ends ? "page.end.last" : "page.end.today",
                                                              {{"down", std::int64_t{down_number(close_up.last, close_up.first)}}})}));
}

Telling tell_close_up(const Sheet& sheet, const guide::CloseUp& close_up, const CloseUpPicture& picture) {
  Telling telling;
  switch (close_up.shows) {
    case guide::Shows::start:
      tell_start(sheet, close_up, picture, telling);
      break;
    case guide::Shows::corner:
    case guide::Shows::step_back:
      tell_corner(sheet, close_up, telling);
      break;
    case guide::Shows::second_pass:
      tell_second_pass(sheet, close_up, telling);
      break;
    case guide::Shows::new_thread:
      tell_edge_thread(sheet, close_up, telling);
      break;
    case guide::Shows::join:
      tell_join(sheet, close_up, telling);
      break;
    case guide::Shows::end:
      tell_end(sheet, close_up, telling);
      break;
  }
  return telling;
}

}  // namespace picture
