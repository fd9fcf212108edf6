// The numbers of a close-up: from 1 in each, odd where the needle comes up and even where it goes down (common practice), gathered by hole.
// Of looped stitches 1 is where the needle came up last, or comes up first; each stitch is then one down and one up, on the ridge. Where the
// thread is changed the old one goes down on the ridge in the next stitch's hole and the new one comes up there: two numbers more.
#pragma once

#include <string>
#include <vector>

#include "guide/guide.h"
#include "picture/marks.h"

namespace picture {

struct HoleNumbers {
  cloth::Hole hole;
  std::vector<int> numbers;  ///< rising
  HoleUse use() const;
  std::string text() const;  ///< "2, 5": two numbers read as two; several of one kind in turn "2, 4 … 8", more are not listed
};

/// Is the end of the thread numbered too? That of looped stitches goes down over the last loop, of a closed edge in the first stitch's hole.
enum class Ending { left_out, numbered };
/// Stitches first..last of the trail, holes in the order of their first number.
std::vector<HoleNumbers> numbers_of(const trail::Trail& trail, int first, int last, Ending ending = Ending::left_out);

/// The numbers of stitch k where numbering starts with stitch `first`.
inline int up_number(int k, int first) { return 2 * (k - first) + 1; }
inline int down_number(int k, int first) { return 2 * (k - first) + 2; }

/// The same where stitches are looped; 1 is `first_loop_hole`.
int loop_down_number(const trail::Trail& trail, int k, int first);
inline int loop_up_number(const trail::Trail& trail, int k, int first) { return loop_down_number(trail, k, first) + 1; }
/// Where the needle comes up before it works stitch `first`: on a new thread at the stitch's own ridge hole, else at that of the one before.
cloth::Hole first_loop_hole(const trail::Trail& trail, int first);

/// The way on the back before stitch k: from the hole of the stitch before it, over `via` where the trail has one, to its own. Empty before
/// the first stitch and where a new thread starts.
std::vector<cloth::Hole> back_before(const trail::Trail& trail, int k);

}  // namespace picture
