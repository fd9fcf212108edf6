// The cloth of a picture of bars and fillings: openings where threads are out, the threads of bars, blocks and what else is stitched.
#pragma once

#include "picture/bar_marks.h"
#include "picture/view.h"
#include "picture/window.h"

namespace picture {

/// A lesson's stretch of a route with what it lies in.
struct BarWork {
  const plan::PartRoute* route = nullptr;
  const plan::PartCutting* cut = nullptr;
  int first = 0, last = 0;  ///< items
  bool wrapped = false;
  const cutwork::RouteItem& item(int i) const { return route->items[static_cast<std::size_t>(i)]; }
  const cutwork::Bar& bar(int b) const { return cut->cutting.bars[static_cast<std::size_t>(b)]; }
  const cutwork::Opening& opening(int o) const { return cut->cutting.openings[static_cast<std::size_t>(o)]; }
  bool bars() const { return route->stage == course::Stage::bars; }
};

std::vector<BarWork> bar_work(const Sheet& sheet);

class BarCloth {
 public:
  BarCloth(const Sheet& sheet, const BarWork& work, const View& view, Point at) : sheet_(sheet), work_(work), view_(view), at_(at) {}

  /// Grid, openings, threads of bars, stitches: what is there before the needle.
  void draw(Picture& picture) const;
  void close(Picture& picture) const;
  /// A bar woven or wrapped from `from` to `to` of its length, 0 at its left or upper end.
  void draw_done_bar(list::List& list, int bar, double from, double to) const;
  Point at(double x, double y) const { return plus(view_.at(x, y), at_); }
  Rect rect() const { return moved(view_.rect(), at_); }
  double unit() const { return view_.scale; }

 private:
  void draw_threads(list::List& list, const cutwork::Bar& bar) const;

  const Sheet& sheet_;
  const BarWork& work_;
  View view_;
  Point at_;
};

}  // namespace picture
