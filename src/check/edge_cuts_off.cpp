// What an edge would cut off with the cloth outside its ridge. Of closed edges the innermost one round a stitch decides: is its ridge on the far side, the
// stitch is kept. (geometry; the cloth outside the ridge is cut off: trade.md on the buttonhole edge)
#include <algorithm>
#include <cmath>
#include <map>

#include "check/rules.h"

namespace check {
namespace {

struct Ring {
  int part = 0;
  std::vector<cloth::Hole> ridge;
  double area = 0;            ///< square threads
  bool keeps_inside = false;  ///< its ridge lies outside, so what it goes round is kept
};

/// All that goes by one edge, told at the first stitch.
struct Lost {
  const course::Part* part = nullptr;
  cloth::Hole first;
  int stitches = 0;
};

double area_of(const std::vector<cloth::Hole>& ring) {
  double twice = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const cloth::Hole a = ring[i], b = ring[(i + 1) % ring.size()];
    twice += static_cast<double>(a.x) * b.y - static_cast<double>(b.x) * a.y;
  }
  return std::abs(twice) / 2;
}

/// Along a line to the right: crossed an odd number of times. A hole on the ring itself may be either.
bool inside(const std::vector<cloth::Hole>& ring, double x, double y) {
  bool odd = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const cloth::Hole a = ring[i], b = ring[(i + 1) % ring.size()];
    if ((a.y > y) != (b.y > y) && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)) odd = !odd;
  }
  return odd;
}
bool inside(const Ring& ring, const cloth::Stitch& stitch) { return inside(ring.ridge, (stitch.a.x + stitch.b.x) / 2.0, (stitch.a.y + stitch.b.y) / 2.0); }

std::vector<Ring> rings_of(const course::Course& course) {
  std::vector<Ring> rings;
  for (std::size_t p = 0; p < course.parts.size(); ++p)
    for (const stitch::Pass& pass : course.parts[p].work.passes) {
      if (pass.order != stitch::Order::looped || !pass.closed) continue;
      Ring ring;
      ring.part = static_cast<int>(p);
      for (const stitch::Run& run : pass.runs)
        for (const cloth::Stitch& stitch : run.stitches) ring.ridge.push_back(stitch.a);
      if (ring.ridge.size() < 3) continue;
      ring.area = area_of(ring.ridge);
      ring.keeps_inside = inside(ring, pass.runs.front().stitches.front());
      rings.push_back(std::move(ring));
    }
  return rings;
}

/// The ring by which the stitch goes with the cloth that is cut off; null where it stays.
const Ring* cuts_off(const std::vector<Ring>& rings, const cloth::Stitch& stitch) {
  const Ring* innermost = nullptr;
  const Ring* outer = nullptr;
  for (const Ring& ring : rings) {
    if (inside(ring, stitch) && (!innermost || ring.area < innermost->area)) innermost = &ring;
    if (ring.keeps_inside && !outer) outer = &ring;
  }
  if (innermost) return innermost->keeps_inside ? nullptr : innermost;
  return outer;
}

}  // namespace

void edge_cuts_off(const course::Course& course, const plan::Plan&, Snags& snags) {
  const std::vector<Ring> rings = rings_of(course);
  if (rings.empty()) return;
  std::map<std::pair<int, bool>, Lost> lost;  // by edge and whether it keeps what it goes round: one mend puts all of it right
  for (std::size_t p = 0; p < course.parts.size(); ++p) {
    const course::Part& part = course.parts[p];
    if (std::any_of(rings.begin(), rings.end(), [&](const Ring& ring) { return ring.part == static_cast<int>(p); })) continue;
    for (const cloth::Stitch& stitch : part.work.stitches)
      if (const Ring* ring = cuts_off(rings, stitch)) {
        Lost& by_ring = lost[{ring->part, ring->keeps_inside}];
        if (by_ring.stitches++ == 0) by_ring.part = &part, by_ring.first = stitch.a;
      }
  }
  for (const auto& [ring, what] : lost) {
    const course::Part& edge = course.parts[static_cast<std::size_t>(ring.first)];
    snags.push_back({.rule = ring.second ? "edge-cuts-off-outside" : "edge-cuts-off-inside",
                     .severity = ring.second ? Severity::ask : Severity::stop, .place = place_of(edge, "path"), .lesson = 0, .part = ring.first,
                     .at = what.first, .also_at = {}, .words = {{"part", edge.name}, {"other", what.part->name}},
                     .numbers = {{"n", what.stitches}, {"x", what.first.x}, {"y", what.first.y}}});
  }
}

}  // namespace check
