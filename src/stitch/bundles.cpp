// A bundle is one run and one feature.
#include "stitch/bundles.h"

#include <algorithm>

namespace stitch {

void add_bundle(Work& work, Pass& pass, std::vector<cloth::Stitch> stitches, Shape shape, int along) {
  cloth::Hole least = stitches.front().a;
  for (const cloth::Stitch& s : stitches)
    for (const cloth::Hole hole : {s.a, s.b}) least = {std::min(least.x, hole.x), std::min(least.y, hole.y)};
  work.features.push_back({shape, stitches, least, 0, along});
  work.stitches.insert(work.stitches.end(), stitches.begin(), stitches.end());
  std::vector<int> legs(stitches.size(), 0);
  pass.runs.push_back({std::move(stitches), std::move(legs), Freedom::all_alike, DownSide::none});
}

}  // namespace stitch
