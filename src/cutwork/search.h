// The first method: from block end to block end along each enclosed thread.
#pragma once

#include "cutwork/areas.h"

namespace cutwork {

/// A thread's end that would be loose: where it is, on which thread.
struct Loose {
  Axis axis = Axis::v;
  int thread = 0, at = 0;
  friend auto operator<=>(const Loose&, const Loose&) = default;
};

/// A thread to be taken out of an area, with what stands at both ends.
struct Taken {
  Axis axis = Axis::v;
  const Run* run = nullptr;
};

/// What would be cut, were it allowed; what would be loose then.
struct Search {
  std::vector<Taken> taken;  ///< rows first, each by line and place
  std::vector<Loose> loose;  ///< sorted
};

/// `areas` must outlive the answer.
Search search(const Request& request, const Walls& walls, const Areas& areas, std::vector<Problem>& problems);

/// Stitches that lie over what is taken, by index in the request.
struct Over {
  std::vector<int> surface;
  std::vector<int> blocks;  ///< blocks of which a stitch does: one that lies across another's end
};
Over lying_over(const Request& request, const std::vector<Taken>& taken);

}  // namespace cutwork
