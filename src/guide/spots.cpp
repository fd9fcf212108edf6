#include "guide/spots.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace guide {
namespace {

/// The stitch's way as the smallest whole step, downwards for upright stitches, to the right for those across.
cloth::Hole way_of(const cloth::Stitch& s, bool upright) {
  const cloth::Hole d = s.b - s.a;
  const int unit = std::gcd(d.x, d.y);
  if (unit == 0) return {};
  const bool back = upright ? d.y < 0 : d.x < 0;
  return {(back ? -d.x : d.x) / unit, (back ? -d.y : d.y) / unit};
}

/// How far to the right (upright) or down (across) the stitch's line lies.
std::int64_t offset(const cloth::Stitch& s, cloth::Hole way, bool upright) {
  const std::int64_t turn = static_cast<std::int64_t>(s.a.x) * way.y - static_cast<std::int64_t>(s.a.y) * way.x;
  return upright ? turn : -turn;
}

std::vector<Candidate> bundle_spots(const std::vector<cloth::Stitch>& stitches, int number) {
  const cloth::Hole d = stitches[0].b - stitches[0].a;
  const bool upright = std::abs(d.y) >= std::abs(d.x);
  const cloth::Hole way = way_of(stitches[0], upright);
  std::vector<std::pair<std::int64_t, cloth::Stitch>> lines;
  for (const cloth::Stitch& s : stitches) {
    if (s.a == s.b || way_of(s, upright) != way) return {};
    const bool back = upright ? s.b.y < s.a.y : s.b.x < s.a.x;
    lines.emplace_back(offset(s, way, upright), back ? s.reversed() : s);
  }
  std::sort(lines.begin(), lines.end());
  if (std::adjacent_find(lines.begin(), lines.end(), [](auto& a, auto& b) { return a.first == b.first; }) != lines.end()) return {};
  std::vector<Candidate> spots;
  const int of = static_cast<int>(lines.size());
  for (int i = 0; i < of; ++i) {
    const cloth::Stitch& s = lines[i].second;
    const bool plain = i > 0 && i < of - 1;
    spots.push_back({s.a, number, {i, of, upright, upright ? Side::top : Side::left}, s, plain});
    spots.push_back({s.b, number, {i, of, upright, upright ? Side::bottom : Side::right}, s, plain});
  }
  return spots;
}

}  // namespace

std::vector<Candidate> spots_of(const stitch::Feature& feature, int number) {
  if (!stitch::side_by_side(feature.shape)) return {{feature.hole, number, {}, {}, false}};
  return feature.stitches.empty() ? std::vector<Candidate>{} : bundle_spots(feature.stitches, number);
}

cloth::Box box_of(const stitch::Feature& feature) {
  cloth::Box box{feature.hole.x, feature.hole.y, feature.hole.x, feature.hole.y};
  if (!stitch::side_by_side(feature.shape) || feature.stitches.empty()) return box;
  const cloth::Hole first = feature.stitches[0].a;
  box = {first.x, first.y, first.x, first.y};
  for (const cloth::Stitch& s : feature.stitches) {
    box.grow(s.a);
    box.grow(s.b);
  }
  return box;
}

}  // namespace guide
