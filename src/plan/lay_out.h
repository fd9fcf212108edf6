// The work of a course as units in the craft's order, parted into lessons where the teacher has not done it herself. A lesson ends only
// where a student can stop: at the end of a part or pass, a flight or side, or of a block; never at half a corner.
#pragma once

#include <string>
#include <vector>

#include "plan/plan.h"
#include "plan/schedule.h"
#include "plan/split.h"

namespace plan {

/// What is done where a student stops: a whole pass, a side or a thread, or none of them.
enum class Stop { pass, leg, within };

class LayOut {
 public:
  /// With lessons in the course, those that are locked keep their work and the others are filled anew.
  explicit LayOut(const course::Course& course);

  /// Stitches first..last of the trail, worked after all that was added before. `lot` names it for `sections`.
  void add(int lot, const trail::Trail& trail, const stitch::Pass& pass, const std::string& kind, std::pair<int, int> stitches);
  /// Work that is not parted: a cutting.
  void add_whole(int lot, double minutes, const std::string& technique);
  /// A step that is not parted and teaches nothing new.
  void add_step(int lot, double minutes);
  /// Of several things worked one after another, those that are not parted: the lot's items first to last, counted from 0. `stop`: how it is to
  /// put the work down behind them.
  void add_steps(int lot, std::pair<int, int> items, double minutes, const std::string& technique, Stop stop);
  /// The lots added from now on must not lie before `earliest` nor behind `latest`.
  void between(int earliest, int latest);
  /// What lay where before, so that little moves: the lesson of that lot's stitch, 0 for none.
  void remember(int lot, std::vector<int> lesson_of_stitch);

  void split();
  /// After split(): the lot's stretches, in order of stitches.
  std::vector<guide::Section> sections(int lot) const;
  /// After split(): when a lot that is not parted is worked.
  guide::When when(int lot) const;
  SplitReport report() const { return report_; }

 private:
  struct Unit {
    int lot = 0, first = 0, last = 0;
    guide::When when = {};
  };
  void add_unit(Unit unit, double minutes, int technique, double stop_cost);
  int technique(const std::string& name);
  void report_on(int lessons, double cost, double over);

  const course::Course& course_;
  SplitTask task_;
  std::vector<Unit> units_;
  std::vector<std::string> techniques_;
  std::vector<std::vector<int>> of_lot_;  ///< units of each lot
  std::vector<std::vector<int>> before_;
  int earliest_ = 1, latest_ = 1 << 20;
  double coarse_ = 0;  ///< the longest stretch, in minutes, within which places to stop were left out
  SplitReport report_;
};

/// Part indices in the craft's order: by the kinds' own rank, then as written.
std::vector<int> craft_order(const course::Course& course);

/// May a student put the work down after stitch k? At the end of a block; between two pairs of rows, clear of corners.
bool can_stop_after(const trail::Trail& trail, const stitch::Pass& pass, int k);

/// Minutes of stitching in a lesson of so many minutes, with the home work that follows it.
double room(const course::Course& course, int minutes);

}  // namespace plan
