#include "guide/close_ups_window.h"

#include <algorithm>

namespace guide {
namespace {

constexpr int room = 3;  // threads round the outermost points
constexpr int least_width = 12, least_height = 10;

void grow(cloth::Box& box, const trail::Worked& w) {
  box.grow(w.up);
  box.grow(w.down);
}

/// The back before the first numbered stitch is not drawn.
void grow_by_back(cloth::Box& box, const trail::Trail& trail, const Span& numbered) {
  auto under = std::lower_bound(trail.under.begin(), trail.under.end(), numbered.first + 1,
                                [](const trail::Under& u, int stitch) { return u.stitch < stitch; });
  for (; under != trail.under.end() && under->stitch <= numbered.last; ++under)
    for (const cloth::Hole hole : under->via) box.grow(hole);
}

void widen(int& low, int& high, int least) {
  const int lacking = std::max(0, least - (high - low));
  low -= lacking / 2;
  high += lacking - lacking / 2;
}

}  // namespace

cloth::Box window_round(const Needle& needle, const Span& numbered, const Span& also) {
  const cloth::Hole first = needle.at(numbered.first).up;
  cloth::Box box{first.x, first.y, first.x, first.y};
  for (int k = numbered.first; k <= numbered.last; ++k) grow(box, needle.at(k));
  for (int k = also.first; k <= also.last; ++k) grow(box, needle.at(k));
  grow_by_back(box, needle.trail(), numbered);
  box = box.widened(room);
  widen(box.x0, box.x1, least_width);
  widen(box.y0, box.y1, least_height);
  return box;
}

std::string letter(int number) {
  std::string letters;
  for (int n = number; n >= 0; n = n / 26 - 1) letters.insert(letters.begin(), static_cast<char>('A' + n % 26));
  return letters;
}

}  // namespace guide
