// Backstitch along a path: every stitch is worked backwards against the way of going, so the needle comes up one stitch ahead and goes down
// where the last one came up (common practice, no source). Legs in the eight ways.
#include "stitch/keys.h"
#include "stitch/kinds.h"
#include "stitch/line.h"
#include "stitch/line_row.h"
#include "stitch/values.h"

namespace stitch {
namespace {

constexpr int least_over = 1, most_over = 12;

Work make_work(const Line& line, int over) {
  Row row = make_row(line, line.corners, over);
  Work work;
  work.closed = line.closed;
  work.piece = Piece::side;
  add_features(work, line, row, 0);
  add_legs(work, line, row, 0);
  for (std::size_t i = 0; i < line.corners.size() - (line.closed ? 1 : 0); ++i) work.corners.push_back({line.corners[i]});
  for (cloth::Stitch& stitch : row.stitches) stitch = stitch.reversed();
  Pass pass{{}, Order::in_turn, line.closed};
  for (std::size_t leg = 0; leg + 1 < row.begins.size(); ++leg) {
    const auto at = [&](std::size_t i) { return row.stitches.begin() + static_cast<std::ptrdiff_t>(row.begins[i]); };
    pass.runs.push_back({{at(leg), at(leg + 1)}, std::vector<int>(row.begins[leg + 1] - row.begins[leg], static_cast<int>(leg)), Freedom::each_way, DownSide::none});
  }
  work.stitches = std::move(row.stitches);
  work.passes.push_back(std::move(pass));
  return work;
}

Outcome build(const Values& values) {
  const std::string& path = value<std::string>(values, "path");
  const cloth::Hole start = value<cloth::Hole>(values, "start");
  const int over = value<int>(values, "over");
  ParsedPath parsed = parse_path("path", path, Apart::refused);
  if (!within_limit(start.x, start.y)) parsed.faults.insert(parsed.faults.begin(), start_beyond_limit(start));
  if (!parsed.faults.empty()) return {{}, std::move(parsed.faults)};
  ItemFaults faults(path);
  const Line line = lay_line(start, parsed.items, over, 1, faults);
  if (faults.any()) return {{}, faults.take()};
  return {make_work(line, over), {}};
}

}  // namespace

Kind backstitch_kind() {
  return {.name = "backstitch",
          .keys = {required_hole("start"), required_path("path"), whole("over", 2, least_over, most_over)},
          .build = build,
          .stitches_a_minute = 6};  // an assumption, no source
}

}  // namespace stitch
