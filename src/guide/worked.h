// Which stitches are worked when, and which features are whole by that. A stitch that two features share counts for both; one that is
// worked again in a later pass counts from the trail that was added first.
#pragma once

#include <span>
#include <vector>

#include "guide/guide.h"

namespace guide {

/// The trail and the time that made a feature whole.
struct Ready {
  When when;
  int pass = 0, place = 0;
};

class Worked {
 public:
  /// Reads the parts' stitches and features; keeps no reference.
  explicit Worked(const course::Course& course);

  struct Stitched {
    cloth::Stitch stitch;
    When when;
  };
  struct Gain {
    std::vector<Stitched> stitches;               ///< worked for the first time
    std::vector<std::pair<int, Ready>> features;  ///< whole by this trail: index in the part's features; rising
  };
  /// Stitches of no section are not worked.
  Gain add(const PlacedTrail& trail);
  /// Features of the part that have the stitch, rising.
  std::span<const int> users(int part, cloth::Stitch stitch) const;

 private:
  struct Slot {
    cloth::Stitch stitch;     ///< normal
    int first = 0, last = 0;  ///< its features, in `users`; last not included
    bool worked = false;
  };
  struct OfPart {
    std::vector<Slot> slots;  ///< sorted
    std::vector<int> users;
    std::vector<int> missing;   ///< for each feature, its stitches not worked yet
    std::vector<Ready> latest;  ///< for each feature, of its stitches worked so far
  };
  static int slot_of(const OfPart& part, cloth::Stitch stitch);
  static OfPart read(const stitch::Work& work);
  static void use(OfPart& part, Slot& slot, const Ready& ready, Gain& gain);

  std::vector<OfPart> parts_;
};

}  // namespace guide
