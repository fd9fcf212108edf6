// The snips and the withdrawn threads of one plan, made once, so that the cloth can be shown at any moment of the course: what is whole,
// what hangs by one end, what is out, and what holds a thread. Facts of the plan only: what it does not cut is never out.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include "plan/plan.h"

namespace picture {

/// A stretch of thread that comes out, and its two snips.
struct Strand {
  cutwork::Span span;
  int cutting = 0;                   ///< of plan.cuttings
  int lesson = 0;                    ///< that cuts it; 0: none does
  std::array<cutwork::Cut, 2> cuts;  ///< at span.from, at span.to
  std::array<int, 2> ranks{};        ///< of these snips among all of the lesson, from 0
};

/// All snips of the lessons before are made, and so many of this one's, in the order of the plan.
struct CutMoment {
  int lesson = 1, snips = 0;
};

enum class Lies { whole, by_one_end, out };
Lies lies(const Strand& strand, CutMoment moment);

class CutIndex {
 public:
  explicit CutIndex(const plan::Plan& plan);

  int snips(int lesson) const;
  bool any_until(int lesson) const;  ///< is anything cut in this lesson or before?
  /// One snip of a lesson, from 0: which end of which stretch.
  struct Snip {
    const Strand* strand = nullptr;
    int end = 0;
    const cutwork::Cut& cut() const { return strand->cuts[static_cast<std::size_t>(end)]; }
  };
  Snip snip(int lesson, int number) const;

  /// The stretch that comes out of `thread` between two holes along it, `along` and the next one; null where the plan leaves it.
  const Strand* at(cutwork::Axis axis, int thread, int along) const;

  /// Stretches of which some lies in the box, by axis, thread, place.
  template <class Tell>
  void each_in(cloth::Box box, const Tell& tell) const {
    for (const cutwork::Axis axis : {cutwork::Axis::v, cutwork::Axis::h}) {
      const bool v = axis == cutwork::Axis::v;
      const int first = v ? box.x0 : box.y0, last = v ? box.x1 : box.y1, low = v ? box.y0 : box.x0, high = v ? box.y1 : box.x1;
      for (auto s = from(axis, first); s != strands_.end() && s->span.axis == axis && s->span.thread <= last; ++s)
        if (s->span.to > low && s->span.from < high) tell(*s);
    }
  }

 private:
  struct Place {
    int strand = 0, end = 0;
  };
  std::vector<Strand>::const_iterator from(cutwork::Axis axis, int thread) const;

  std::vector<Strand> strands_;
  std::vector<std::vector<Place>> snips_;  ///< of each lesson, in order
};

/// A thread at one place within cutwork: cut there or left, and the blocks that hold it.
struct HeldThread {
  cutwork::Axis axis = cutwork::Axis::v;
  int thread = 0;
  int cutting = 0;                    ///< of plan.cuttings
  const Strand* strand = nullptr;     ///< null: it is left
  int from = 0, to = 0;               ///< holes along it: where the blocks' stitches end; of a thread that is left as far as is known
  std::array<int, 2> blocks{-1, -1};  ///< of the cutting's blocks, towards the beginning and towards the end; -1: none, the cloth itself
};
/// The upright thread and the one across, at the square between the hole and the next ones to the right and below; of threads that no
/// cutting has to do with nothing.
std::vector<HeldThread> held_at(const plan::Plan& plan, const CutIndex& index, cloth::Hole square);

}  // namespace picture
