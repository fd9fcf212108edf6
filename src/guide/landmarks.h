// Every feature of the course as a landmark: when it stands, what it is called then, what its name costs to follow. Sets of like features
// (the blocks of a part, the corners of one row) are named each among themselves; where several parts have the like, the part is named too.
#pragma once

#include <map>
#include <optional>
#include <unordered_map>
#include <vector>

#include "guide/care.h"
#include "guide/names.h"
#include "guide/near.h"
#include "guide/spots.h"
#include "guide/worked.h"

namespace guide {

class Landmarks {
 public:
  /// Course and Worked must outlive it.
  Landmarks(const course::Course& course, const Worked& worked);
  /// Features of a part that are whole now, as Worked told them.
  std::vector<Standing> add(int part, const std::vector<std::pair<int, Ready>>& whole);

  /// One moment, worked out set by set as they are asked for.
  struct Moment {
    When now;
    std::unordered_map<int, Names::Moment> sets;
  };
  /// The feature's name then, if it stands and has one.
  std::optional<Which> name(int feature, Moment& moment) const;
  /// What following a name costs: blocks or corners to be counted along, one to be picked out of a row.
  static Care care_of_name(const Costs& costs, const Which& which);
  Landmark landmark(const Candidate& candidate, const Which& which, When now) const;
  /// The feature's holes, whether it stands or not.
  std::vector<Candidate> holes(int feature) const;
  /// The outermost features of those few sets that lie nearest by count.
  std::vector<int> outermost(const Costs& costs, cloth::Hole hole, Moment& moment) const;

 private:
  struct One {
    int part = 0, feature = 0;  ///< in the course
    int set = 0, place = 0;     ///< place in the chain of its set
    Ready ready{never};
  };
  struct Set {
    int part = 0, row = 0;
    LandmarkKind kind = LandmarkKind::bundle;
    bool name_row = false;
    std::vector<int> members;  ///< in the order of the chain
    cloth::Box box;            ///< of all of them
    Names names;
  };
  /// When the first feature of a kind stands: of the earliest part, and of the earliest other one.
  struct First {
    int part = -1;
    When first = never, first_of_others = never;
    void take(int part, When when);
  };
  void read_part(int index);
  const stitch::Feature& feature(int id) const;
  Set make_set(int part, LandmarkKind kind, int row, bool closed, std::vector<int> members) const;
  bool on_seam(int part, cloth::Stitch stitch) const;
  const Names::Moment& of_set(int set, Moment& moment) const;
  bool others_stand(int part, LandmarkKind kind, When now) const;

  const course::Course& course_;
  const Worked& worked_;
  std::vector<One> all_;
  std::vector<int> first_of_part_;
  std::vector<Set> sets_;
  std::map<LandmarkKind, First> firsts_;
  std::map<LandmarkKind, int> parts_with_;  ///< how many parts have features of the kind
};

}  // namespace guide
