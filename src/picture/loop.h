// A buttonhole stitch being made, as a needle with its thread: what no points can show, the thread under the needle's point.
#pragma once

#include <vector>

#include "picture/view.h"

namespace picture {

/// The needle in the cloth, before it is pulled through: down in `down`, up in `up`, while the thread from the ridge hole `last` lies under
/// its point and goes back to its eye.
class Loop {
 public:
  /// `next`: the ridge hole after `up`; it says the way where `last` is `up` itself, at the start of a thread.
  Loop(const View& view, cloth::Hole last, cloth::Hole down, cloth::Hole up, cloth::Hole next);
  /// `width`: of the thread, mm.
  void draw(list::List& list, double width) const;
  /// The room it takes, for numbers to keep off.
  std::vector<Capsule> room() const;

 private:
  double unit_;
  Point down_, up_, eye_, tip_;
  std::vector<Point> thread_;
};

}  // namespace picture
