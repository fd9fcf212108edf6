// What lies on a piece of the cloth at a moment of the course: stitched before, being stitched now, or not yet.
#pragma once

#include <vector>

#include "plan/plan.h"

namespace picture {

enum class Stage { later, before, now };

/// The moment of a picture: work of this lesson's `item` up to and with stitch `last` of the trail is done, and no more. With item -1 all
/// the lesson's work is now.
struct Moment {
  int lesson = 1;
  int item = -1;
  int trail = -1;
  int last = 0;
};

struct Seen {
  cloth::Stitch stitch;  ///< normal form
  Stage stage = Stage::later;
  bool doubled = false;  ///< it lies on an earlier one of the same two holes
  double width = 0.3;    ///< in threads of the cloth
  int part = -1;
  bool ridge = false;    ///< thread that lies along the ridge of an edge, from hole to hole without a gap
};

/// Every stitch whose bounding box touches the box, each once, in order of trails. Time grows with the plan's stitches.
std::vector<Seen> stitches_in(const course::Course& course, const plan::Plan& plan, const cloth::Box& box, const Moment& moment);

/// How thick a part's thread is drawn, in threads of the cloth: by its weight against the count, pearl 5 on 22 threads an inch 0.62.
double thread_width(const course::Course& course, int part, Stage stage);

}  // namespace picture
