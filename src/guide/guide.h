// What keeps a class together, worked out of geometry alone: landmarks and their names, count-ins with proof counts, marks, anchors, close-ups.
// Everything here is facts; sentences are made elsewhere.
#pragma once

#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "cloth/hole.h"
#include "cloth/way.h"
#include "course/course.h"
#include "trail/trail.h"

namespace guide {

// ---- names ----------------------------------------------------------------------------------------------------------

enum class Side { top, bottom, left, right };

/// How one feature is told from its like: the topmost, the left one of the two topmost, the 3rd clockwise after the topmost...
/// or, for an open chain, so many after it towards its end.
struct Which {
  enum Form { only, extreme, extreme_of_row, after } form = only;
  Side side = Side::top;      ///< of extreme, extreme_of_row (which row of equals), and of the anchor of `after`
  Side within = Side::left;   ///< extreme_of_row: which end of the row of equals
  bool anchor_within = false; ///< after: the anchor itself is an extreme_of_row
  int steps = 0;              ///< after: how many further
  bool clockwise = true;      ///< after: which way round as seen on the chart; an open chain: see `towards`
  bool open = false;          ///< after: counted along an open chain
  cloth::Way towards = cloth::Way::E;  ///< open chain: the way of the first step from the anchor
  friend bool operator==(const Which&, const Which&) = default;
};

/// Which hole of the feature: of a bundle, which stitch (counted from the left or the top) and which end of it.
struct Spot {
  int stitch = 0;      ///< 0-based from the left (upright stitches) or from the top (across)
  int of = 1;          ///< how many stitches the bundle has
  bool upright = true; ///< the stitches run up and down
  Side end = Side::top;
};

enum class LandmarkKind { cloth_middle, cloth_edges, bundle, corner, row_end, bar, petal, centre, fan, notch };
/// Is the landmark a stitch's end in a bundle of parallel stitches?
constexpr bool in_bundle(LandmarkKind kind) {
  return kind == LandmarkKind::bundle || kind == LandmarkKind::bar || kind == LandmarkKind::petal;
}

/// A hole that a student can find by eye, and what it takes to name it. Two landmarks of one lesson never have equal names.
struct Landmark {
  LandmarkKind kind = LandmarkKind::cloth_middle;
  cloth::Hole hole;
  int part = -1;        ///< index in the course's parts; -1: the cloth itself
  int pass = 0, place = 0;
  int lesson = 0;       ///< lesson in which it was stitched; 0 for the cloth
  int feature = -1;     ///< index in the part's features
  Which which;
  Spot spot;
  int row = 0;          ///< corner, row_end: 0 for the first row
  bool name_part = false;  ///< the part's name is needed to tell it from another part's
  bool name_row = false;   ///< the row is needed: the part has several rows with the like
};

struct Leg {
  cloth::Way way = cloth::Way::N;  ///< N, E, S or W
  int threads = 0;                 ///< more than 0
};

struct Count {
  Landmark landmark;
  std::vector<Leg> legs;  ///< none (the landmark's own hole), one or two
  double cost_s = 0;
};

struct CountIn {
  int trail = 0;   ///< index in the plan's trails
  int section = 0; ///< index in the trail's sections
  int lesson = 0;
  int stitch = 0;
  cloth::Hole hole;
  Count count;
  std::optional<Count> proof;
  std::vector<Count> others;  ///< further good ones, cheapest first, at most 6
};

struct Mark {
  int part = 0;
  int place = 0;
  int lesson = 0;  ///< the lesson that first stitches the line
  cloth::Hole hole;
  Count count;
};

// ---- what is on the cloth when -------------------------------------------------------------------------------------

struct Section {
  int lesson = 0;        ///< number, from 1
  int item = 0;          ///< place in the lesson's work
  int first = 0, last = 0;  ///< stitches of the trail, 0-based, both included
};

struct PlacedTrail {
  int part = 0;  ///< index in parts
  int pass = 1;
  int place = 0;
  trail::Trail trail;
  std::vector<Section> sections;  ///< in order of stitches
};

/// When a stitch is worked: (lesson, item of the lesson, stitch).
struct When {
  int lesson = 0, item = 0, stitch = 0;
  friend auto operator<=>(const When&, const When&) = default;
};

/// The landmarks that stand on the cloth before `now`: features all of whose stitches are worked. Built once a plan, then asked.
class OnCloth {
 public:
  OnCloth(const course::Course& course, const std::vector<PlacedTrail>& trails);
  ~OnCloth();
  OnCloth(OnCloth&&) noexcept;
  /// One more trail, of a part and pass that was not there before. Keeps no reference to it; the work grows with the trail alone.
  void add(const PlacedTrail& trail);
  /// The cheapest count to the hole, its proof, and others; only cloth landmarks where nothing is stitched yet. The teacher's own
  /// landmark (`count_from`) comes first where it is given and a landmark stands there then.
  struct Found {
    Count count;
    std::optional<Count> proof;
    std::vector<Count> others;
    bool own_landmark_missing = false;  ///< count_from was given but nothing stands there before `now`
  };
  Found find(cloth::Hole hole, When now, std::optional<cloth::Hole> own = std::nullopt) const;
  /// Only the cost of the cheapest count, for choosing a start among many; time does not grow with the design. Where it is not below `enough`,
  /// any number that is not below it either.
  double cost(cloth::Hole hole, When now, double enough = std::numeric_limits<double>::infinity()) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

/// The start of a round whose count-in costs least (first of equals: topmost, then leftmost). `begin_at` wins where it is one of the starts.
struct Start {
  int stitch = 0;
  bool begin_at_missed = false;       ///< begin_at was given and no start is there
  std::optional<cloth::Hole> nearest; ///< then: the nearest start
};
Start choose_start(const trail::Round& round, const OnCloth& on_cloth, When now, std::optional<cloth::Hole> begin_at);

// ---- anchors --------------------------------------------------------------------------------------------------------

struct Anchor {
  int stitch = 0;                    ///< stitch of the trail
  bool start = true;                 ///< the tail at the start of a thread (else at its finish)
  bool later = false;                ///< nothing is stitched there yet: leave a waste tail, weave it in afterwards under these stitches
  std::vector<cloth::Stitch> under;  ///< stitches, nearest first
};
/// For every thread of the trail, where its tails go: under the nearest stitches worked before (all parts), some tail_threads long.
std::vector<Anchor> anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, int trail, double tail_threads);
/// The same of every trail, with what lies where worked out only once: in time linear in the design.
std::vector<std::vector<Anchor>> all_anchors(const course::Course& course, const std::vector<PlacedTrail>& trails, double tail_threads);

// ---- close-ups ------------------------------------------------------------------------------------------------------

enum class Shows { start, corner, step_back, second_pass, new_thread, join, end };

struct CloseUp {
  int lesson = 0;
  std::string letter;      ///< "A".., "AA".. after Z
  cloth::Box window;       ///< holds every numbered point
  int trail = 0;
  int first = 0, last = 0; ///< stitches of the trail that are numbered, from 1 in each close-up; a join may run over the end: see `wraps`
  bool wraps = false;      ///< join: after `last` come the first stitches of the trail, drawn and not numbered
  Shows shows = Shows::start;
  std::vector<cloth::Hole> stands_for;  ///< every place on the cloth it speaks for, its own first
  std::vector<int> steps_back;          ///< stitches worked backwards in it
  int row_over = -1;       ///< step_back: the row that has stitches over (0 first, 1 second), else -1
  int over_before = 0, over_after = 0;  ///< stitches over at the end of the leg before the corner and at the start of the leg after it
  bool from_slant = false, to_slant = false;
  int turn_eighths = 0;    ///< corner: turn in 45 degree steps, right positive
  int like = -1;           ///< index of an earlier lesson's close-up that shows the very same (up to turning), or -1
};

/// The smallest set of windows in which every different situation of the lesson's sections is seen once: the start of each section, each kind of
/// corner and of step back, the second pass where it differs, a new thread of looped stitches, the join. Two places are alike when their needle points agree up to quarter turns.
std::vector<CloseUp> close_ups(const course::Course& course, const std::vector<PlacedTrail>& trails, int lesson,
                               const std::vector<CloseUp>& earlier);

}  // namespace guide
