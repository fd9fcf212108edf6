// A lesson's close-ups: what its sheet gathers, lettered, and told whether an earlier lesson showed the very same.
#include "guide/close_ups_sheet.h"
#include "guide/close_ups_window.h"

namespace guide {
namespace {

enum class Sort { start, place, new_thread, join, end };

Sort sort_of(Shows shows) {
  if (shows == Shows::start) return Sort::start;
  if (shows == Shows::new_thread) return Sort::new_thread;
  if (shows == Shows::join) return Sort::join;
  return shows == Shows::end ? Sort::end : Sort::place;
}

/// What a student sees in it: what it is, and the numbered stitches; of a join also those it closes with.
class Seen {
 public:
  Seen(const course::Course& course, const std::vector<PlacedTrail>& trails) : course_(course), trails_(trails) {}

  Signature of(const CloseUp& close_up) const {
    constexpr int closing = 2;
    const Needle needle(course_, trails_[close_up.trail]);
    Signature seen = signature(needle, {close_up.first, close_up.last + (close_up.wraps ? closing : 0)});
    seen.push_back(static_cast<int>(sort_of(close_up.shows)));
    return seen;
  }

 private:
  const course::Course& course_;
  const std::vector<PlacedTrail>& trails_;
};

}  // namespace

std::vector<CloseUp> close_ups(const course::Course& course, const std::vector<PlacedTrail>& trails, int lesson,
                               const std::vector<CloseUp>& earlier) {
  std::vector<CloseUp> close_ups = Sheet(course, trails, lesson).take();
  const Seen seen(course, trails);
  Kinds kinds;
  std::vector<int> first;                           // earlier close-up of each kind
  for (std::size_t i = 0; i < earlier.size(); ++i)  // one that is like another need not be looked at again
    if (earlier[i].like < 0 && kinds.of(seen.of(earlier[i])) == static_cast<int>(first.size())) first.push_back(static_cast<int>(i));
  for (std::size_t i = 0; i < close_ups.size(); ++i) {
    close_ups[i].letter = letter(static_cast<int>(i));
    if (const int kind = kinds.find(seen.of(close_ups[i])); kind >= 0) close_ups[i].like = first[kind];
  }
  return close_ups;
}

}  // namespace guide
