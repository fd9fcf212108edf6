// What is worked into cut cloth: every bar once, with the fillings that are worked from it when it is half done, then the fillings that
// need all their bars. Lengths are of the thread's own path, in threads of the cloth
// on the way across.
#pragma once

#include "cutwork/cutting.h"
#include "stitch/kind.h"

namespace cutwork {

struct Wish {
  bool wrapped = false;
  int weaves = 0;            ///< figures of eight on each bar (turns where it is wrapped); 0: as many as fit
  double thickness = 0.5;    ///< of the thread, in threads across: how much of the bar one of them takes
  bool picots = false;       ///< on both sides of every bar
  std::vector<stitch::FillingRule> rules;
  double tall = 1;           ///< a thread of the cloth down, in threads across
};

/// A filling as it is worked.
/// Dove's eye: from the middle of the half-woven bar to the middles of the other three sides, clockwise, and back: four loops. A side that
/// is no bar is the edge of a block, whose middle is caught (common practice, no source; the stitch: Dillmont fig. 641).
/// Square filet: from a corner clockwise round the other three and back: four loops (from memory).
/// Wheel: from a corner to the one across, back to the middle, to the third corner, back to the middle; there three rounds over and under
/// the three legs, since a spiral needs an odd number; then the fourth leg (common practice, no source).
struct FillingWork {
  stitch::Filling kind = stitch::Filling::none;
  int opening = 0;
  std::vector<cloth::Hole> points;  ///< where the thread is caught, in order; of half a thread the hole to the left and above
  std::vector<int> sides;           ///< dove's eye, in step with the points: the bar caught; -1: the edge of a block
  double threads = 0;
};

/// A bar with what is worked from its middle, or a filling by itself.
struct RouteItem {
  int bar = -1;            ///< -1: a filling by itself
  bool from_low = true;    ///< from its left or upper end
  int behind = -1;         ///< the crossing behind which the thread comes from the item before; -1: it begins here
  bool straight = false;   ///< of a bar: in one line with the bar before
  int weaves = 0;          ///< figures of eight, or turns; even where something is worked from its middle
  std::array<bool, 2> picots{false, false};  ///< at its middle, on its left or upper and its other side
  std::vector<FillingWork> fillings;         ///< worked when half the weaves are done; or the one that is all of the item
  std::vector<cloth::Hole> via;              ///< where the thread runs behind work already done, from where it was to where it begins here
  cloth::Hole from, to;                      ///< where it begins and where it ends
  double threads = 0;                        ///< of thread, the way from the item before included

  bool halved() const { return bar >= 0 && (!fillings.empty() || picots[0] || picots[1]); }
};

/// What a rule asks for and cannot have.
struct NotFilled {
  enum class Why { not_square, no_opening } why = Why::not_square;
  stitch::Filling kind = stitch::Filling::none;
  cloth::Hole at;
  friend bool operator==(const NotFilled&, const NotFilled&) = default;
};

struct Needlework {
  std::vector<stitch::Filling> fillings;  ///< of each opening
  std::vector<RouteItem> bars;            ///< by `bar_route`: the fewest threads, at right angles where it can be
  std::vector<RouteItem> after;           ///< fillings for which all bars must be done
  std::vector<NotFilled> not_filled;
};

/// Nothing for a cutting without cuts. Time grows with the bars and openings.
[[nodiscard]] Needlework plan_needlework(const Cutting& cutting, const Wish& wish);

/// The middle of a bar, between its pairs; of half a thread the hole to the left and above.
cloth::Hole middle_of(const Bar& bar);

/// Openings are filled only where they are upright rectangles with sides of so many threads (an assumption, no source).
inline constexpr int least_side = 3, most_side = 8;

}  // namespace cutwork
