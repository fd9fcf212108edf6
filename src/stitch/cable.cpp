// Cable: rows of stitches over 2 threads, 2 threads apart along the cloth; one pass works two rows turn about (common practice, no source).
// The first row is as written, further rows lie to one side of it, mitred at the corners. Three rows are two passes, and the middle row is
// worked in both.
#include <fmt/format.h>

#include <algorithm>
#include <unordered_set>

#include "stitch/crossings.h"
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/line.h"
#include "stitch/line_row.h"
#include "stitch/rows.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int over = 2;          // threads that a stitch crosses
constexpr int row_distance = 2;  // threads

/// The first leg that has shrunk to nothing, or -1.
int shrunk_leg(const Line& line, const std::vector<cloth::Hole>& corners) {
  for (std::size_t leg = 0; leg < line.legs.size(); ++leg)
    if (along(line.legs[leg].way, corners[leg], corners[leg + 1]) <= 0) return static_cast<int>(leg);
  return -1;
}

/// Every stitch once, also where a row lies on itself or another.
void add_stitches(Work& work, const std::vector<Row>& rows) {
  for (const Row& row : rows) work.stitches.insert(work.stitches.end(), row.stitches.begin(), row.stitches.end());
  if (work.doubts.empty()) return;
  std::unordered_set<cloth::Stitch> there;
  std::erase_if(work.stitches, [&](const cloth::Stitch& stitch) { return !there.insert(stitch.normal()).second; });
}

void add_passes(Work& work, const std::vector<Row>& rows, Spare spare) {
  for (std::size_t k = 0; k + 1 < rows.size(); ++k) {
    Pass pass{{}, Order::turn_about, work.closed};
    pass.spare = spare;
    for (const Row* row : {&rows[k], &rows[k + 1]}) pass.runs.push_back({row->stitches, row->legs, Freedom::each_way, DownSide::none});
    work.passes.push_back(std::move(pass));
  }
}

/// Tells of the first stitch that crosses another of the part, lies on it or runs through its hole.
void doubt_crossing(Work& work, const std::vector<Row>& rows) {
  std::vector<cloth::Stitch> all;
  for (const Row& row : rows) all.insert(all.end(), row.stitches.begin(), row.stitches.end());
  auto meeting = first_meeting(all);
  if (const auto shared = first_shared_start(all); shared && (!meeting || *shared < *meeting)) meeting = shared;
  if (!meeting) return;
  const auto find = [&](int number) {
    std::size_t row = 0, stitch = static_cast<std::size_t>(number);
    while (stitch >= rows[row].stitches.size()) stitch -= rows[row++].stitches.size();
    return std::pair{static_cast<int>(row) + 1, rows[row].legs[stitch] + 1};
  };
  const auto [row, leg] = find(meeting->first);
  const auto [other_row, other_leg] = find(meeting->second);
  work.doubts.push_back({"row-crosses-itself",
                         false,
                         all[static_cast<std::size_t>(meeting->first)].a,
                         all[static_cast<std::size_t>(meeting->second)].a,
                         {{"row", row}, {"leg", leg}, {"other_row", other_row}, {"other_leg", other_leg}}});
}

/// A further row may reach beyond a limit that the first one keeps.
void check_limits(const Line& line, const std::vector<cloth::Hole>& corners, std::int64_t& stitches, ItemFaults& faults) {
  for (std::size_t leg = 0; leg < line.legs.size(); ++leg) {
    const LineLeg& written = line.legs[leg];
    stitches += std::max(0, along(written.way, corners[leg], corners[leg + 1]) / over);
    for (const cloth::Hole hole : {corners[leg], corners[leg + 1]}) {
      if (!within_limit(hole.x, hole.y)) {
        faults.at_item(written.item, fmt::format("where a further row reaches the hole [{}, {}]", hole.x, hole.y), hole_limit_in_words());
      }
    }
  }
  if (stitches > stitch_limit)
    faults.at_item(line.legs.back().item, fmt::format("by which there are {} stitches", stitches), stitch_limit_in_words());
}

/// The rows there can be, the first one always; a doubt where one has shrunk to nothing.
std::vector<Row> make_rows(const Line& line, int count, RowsLie lie, Work& work, ItemFaults& faults) {
  std::vector<Row> rows;
  std::int64_t stitches = 0;
  for (int k = 0; k < count; ++k) {
    std::vector<cloth::Hole> corners = moved_row(line, lie, k * row_distance);
    if (const int leg = shrunk_leg(line, corners); leg >= 0) {
      work.doubts.push_back(
          {"row-shrinks", true, line.corners[static_cast<std::size_t>(leg)], std::nullopt, {{"row", k + 1}, {"leg", leg + 1}}});
      break;
    }
    check_limits(line, corners, stitches, faults);
    if (faults.any()) return {};
    rows.push_back(make_row(line, std::move(corners), over));
  }
  return rows;
}

Work make_work(const Line& line, const std::vector<Row>& rows, Spare spare, Work work) {
  work.closed = line.closed;
  if (work.doubts.empty()) add_passes(work, rows, spare);
  doubt_crossing(work, rows);
  add_stitches(work, rows);
  for (std::size_t k = 0; k < rows.size(); ++k) {
    add_features(work, line, rows[k], static_cast<int>(k));
    add_legs(work, line, rows[k], static_cast<int>(k));
  }
  for (std::size_t i = 0; i < line.corners.size() - (line.closed ? 1 : 0); ++i) work.corners.push_back({line.corners[i]});
  return work;
}

Outcome build(const Values& values) {
  const std::string& side = value<std::string>(values, "rows_lie");
  const int count = value<int>(values, "rows");
  base::require(count == 2 || count == 3, "a cable of neither 2 nor 3 rows");
  base::require(side == "right" || side == "left", "a side for the further rows that is none of its words");
  LineRead read = read_line(values, over, count, Slants::allowed);
  if (!read.faults.empty()) return {{}, std::move(read.faults)};
  ItemFaults faults(value<std::string>(values, "path"));
  const Line& line = read.line;
  Work work;
  const std::vector<Row> rows = make_rows(line, count, side == "right" ? RowsLie::right : RowsLie::left, work, faults);
  if (faults.any()) return {{}, faults.take()};
  const Spare spare = value<std::string>(values, "step_back") == "start" ? Spare::at_start : Spare::at_end;
  return {make_work(line, rows, spare, std::move(work)), {}};
}

}  // namespace

Kind cable_kind() {
  return {.name = "cable",
          .keys = {required_hole("start"), required_path("path"), whole("rows", 2, 2, 3), word("rows_lie", "right", {"right", "left"}),
                   word("step_back", "end", {"end", "start"})},
          .build = build,
          .stitches_a_minute = 5};  // an assumption, no source
}

}  // namespace stitch
