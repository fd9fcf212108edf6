#include "picture/fold.h"

#include <algorithm>

#include "picture/ink.h"
#include "picture/styles.h"

namespace picture {

std::vector<Capsule> fold_lines(Point middle, const Rect& frame) {
  std::vector<Capsule> lines;
  if (frame.y <= middle.y && middle.y <= frame.y + frame.h) lines.push_back({{frame.x, middle.y}, {frame.x + frame.w, middle.y}, 0.15});
  if (frame.x <= middle.x && middle.x <= frame.x + frame.w) lines.push_back({{middle.x, frame.y}, {middle.x, frame.y + frame.h}, 0.15});
  return lines;
}

void draw_folds(list::List& list, Point middle, const Rect& frame) {
  constexpr double dash = 3.2, free = 1.0;  // mm: far longer than the dashes of the thread on the back
  for (const Capsule& line : fold_lines(middle, frame)) {
    const double all = length(minus(line.b, line.a));
    for (double at = 0; at < all; at += dash + free)
      add_line(list, list::Role::landmark, between(line.a, line.b, at / all), between(line.a, line.b, std::min(1.0, (at + dash) / all)),
               0.3, colour::accent, list::Cap::flat);
  }
  add_disc(list, list::Role::landmark, middle, fold_radius, colour::accent);
}

}  // namespace picture
