// What the rows of a line are called: outer, middle, inner where it closes; first, second, third where it is open.
#include <algorithm>
#include <cstdint>

#include "say/say.h"

namespace say {
namespace {

/// Width and height of a row, added: the outer of two closed rows has more.
std::int64_t reach(const stitch::Work& work, int row) {
  bool any = false;
  cloth::Box box;
  for (const stitch::Feature& feature : work.features) {
    if (stitch::side_by_side(feature.shape) || feature.row != row) continue;
    if (!any) box = {feature.hole.x, feature.hole.y, feature.hole.x, feature.hole.y};
    any = true;
    box.grow(feature.hole);
  }
  return any ? static_cast<std::int64_t>(box.width()) + box.height() : 0;
}

int rows_of(const stitch::Work& work) {
  int rows = 0;
  for (const stitch::Feature& feature : work.features) rows = std::max(rows, feature.row + 1);
  return rows;
}

}  // namespace

RowPlace row_place(const course::Course& course, int part, int row) {
  const stitch::Work& work = course.parts[part].work;
  const int rows = rows_of(work);
  if (!work.closed || rows < 2) return static_cast<RowPlace>(std::min(row, 2));
  const bool first_outside = reach(work, 0) > reach(work, rows - 1);
  const int from_outside = first_outside ? row : rows - 1 - row;
  if (from_outside == 0) return RowPlace::outer;
  return from_outside == rows - 1 ? RowPlace::inner : RowPlace::middle;
}

std::string row_name(const Voice& voice, int part, int row) {
  constexpr const char* keys[] = {"row.first", "row.second", "row.third", "row.outer", "row.middle", "row.inner"};
  return voice.phrases.say(keys[static_cast<int>(row_place(voice.course, part, row))]);
}

}  // namespace say
