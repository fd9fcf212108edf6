// A trail's stitches as the close-ups look at them: by number, a closed trail as a circle. Also stretches of stitches, ways and holes
// between neighbours. Nothing here knows lessons.
#pragma once

#include "guide/guide.h"

namespace guide {

/// Stitches first..last, both included; none where last is before first. In a circle it may run over either end of the trail.
struct Span {
  int first = 0, last = -1;
  int count() const { return last - first + 1; }
  bool holds(int stitch) const { return first <= stitch && stitch <= last; }
  bool holds(const Span& other) const { return first <= other.first && other.last <= last; }
  friend bool operator==(const Span&, const Span&) = default;
};

/// What both have.
Span common(const Span& a, const Span& b);

class Needle {
 public:
  Needle(const course::Course& course, const PlacedTrail& trail);
  int size() const { return static_cast<int>(trail_->stitches.size()); }
  bool closed() const { return trail_->closed; }
  /// Two rows worked turn about; otherwise one run (block) after another.
  bool turn_about() const { return turn_about_; }
  /// Stitches one by one along a line, of two rows or of one; otherwise piece by piece.
  bool rows() const { return turn_about_ || single_row_; }
  /// Pieces in no order of their own: no flight bends between them.
  bool scattered() const { return scattered_; }
  /// Buttonhole stitches, one caught by the next.
  bool looped() const { return trail_->order == stitch::Order::looped; }
  const trail::Trail& trail() const { return *trail_; }
  /// Is there such a stitch? In a circle always.
  bool known(int stitch) const { return closed() ? size() > 0 : 0 <= stitch && stitch < size(); }
  const trail::Worked& at(int stitch) const;
  /// The stitches round this one that belong to the same run, along the trail (never over the end of a circle).
  Span block(int stitch) const;

 private:
  const trail::Trail* trail_;
  bool turn_about_ = false, single_row_ = false, scattered_ = false;
};

/// Where a stitch begins and ends in its run's own way, whichever way it was worked.
inline cloth::Hole craft_start(const trail::Worked& w) { return w.backward ? w.down : w.up; }
inline cloth::Hole craft_end(const trail::Worked& w) { return w.backward ? w.up : w.down; }

/// The nearest of the eight ways.
cloth::Way nearest_way(cloth::Hole step);
/// From one way to another in 45 degree steps, -3 to 4, right positive.
int turn_eighths(cloth::Way from, cloth::Way to);

}  // namespace guide
