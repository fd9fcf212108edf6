// What a count costs, reckoned thread by thread and written for the tests on its own.
#pragma once

#include "guide/hand_made.h"

namespace hand_made {

class ByHand {
 public:
  ByHand(const Cloth& cloth, guide::When now) : cost_(cloth.course.choices.habits.count_cost) {
    for (std::size_t p = 0; p < cloth.course.parts.size(); ++p) {
      const stitch::Work& work = cloth.course.parts[p].work;
      for (const cloth::Stitch& s : work.stitches)
        if (before(cloth.when(static_cast<int>(p), s), now)) stitches_.push_back(s);
      const auto ready = cloth.ready(static_cast<int>(p));
      for (std::size_t f = 0; f < ready.size(); ++f)
        if (before(ready[f], now) && work.features[f].shape == stitch::Shape::bundle) bundles_.push_back(work.features[f]);
    }
  }

  double counted(int n) const {
    double seconds = 0;
    for (int i = 1; i <= n; ++i) seconds += i <= cost_.glance_to ? cost_.glance : cost_.each;
    return seconds;
  }

  /// Of the legs as they are, from the landmark on.
  double of_legs(cloth::Hole from, const std::vector<guide::Leg>& legs) const {
    double seconds = legs.size() > 1 ? cost_.second_leg : 0;
    for (const guide::Leg& leg : legs) {
      seconds += counted(leg.threads);
      for (int i = 0; i < leg.threads; ++i) {
        const cloth::Hole to = from + cloth::step(leg.way);
        if (covered(from, to)) seconds += cost_.under_stitches;
        from = to;
      }
    }
    return seconds;
  }

  double of_landmark(const guide::Landmark& landmark) const {
    const guide::Which& w = landmark.which;
    double seconds = w.form == guide::Which::after ? counted(w.steps) : 0;
    if (w.form == guide::Which::extreme_of_row || (w.form == guide::Which::after && w.anchor_within)) seconds += cost_.glance;
    const guide::Spot& spot = landmark.spot;
    if (landmark.kind == guide::LandmarkKind::bundle && spot.stitch != 0 && spot.stitch != spot.of - 1)
      seconds += cost_.plain_landmark + counted(spot.stitch + 1);
    if (landmark.kind == guide::LandmarkKind::cloth_middle) seconds += cost_.plain_landmark;
    return seconds;
  }

 private:
  static bool before(guide::When when, guide::When now) { return when.lesson > 0 && when < now; }

  /// Does a stitch lie along the thread from hole to hole, or one of a bundle on either side of it?
  bool covered(cloth::Hole a, cloth::Hole b) const {
    const auto along = [&](const cloth::Stitch& s) { return between(s, a) && between(s, b); };
    if (std::any_of(stitches_.begin(), stitches_.end(), along)) return true;
    const auto inside = [&](const stitch::Feature& f, cloth::Hole h) {
      return std::any_of(f.stitches.begin(), f.stitches.end(),
                         [&](const cloth::Stitch& s) { return between(s, h) && h != s.a && h != s.b; });
    };
    return std::any_of(bundles_.begin(), bundles_.end(), [&](const stitch::Feature& f) { return inside(f, a) && inside(f, b); });
  }
  static bool between(const cloth::Stitch& s, cloth::Hole h) {
    return (h.x - s.a.x) * (s.b.y - s.a.y) == (h.y - s.a.y) * (s.b.x - s.a.x) && std::min(s.a.x, s.b.x) <= h.x &&
           h.x <= std::max(s.a.x, s.b.x) && std::min(s.a.y, s.b.y) <= h.y && h.y <= std::max(s.a.y, s.b.y);
  }

  course::CountCost cost_;
  std::vector<cloth::Stitch> stitches_;
  std::vector<stitch::Feature> bundles_;
};

}  // namespace hand_made
