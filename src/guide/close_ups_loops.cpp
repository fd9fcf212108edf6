#include "guide/close_ups_loops.h"

#include <algorithm>

namespace guide {
namespace {

constexpr int beside = 2;    // stitches on either side of a corner
constexpr int at_start = 7;  // stitches numbered at a start
constexpr int few = 3;       // fewer at a start do not show the rhythm
constexpr int at_end = 4;

bool outer(const Needle& needle, int turn) { return needle.at(turn - 1).down == needle.at(turn).down; }

Corner loop_corner(const Needle& needle, int turn) {
  Corner corner{turn, {turn - 1, turn}, {}};
  if (outer(needle, turn))
    while (needle.known(corner.core.first - 1) && corner.core.count() < needle.size() &&
           needle.at(corner.core.first - 1).down == needle.at(turn).down)
      --corner.core.first;
  const int room = std::max(0, (needle.size() - corner.core.count()) / 2);  // a small circle is not gone round twice
  corner.around = corner.core;
  for (int i = 0; i < std::min(beside, room) && needle.known(corner.around.first - 1); ++i) --corner.around.first;
  for (int i = 0; i < std::min(beside, room) && needle.known(corner.around.last + 1); ++i) ++corner.around.last;
  return corner;
}

/// The way of the side that a stitch stands on: the ridge lies to its right.
cloth::Way way_of(const trail::Worked& w) { return cloth::turned(nearest_way(w.up - w.down), -2); }

}  // namespace

std::vector<Corner> loop_corners(const Needle& needle, const Span& within) {
  std::vector<Corner> corners;
  for (int k = within.first + 1; k <= within.last; ++k)
    if (needle.at(k).leg != needle.at(k - 1).leg) corners.push_back(loop_corner(needle, k));
  return corners;
}

cloth::Hole loop_corner_hole(const Needle& needle, const Corner& corner) {
  const trail::Worked& after = needle.at(corner.turn);
  return outer(needle, corner.turn) ? after.down : after.up;
}

Span first_loops(const Needle& needle, const Span& section) {
  const int most = std::min(section.last, section.first + at_start - 1);
  int last = section.first;
  while (last < most && needle.at(last + 1).leg == needle.at(section.first).leg && !needle.at(last + 1).over) ++last;
  if (last - section.first + 1 >= few || last == section.last) return {section.first, last};
  for (int k = last + 1; k <= section.last; ++k)
    if (needle.at(k).leg != needle.at(k - 1).leg) return {section.first, std::min(loop_corner(needle, k).around.last, section.last)};
  return {section.first, std::max(most, last)};
}

Span last_loops(const Span& section) { return {std::max(section.first, section.last - at_end + 1), section.last}; }

void tell_loop_corner(const Needle& needle, const Corner& corner, CloseUp& close_up) {
  close_up.turn_eighths = turn_eighths(way_of(needle.at(corner.core.first)), way_of(needle.at(corner.turn)));
}

}  // namespace guide
