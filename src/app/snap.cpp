#include "app/snap.h"

#include <algorithm>
#include <cstdlib>

#include "app/sight.h"

namespace app {

namespace {

constexpr std::size_t many_features = 200;  // beyond which those without a leg are no corners any more

/// Middles of eyelets, corners of bars and petals: what has no leg to go along.
std::vector<cloth::Hole> corners_of_features(const stitch::Work& work) {
  std::vector<cloth::Hole> corners;
  const std::size_t of_one_place = work.features.size() / static_cast<std::size_t>(work.places);
  if (of_one_place > many_features) return corners;
  for (std::size_t i = 0; i < of_one_place; ++i) {
    const stitch::Feature& feature = work.features[i];
    if (feature.shape == stitch::Shape::centre) corners.push_back(feature.hole);
    if (!stitch::side_by_side(feature.shape) || feature.stitches.empty()) continue;
    const cloth::Stitch &first = feature.stitches.front(), &last = feature.stitches.back();
    corners.insert(corners.end(), {first.a, first.b, last.a, last.b});
  }
  return corners;
}

}  // namespace

std::vector<cloth::Hole> corners_of(const stitch::Work& work) {
  if (work.legs.empty()) return corners_of_features(work);
  std::vector<cloth::Hole> corners;
  for (const stitch::Leg& leg : work.legs)
    if (leg.place == 0) corners.insert(corners.end(), {leg.from, leg.to});
  return corners;
}

Snapped snapped(const course::Course& course, const std::vector<cloth::Hole>& own, int except, cloth::Hole by) {
  std::vector<cloth::Hole> others{course::middle(course)};
  for (std::size_t p = 0; p < course.parts.size(); ++p)
    if (static_cast<int>(p) != except)
      for (const cloth::Hole corner : corners_of(course.parts[p].work)) others.push_back(corner);
  Snapped best{by, {}, {}, false};
  int nearest = 0;
  for (const cloth::Hole corner : own) {
    for (const cloth::Hole other : others) {
      const cloth::Hole d = other - (corner + by);
      const int far = std::max(std::abs(d.x), std::abs(d.y));
      if (best.any && far >= nearest) continue;
      nearest = far;
      best = {far <= snap_within ? by + d : by, corner, other, true};
    }
  }
  return best;
}

std::string distance_words(const Desk& desk, const Snapped& snap) {
  if (!snap.any) return {};
  const std::string words = say::legs(desk.voice(), legs_between(snap.other, snap.own + snap.by));
  return words.empty() ? desk.say("desk.corners-meet") : words;
}

void draw_distance(const Desk& desk, Area area, ImDrawList& draw, const Snapped& snap) {
  if (!snap.any) return;
  draw.AddLine(pixel_of(desk, area, snap.other), pixel_of(desk, area, snap.own + snap.by), paint(desk.theme.accent), 1.5F * desk.scale);
}

}  // namespace app
