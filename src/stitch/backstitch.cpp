// Backstitch along a path: every stitch is worked backwards against the way of going, so the needle comes up one stitch ahead and goes down
// where the last one came up; or in double running, out with every second stitch and back with the others (common practice, no source).
// Legs in the eight ways.
#include <fmt/format.h>

#include <unordered_set>

#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/line.h"
#include "stitch/line_row.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int least_over = 1, most_over = 12;

enum class Worked { back, double_running };

/// Every stitch against the way of going, leg by leg.
Pass back(const Line& line, const Row& row) {
  Pass pass{{}, Order::in_turn, line.closed};
  for (std::size_t leg = 0; leg + 1 < row.begins.size(); ++leg) {
    Run run;
    for (std::size_t i = row.begins[leg]; i < row.begins[leg + 1]; ++i) run.stitches.push_back(row.stitches[i].reversed());
    run.legs.assign(run.stitches.size(), static_cast<int>(leg));
    pass.runs.push_back(std::move(run));
  }
  return pass;
}

/// Out with every second stitch, and back with those left out, against the way of the path: so the back looks like the front. A closed line
/// is begun where it is written and gone round twice, there and back.
Pass double_running(const Line& line, const Row& row) {
  Pass pass{{}, Order::in_turn, false};
  const auto add = [&](const cloth::Stitch& stitch, int leg) {
    if (pass.runs.empty() || pass.runs.back().legs.back() != leg) pass.runs.emplace_back();
    pass.runs.back().stitches.push_back(stitch);
    pass.runs.back().legs.push_back(leg);
  };
  const std::size_t n = row.stitches.size();
  for (std::size_t i = 0; i < n; i += 2) add(row.stitches[i], row.legs[i]);
  const int legs = static_cast<int>(line.legs.size());
  for (std::size_t i = n; i-- > 0;)
    if (i % 2 == 1) add(row.stitches[i].reversed(), 2 * legs - 1 - row.legs[i]);
  return pass;
}

/// Told at the item that leads over a stitch a second time.
void check_each_once(const Line& line, const Row& row, ItemFaults& faults) {
  std::unordered_set<cloth::Stitch> seen;
  for (std::size_t i = 0; i < row.stitches.size(); ++i)
    if (const cloth::Stitch& s = row.stitches[i]; !seen.insert(s.normal()).second)
      faults.at_item(line.legs[static_cast<std::size_t>(row.legs[i])].item,
                     fmt::format("which leads over the stitch from [{}, {}] to [{}, {}] a second time", s.a.x, s.a.y, s.b.x, s.b.y),
                     "a path that goes over every stitch once");
}

Work make_work(const Line& line, const Row& row, Worked worked) {
  Work work;
  work.closed = line.closed;
  work.piece = worked == Worked::back ? Piece::side : Piece::side_there_and_back;
  add_features(work, line, row, 0);
  add_legs(work, line, row, 0);
  for (std::size_t i = 0; i < line.corners.size() - (line.closed ? 1 : 0); ++i) work.corners.push_back({line.corners[i]});
  Pass pass = worked == Worked::back ? back(line, row) : double_running(line, row);
  for (const Run& run : pass.runs) work.stitches.insert(work.stitches.end(), run.stitches.begin(), run.stitches.end());
  work.passes.push_back(std::move(pass));
  return work;
}

Outcome build(const Values& values) {
  const int over = value<int>(values, "over");
  LineRead read = read_line(values, over, 1, Slants::allowed);
  if (!read.faults.empty()) return {{}, std::move(read.faults)};
  ItemFaults faults(value<std::string>(values, "path"));
  const Line& line = read.line;
  const Row row = make_row(line, line.corners, over);
  check_each_once(line, row, faults);
  if (faults.any()) return {{}, faults.take()};
  const bool back = value<std::string>(values, "worked") == "back";
  return {make_work(line, row, back ? Worked::back : Worked::double_running), {}};
}

}  // namespace

Kind backstitch_kind() {
  return {.name = "backstitch",
          .keys = {required_hole("start"), required_path("path"), whole("over", 2, least_over, most_over),
                   word("worked", "back", {"back", "double running"})},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
