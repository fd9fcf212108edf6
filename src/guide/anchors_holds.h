// What can hold a tail: every stitch of every trail, by the holes at its ends, with when it is worked.
#pragma once

#include <unordered_map>
#include <vector>

#include "guide/guide.h"

namespace guide {

/// When a trail's stitch is worked. Stitches of no section come after all others, each trail by itself.
struct Moment {
  int lesson = 0, item = 0, trail = 0, stitch = 0;
  friend auto operator<=>(const Moment&, const Moment&) = default;
};
Moment moment(const std::vector<PlacedTrail>& trails, int trail, int stitch);
/// Of one trail by its stitches, of two by lesson and item alone: what is worked in the same item of another trail is not before.
bool before(const Moment& a, const Moment& b);

class Holds {
 public:
  explicit Holds(const std::vector<PlacedTrail>& trails);
  struct Held {
    cloth::Stitch stitch;  ///< normal
    Moment worked;
  };
  /// Calls with each stitch that has an end within so many threads of the hole; with one that has both ends there, twice.
  template <class Visit>
  void near(cloth::Hole hole, int threads, Visit visit) const {
    const cloth::Hole low = tile(hole - cloth::Hole{threads, threads}), high = tile(hole + cloth::Hole{threads, threads});
    for (int y = low.y; y <= high.y; ++y)
      for (int x = low.x; x <= high.x; ++x) {
        const auto found = tiles_.find({x, y});
        if (found == tiles_.end()) continue;
        for (int i = begins_[found->second]; i < begins_[found->second + 1]; ++i)
          if (cloth::squared(ends_[i].hole, hole) <= std::int64_t{threads} * threads) visit(held_[ends_[i].number]);
      }
  }

 private:
  struct End {
    cloth::Hole hole;
    int number = 0;  ///< of the stitch in `held_`
  };
  static cloth::Hole tile(cloth::Hole hole);
  void read(const std::vector<PlacedTrail>& trails);
  int tile_number(cloth::Hole hole);

  std::vector<Held> held_;                      ///< by trail, in needle order
  std::unordered_map<cloth::Hole, int> tiles_;  ///< numbered as they are met
  std::vector<End> ends_;                       ///< tile by tile
  std::vector<int> begins_;                     ///< of each tile in `ends_`, and the number of ends
};

}  // namespace guide
