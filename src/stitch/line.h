// A line's path as legs between corner holes. Items that go on the same way are one leg; a closed line begins at a corner.
#pragma once

#include <cstdint>
#include <vector>

#include "cloth/hole.h"
#include "cloth/way.h"
#include "stitch/item_faults.h"
#include "stitch/path.h"
#include "stitch/values.h"

namespace stitch {

struct LineLeg {
  cloth::Way way = cloth::Way::E;
  std::int64_t threads = 0;  ///< on a slant so many across and so many up or down
  PathItem item;             ///< the last item written for it
};

struct Line {
  std::vector<LineLeg> legs;
  std::vector<cloth::Hole> corners;  ///< one more than legs; of a closed line the last is the first again
  bool closed = false;
};

/// Works the legs out. `over` is what one stitch crosses: every leg is a whole number of stitches. `rows` lines like this one keep within
/// the limit of stitches. Where there is a fault, the line is empty.
Line lay_line(cloth::Hole start, const std::vector<PathItem>& items, int over, int rows, ItemFaults& faults);

enum class Slants { allowed, refused };

struct LineRead {
  Line line;  ///< empty where there are faults
  std::vector<KeyFault> faults;
};

/// The line that the keys `start` and `path` of a kind write, every fault told at its place; `over` and `rows` as for `lay_line`.
LineRead read_line(const Values& values, int over, int rows, Slants slants);

}  // namespace stitch
