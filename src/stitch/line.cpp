// Legs of a line: merged, closed, and held against what a stitch needs and against the limits, before any stitch is laid.
#include "stitch/line.h"

#include <fmt/format.h>

namespace stitch {
namespace {

/// A position that may lie beyond what a hole can hold.
struct Place {
  std::int64_t x, y;
  friend bool operator==(const Place&, const Place&) = default;
};

Place moved(Place from, cloth::Way way, std::int64_t threads) {
  return {from.x + cloth::step(way).x * threads, from.y + cloth::step(way).y * threads};
}

bool straight_back(cloth::Way one, cloth::Way next) { return next == cloth::turned(one, 4); }

void fault_back(const PathItem& item, ItemFaults& faults) {
  faults.at_item(item, "which turns straight back along the leg before it", "any other direction");
}

/// Items that go on the same way become one leg. Tells of turns straight back.
std::vector<LineLeg> merged(const std::vector<PathItem>& items, ItemFaults& faults) {
  std::vector<LineLeg> legs;
  for (const PathItem& item : items) {
    if (legs.empty() || legs.back().way != item.way) {
      if (!legs.empty() && straight_back(legs.back().way, item.way)) fault_back(item, faults);
      legs.push_back({item.way, 0, item});
    }
    legs.back().threads += item.number;
    legs.back().item = item;
  }
  return legs;
}

/// Where the path ends. Tells of the first item that leads beyond a limit.
Place walk(Place at, const std::vector<PathItem>& items, int over, int rows, ItemFaults& faults) {
  std::int64_t threads = 0;
  bool told = false;
  for (const PathItem& item : items) {
    at = moved(at, item.way, item.number);
    threads += item.number;
    if (told) continue;
    const std::int64_t stitches = threads / over * rows;
    told = stitches > stitch_limit || !within_limit(at.x, at.y);
    if (!told) continue;
    if (stitches > stitch_limit) {
      faults.at_item(item, fmt::format("by which there are {} stitches", stitches), stitch_limit_in_words());
    } else {
      faults.at_item(item, fmt::format("which leads to the hole [{}, {}]", at.x, at.y), hole_limit_in_words());
    }
  }
  return at;
}

/// A closed line that starts in the middle of a side is begun where that side begins.
Place begun_at_corner(Place start, std::vector<LineLeg>& legs) {
  if (legs.size() < 2 || legs.front().way != legs.back().way) return start;
  const Place corner = moved(start, legs.back().way, -legs.back().threads);
  legs.front().threads += legs.back().threads;
  legs.front().item = legs.back().item;
  legs.pop_back();
  return corner;
}

/// A leg that is no whole number of stitches: told at the number of its last item, with the nearest numbers that are right there.
void fault_uneven(const LineLeg& leg, int over, ItemFaults& faults) {
  const int left = static_cast<int>(leg.threads % over);
  if (left == 0) return;
  const int less = leg.item.number - left, more = less + over;
  const std::string which = less > 0 ? fmt::format("{} or {}", less, more) : std::to_string(more);
  const std::string what = over == 2 ? "an even number of threads" : fmt::format("a number of threads for stitches over {}", over);
  faults.at_number(leg.item, fmt::format("{}: {}", leg.threads == leg.item.number ? what : what + " in the whole leg", which));
}

}  // namespace

Line lay_line(cloth::Hole start, const std::vector<PathItem>& items, int over, int rows, ItemFaults& faults) {
  Line line;
  line.legs = merged(items, faults);
  Place at{start.x, start.y};
  line.closed = walk(at, items, over, rows, faults) == at;
  if (line.closed && straight_back(line.legs.back().way, line.legs.front().way)) fault_back(line.legs.back().item, faults);
  if (line.closed) at = begun_at_corner(at, line.legs);
  for (const LineLeg& leg : line.legs) fault_uneven(leg, over, faults);
  if (faults.any()) return {};
  line.corners.push_back({static_cast<int>(at.x), static_cast<int>(at.y)});
  for (const LineLeg& leg : line.legs) {
    at = moved(at, leg.way, leg.threads);
    line.corners.push_back({static_cast<int>(at.x), static_cast<int>(at.y)});
  }
  return line;
}

LineRead read_line(const Values& values, int over, int rows, Slants slants) {
  const std::string& path = value<std::string>(values, "path");
  const cloth::Hole start = value<cloth::Hole>(values, "start");
  ParsedPath parsed = parse_path("path", path, Apart::refused);
  if (!within_limit(start.x, start.y)) parsed.faults.insert(parsed.faults.begin(), start_beyond_limit(start));
  if (!parsed.faults.empty()) return {{}, std::move(parsed.faults)};
  ItemFaults faults(path);
  for (const PathItem& item : parsed.items)
    if (slants == Slants::refused && cloth::slanted(item.way)) faults.at_item(item, "a slanted leg", "a straight one: N, E, S or W");
  if (faults.any()) return {{}, faults.take()};
  Line line = lay_line(start, parsed.items, over, rows, faults);
  if (faults.any()) return {{}, faults.take()};
  return {std::move(line), {}};
}

}  // namespace stitch
