#include "trail/thread.h"

#include <algorithm>

namespace trail {
namespace {

double along(cloth::Hole from, const std::vector<cloth::Hole>& via, cloth::Hole to, double tall) {
  double length = 0;
  for (const cloth::Hole hole : via) {
    length += cloth::distance(from, hole, tall);
    from = hole;
  }
  return length + cloth::distance(from, to, tall);
}

}  // namespace

std::vector<double> back_to_each(const std::vector<Worked>& stitches, const std::vector<Under>& under, double tall) {
  std::vector<double> back(stitches.size(), 0);
  for (std::size_t k = 1; k < stitches.size(); ++k) back[k] = cloth::distance(stitches[k - 1].down, stitches[k].up, tall);
  for (const Under& way : under) {
    const auto k = static_cast<std::size_t>(way.stitch);
    back[k] = along(stitches[k - 1].down, way.via, stitches[k].up, tall);
  }
  return back;
}

double thread_of(const Trail& trail, int first, int last) {
  double length = 0;
  auto under = std::lower_bound(trail.under.begin(), trail.under.end(), first, [](const Under& u, int k) { return u.stitch < k; });
  for (int k = std::max(first, 0); k <= last && k < static_cast<int>(trail.stitches.size()); ++k) {
    const auto i = static_cast<std::size_t>(k);
    length += front(trail.stitches[i], trail.tall);
    const bool bent = under != trail.under.end() && under->stitch == k;
    if (k > 0 && !std::binary_search(trail.ends.begin(), trail.ends.end(), k))
      length += along(trail.stitches[i - 1].down, bent ? under->via : std::vector<cloth::Hole>{}, trail.stitches[i].up, trail.tall);
    if (bent) ++under;
  }
  return length;
}

}  // namespace trail
