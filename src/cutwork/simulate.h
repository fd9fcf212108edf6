// The second method: the cloth after all snips, every thread as pieces. It knows nothing of areas, rows or partners.
#pragma once

#include <vector>

#include "cutwork/cutting.h"

namespace cutwork {

struct LooseEnd {
  Axis axis = Axis::v;
  int thread = 0, at = 0;
  friend auto operator<=>(const LooseEnd&, const LooseEnd&) = default;
};

struct Simulated {
  std::vector<LooseEnd> loose;       ///< ends of what is left that no two stitches hold; sorted
  std::vector<int> without_ground;   ///< surface stitches, by index in the request
  std::vector<int> blocks_harmed;    ///< blocks with a stitch that lost its ground
  std::vector<Span> not_free;        ///< to be withdrawn, but not a whole piece between two snips
  std::vector<cloth::Hole> hanging;  ///< the ends of pieces between two snips that stay and that no stitches hold at all
};

/// Cuts the cloth and takes the spans out.
Simulated simulate(const Request& request, const std::vector<Cut>& cuts, const std::vector<Span>& withdrawn);

}  // namespace cutwork
