// Courses made by hand for the tests of counts and names: blocks and corners laid where a test wants them, worked stitch by stitch in the
// order of the part, and told into sections.
#pragma once

#include <algorithm>
#include <cstdlib>
#include <random>
#include <utility>
#include <vector>

#include "guide/guide.h"

namespace hand_made {

/// Same random cases in every run.
inline void fix_seed() { setenv("RC_PARAMS", "seed=1911 max_success=60", 0); }

enum class Grain { upright, across };

/// Five stitches side by side over four threads (Archer).
inline stitch::Feature block(cloth::Hole at, Grain grain, int along, int stitches = 5) {
  stitch::Feature feature;
  feature.shape = stitch::Shape::bundle;
  feature.hole = at;
  feature.along = along;
  for (int i = 0; i < stitches; ++i) {
    const cloth::Hole a = grain == Grain::upright ? at + cloth::Hole{i, 0} : at + cloth::Hole{0, i};
    feature.stitches.push_back({a, grain == Grain::upright ? a + cloth::Hole{0, 4} : a + cloth::Hole{4, 0}});
  }
  return feature;
}

inline stitch::Work work_of(std::vector<stitch::Feature> features, bool closed) {
  stitch::Work work;
  work.closed = closed;
  for (const stitch::Feature& f : features)
    for (const cloth::Stitch& s : f.stitches)
      if (std::find(work.stitches.begin(), work.stitches.end(), s) == work.stitches.end()) work.stitches.push_back(s);
  work.features = std::move(features);
  return work;
}

struct Cloth {
  course::Course course;
  std::vector<guide::PlacedTrail> trails;

  /// A part, and its only trail: its stitches in their order. Sections are added by `work`.
  int part(stitch::Work work) {
    guide::PlacedTrail trail;
    trail.part = static_cast<int>(course.parts.size());
    for (const cloth::Stitch& s : work.stitches) trail.trail.stitches.push_back({s.a, s.b, false, 0, 0, 0, false});
    trails.push_back(std::move(trail));
    course.parts.emplace_back();
    course.parts.back().work = std::move(work);
    return static_cast<int>(course.parts.size()) - 1;
  }
  /// Stitches first..last of a part (-1: to the end) in one item of a lesson.
  void work(int part, int lesson, int item, int first = 0, int last = -1) {
    auto& trail = trails[part];
    if (last < 0) last = static_cast<int>(trail.trail.stitches.size()) - 1;
    if (first <= last) trail.sections.push_back({lesson, item, first, last});
  }
  guide::OnCloth on_cloth() const { return {course, trails}; }

  /// When a stitch of the part is worked, looked up the slow way; lesson 0: never.
  guide::When when(int part, cloth::Stitch stitch) const {
    const auto& trail = trails[part];
    for (const guide::Section& s : trail.sections)
      for (int k = s.first; k <= s.last; ++k) {
        const auto& worked = trail.trail.stitches[k];
        if (cloth::Stitch{worked.up, worked.down}.normal() == stitch.normal()) return {s.lesson, s.item, k};
      }
    return {};
  }
  /// When the last stitch of each feature of the part is worked; lesson 0: some are not.
  std::vector<guide::When> ready(int part) const {
    std::vector<guide::When> times;
    for (const stitch::Feature& feature : course.parts[part].work.features) {
      std::vector<guide::When> each;
      for (const cloth::Stitch& s : feature.stitches) each.push_back(when(part, s));
      const bool whole = std::none_of(each.begin(), each.end(), [](const guide::When& w) { return w.lesson == 0; });
      times.push_back(whole ? *std::max_element(each.begin(), each.end()) : guide::When{});
    }
    return times;
  }
};

/// Numbers out of one seed; the same everywhere.
class Chance {
 public:
  explicit Chance(unsigned seed) : engine_(seed) {}
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }
  bool once_in(int n) { return below(n) == 0; }

 private:
  std::mt19937 engine_;
};

}  // namespace hand_made
