// A student's mistake taken in: stitches of one trail that stand some threads off. The wrong cloth is laid out beside the right one: which
// stitches miss their neighbours or meet others, what of the cutting still holds, which later counts begin at wrong stitches.
#pragma once

#include <optional>
#include <vector>

#include "base/result.h"
#include "plan/plan.h"

namespace plan {

/// Stitches first..last of a trail (0-based, both included) stand `off` from where they should; all others are right or not worked yet.
struct Mistake {
  int trail = 0;
  int first = 0, last = 0;
  cloth::Hole off;
};

struct Misfit {
  int stitch = 0;                   ///< of the wrong trail
  int other = 0, other_stitch = 0;  ///< trail and stitch, right or not worked yet
  int other_lesson = 0;             ///< in which that one is worked; 0: in none
  bool parted = true;               ///< they should share a hole and do not; else they meet where they should not
};

enum class CutNow {
  not_touched,  ///< the same is cut as before, or nothing is
  elsewhere,    ///< it still holds, but other threads are cut than the pages show
  forbidden,    ///< something would come loose: nothing may be cut
};
struct CutChange {
  int cutting = 0;  ///< index of plan.cuttings
  CutNow now = CutNow::not_touched;
  std::vector<cutwork::Problem> problems;  ///< of forbidden
};

struct TakenIn {
  std::vector<Misfit> misfits;      ///< by stitch of the wrong trail
  std::vector<CutChange> cuttings;  ///< those that are touched
  std::vector<int> count_ins;       ///< of later work, counted from a stitch that stands wrong
  bool matters() const;             ///< something does not fit or must not be cut
  int to_unpick = 0;                ///< stitches: back to the first wrong one
};

/// Fails where the trail has no such stitches. Time: the stitches of the course; where it cuts, that of planning the cutting anew.
[[nodiscard]] base::Result<TakenIn> take_in(const course::Course& course, const Plan& plan, const Mistake& mistake);

}  // namespace plan
