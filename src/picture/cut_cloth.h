// The cloth of a close-up of cutting: grid, threads that are out, stitches, fences along blocks' sides. What is shown to be done lies on
// it.
#pragma once

#include "picture/cut_ends.h"
#include "picture/view.h"
#include "picture/window.h"

namespace picture {

class CutCloth {
 public:
  /// Threads of the cuttings before `number` are out.
  CutCloth(const Sheet& sheet, const CutWork& work, const cloth::Box& window, double scale, int number);

  void draw_ground();
  void draw_stitches();
  void draw_fences();
  void close(const std::string& letter);

  list::List& list() { return picture_.list; }
  void use(Mark mark) { picture_.uses.marks.insert(mark); }
  const View& view() const { return view_; }
  const std::vector<Seen>& seen() const { return seen_; }
  Point at(const CutEnd& end, double side, double along) const {
    const CutEnd::Place place = end.place(side, along);
    return view_.at(place.x, place.y);
  }
  /// From one corner to the other, whichever way the picture lies.
  static Rect rect(Point a, Point b);
  Picture take() { return std::move(picture_); }

 private:
  void draw_gone_threads();
  bool shared(const cloth::Stitch& side, std::size_t block) const;

  const Sheet& sheet_;
  const CutWork& work_;
  View view_;
  int number_;
  std::vector<Seen> seen_;
  Picture picture_;
};

}  // namespace picture
