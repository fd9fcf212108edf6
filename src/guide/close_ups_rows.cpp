// Corners of two rows worked turn about, and of a row alone. Away from corners the rows alternate, level and forwards: the rhythm. What is
// marked as over or worked backwards is outside it.
#include "guide/close_ups_rows.h"

#include <algorithm>

#include "guide/close_ups_corners.h"

namespace guide {
namespace {

constexpr int beside = 4;    // stitches of the rhythm on either side of a corner: two of each row
constexpr int at_start = 8;  // stitches numbered at a start
constexpr int few = 4;       // fewer at a start do not show the rhythm
constexpr int at_end = 4;

bool in_rhythm(const trail::Worked& w) { return !w.over && !w.backward; }

/// From `from` on by `by` (1, -1) while the stitches are of the leg, in the rhythm or not as asked, at most so many. How many.
int run_of(const Needle& needle, int from, int by, bool rhythm, int most) {
  if (most <= 0 || !needle.known(from)) return 0;
  const int leg = needle.at(from).leg;
  int n = 0;
  for (int k = from; n < most && needle.known(k) && needle.at(k).leg == leg && in_rhythm(needle.at(k)) == rhythm; k += by) ++n;
  return n;
}

/// The same, of the leg of another stitch.
int run_on_leg(const Needle& needle, int from, int by, bool rhythm, int most, int leg) {
  return needle.known(from) && needle.at(from).leg == leg ? run_of(needle, from, by, rhythm, most) : 0;
}

/// Begins with the first row and ends with the other, as far as something is left on either side of the core.
void keep_pairs(const Needle& needle, Corner& corner) {
  Span& around = corner.around;
  if (!needle.turn_about()) return;
  if (needle.at(around.first).run != 0 && corner.core.first - around.first > 1) ++around.first;
  if (needle.at(around.last).run == needle.at(around.first).run && around.last - corner.core.last > 1) --around.last;
}

/// The stitch of the first row next to the turn, on the leg before (by -1) or after (by 1).
const trail::Worked* first_row_stitch(const Needle& needle, const Corner& corner, int by) {
  const int from = by < 0 ? corner.turn - 1 : corner.turn;
  const int leg = needle.at(from).leg;
  for (int k = from; corner.around.holds(k) && needle.at(k).leg == leg; k += by)
    if (needle.at(k).run == 0) return &needle.at(k);
  return nullptr;
}

bool slanted(const trail::Worked& w) { return w.up.x != w.down.x && w.up.y != w.down.y; }
cloth::Way way_of(const trail::Worked& w) { return nearest_way(craft_end(w) - craft_start(w)); }

/// Of two stitches that follow each other in a row; else where the second begins.
cloth::Hole shared_hole(const trail::Worked& one, const trail::Worked& next) {
  return one.up == next.down || one.down == next.down ? next.down : next.up;
}

}  // namespace

Corner row_corner(const Needle& needle, int turn) {
  const int n = needle.size(), leg_before = needle.at(turn - 1).leg, leg_after = needle.at(turn).leg;
  Corner corner{turn, {}, {}};
  corner.core.first = turn - run_of(needle, turn - 1, -1, false, n / 2);
  corner.core.last = turn - 1 + run_of(needle, turn, 1, false, n / 2);
  const int room = std::max(0, (n - corner.core.count()) / 2);  // a small circle is not gone round twice
  const int most = std::min(beside, room);
  corner.around.first = corner.core.first - run_on_leg(needle, corner.core.first - 1, -1, true, most, leg_before);
  corner.around.last = corner.core.last + run_on_leg(needle, corner.core.last + 1, 1, true, most, leg_after);
  keep_pairs(needle, corner);
  return corner;
}

std::vector<Corner> row_corners(const Needle& needle, const Span& within) {
  std::vector<Corner> corners;
  for (int k = within.first + 1; k <= within.last; ++k)
    if (needle.at(k).leg != needle.at(k - 1).leg) corners.push_back(row_corner(needle, k));
  return corners;
}

cloth::Hole row_corner_hole(const Needle& needle, const Corner& corner) {
  if (!needle.turn_about()) return shared_hole(needle.at(corner.turn - 1), needle.at(corner.turn));
  if (const auto* before = first_row_stitch(needle, corner, -1)) return craft_end(*before);
  if (const auto* after = first_row_stitch(needle, corner, 1)) return craft_start(*after);
  return craft_start(needle.at(corner.turn));
}

Span first_row_stitches(const Needle& needle, const Span& section) {
  int from = section.first;  // a section may begin in the middle of a corner
  while (from < section.last && !in_rhythm(needle.at(from))) ++from;
  const int rhythm = run_of(needle, from, 1, true, std::min(at_start, section.last - from + 1));
  int last = std::max(from, from + rhythm - 1);
  if (rhythm < few)
    for (int k = last + 1; k <= section.last; ++k) {
      if (needle.at(k).leg == needle.at(k - 1).leg) continue;
      last = row_corner(needle, k).around.last;
      break;
    }
  return {section.first, std::min(last, section.last)};
}

Span last_row_stitches(const Span& section) { return {std::max(section.first, section.last - at_end + 1), section.last}; }

void tell_row_corner(const Needle& needle, const Corner& corner, CloseUp& close_up) {
  const trail::Worked &before = needle.at(corner.turn - 1), &after = needle.at(corner.turn);
  close_up.from_slant = slanted(before);
  close_up.to_slant = slanted(after);
  close_up.turn_eighths = turn_eighths(way_of(before), way_of(after));
  int row = -1;
  for (int k = corner.core.first; k <= corner.core.last; ++k) {
    const trail::Worked& w = needle.at(k);
    if (w.over) ++(k < corner.turn ? close_up.over_before : close_up.over_after);
    if (row < 0 && w.over) row = w.run;
  }
  if (!close_up.steps_back.empty()) close_up.row_over = row >= 0 ? row : needle.at(close_up.steps_back.front()).run;
}

}  // namespace guide
