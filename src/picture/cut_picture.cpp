#include "picture/cut_picture.h"

#include <algorithm>
#include <cmath>

#include "picture/cut_cloth.h"
#include "picture/cut_marks.h"
#include "picture/ink.h"
#include "picture/scissors.h"

namespace picture {
namespace {

constexpr int aside = 7, behind = 6, in_front = 14;  // threads of cloth round a cutting
constexpr double off_end = 0.42;                     // threads from the block's end to the snips
constexpr double number_in = 3.4;                    // threads from the block's end to its number
constexpr int roomy = 10;                            // threads: shorter ones have their numbers behind the blocks
constexpr Blades blades{5.6, 0.13}, small_blades{2.4, 0.24}, smallest_blades{1.2, 0.3};

double scale_for(const Sheet& sheet, const cloth::Box& window, const CutRoom& room) {
  return std::min({sheet.styles.scale_wanted, room.width / (window.width() + 1), room.height / (window.height() + 1)});
}

class Cutting {
 public:
  Cutting(const Sheet& sheet, const CutWork& work, const CutEnd& end, const cloth::Box& window, double scale)
      : sheet_(sheet), end_(end), cloth_(sheet, work, window, scale, end.number) {
    number_.size_pt = sheet.styles.number.size_pt * 1.3;
    number_.weight = list::Weight::bold;
  }

  Picture draw(const std::vector<const CutEnd*>& ends, const std::string& letter) {
    cloth_.draw_ground();
    const Rect band = CutCloth::rect(cloth_.at(end_, 0, 0), cloth_.at(end_, end_.snips(), end_.length()));
    draw_hatch(cloth_.list(), band, cloth_.view().scale);
    cloth_.use(Mark::cut_thread);
    cloth_.draw_stitches();
    cloth_.draw_fences();
    for (const CutEnd* end : ends) draw_end(*end);
    cloth_.close(letter);
    return cloth_.take();
  }

 private:
  void draw_end(const CutEnd& end) {
    const double unit = cloth_.view().scale;
    for (int i = 0; i < end.snips(); ++i)
      draw_snip(cloth_.list(), cloth_.at(end, i + 0.14, off_end), cloth_.at(end, i + 0.86, off_end), unit);
    const bool long_one = end.length() >= roomy;
    double in = long_one ? number_in : -5.3;
    if (long_one || &end == &end_) in = std::max(in, draw_blades(end, long_one));
    cloth_.use(Mark::snip);
    draw_cut_number(cloth_.list(), cloth_.at(end, end.middle(), in), std::to_string(end.number), number_, sheet_.measure);
    cloth_.use(Mark::cut_number);
  }

  /// Across the threads, from the side where no stitches lie, both blades in front of the block; where stitches lie on both sides, a small
  /// pair in front of them. Returns how far in the number may stand.
  double draw_blades(const CutEnd& end, bool long_one) {
    const int low = covered(end, true), high = covered(end, false);
    if (low > 0 && high > 0) {
      point_at(end, {end.middle(), off_end + 0.35}, {end.middle(), off_end + 3}, long_one ? small_blades : smallest_blades);
      return long_one ? 7.6 : -10;
    }
    const bool from_low = low < high;
    const double tip = from_low ? end.snips() - 0.25 : 0.25,  // the points stand a little beyond
        back = from_low ? -1 : end.snips() + 1;
    point_at(end, {tip, off_end + 0.2}, {back, off_end + 0.2 + blades.spread * 5}, blades);
    return -10;
  }

  /// The places are: threads aside, threads in.
  void point_at(const CutEnd& end, CutEnd::Place tip, CutEnd::Place from, Blades size) {
    const Point point = cloth_.at(end, tip.x, tip.y), way = minus(point, cloth_.at(end, from.x, from.y));
    draw_scissors(cloth_.list(), point, times(1 / length(way), way), cloth_.view().scale, size);
  }

  /// Stitches under the scissors' rings.
  int covered(const CutEnd& end, bool low) const {
    const double near = low ? -1.2 : end.snips() + 1.2, far = low ? -5.5 : end.snips() + 5.5;
    const Rect room = CutCloth::rect(cloth_.at(end, near, -0.3), cloth_.at(end, far, 2.4));
    const auto& seen = cloth_.seen();
    return static_cast<int>(std::count_if(seen.begin(), seen.end(), [&](const Seen& s) {
      return s.stage != Stage::later && meet(room, cloth_.view().capsule(s.stitch, 0.1));
    }));
  }

  const Sheet& sheet_;
  const CutEnd& end_;
  CutCloth cloth_;
  list::TypeStyle number_;
};

}  // namespace

CutPicture cut_picture(const Sheet& sheet, const CutWork& work, int number, const std::string& letter, const CutRoom& room) {
  const CutEnd& end = work.end(number);
  std::vector<const CutEnd*> ends{&end};
  cloth::Box window = end.around(aside, behind, std::min(in_front, end.length() + behind));
  const cloth::Box both = end.around(aside, behind, end.length() + behind);
  if (end.opposite.size() == 1 && scale_for(sheet, both, room) >= sheet.styles.scale_least) {
    window = both;
    ends.push_back(&work.end(end.opposite.front()));
  }
  CutPicture made;
  for (const CutEnd* e : ends) made.numbers.push_back(e->number);
  made.picture = Cutting(sheet, work, end, window, scale_for(sheet, window, room)).draw(ends, letter);
  return made;
}

namespace {

/// A thread beside those of a cutting, and how many stitches lie over it in front of the block.
struct Beside {
  const CutEnd* end = nullptr;
  double side = 0;  ///< its middle
  bool high = true;
};

Beside free_thread(const Sheet& sheet, const CutWork& work) {
  constexpr int far = 10;  // threads looked at
  Beside best;
  std::size_t least = 0;
  for (const CutEnd& end : work.ends) {
    if (end.length() < far) continue;
    for (const bool high : {true, false}) {
      const CutEnd::Place a = end.place(high ? end.snips() : 0, 1), b = end.place(high ? end.snips() + 1 : -1, far);
      const cloth::Box room{static_cast<int>(std::min(a.x, b.x)), static_cast<int>(std::min(a.y, b.y)),
                            static_cast<int>(std::max(a.x, b.x)), static_cast<int>(std::max(a.y, b.y))};
      const std::size_t over = stitches_in(sheet.course, sheet.plan, room, {sheet.lesson.number, work.cut->item, -1, 0}).size();
      if (!best.end || over < least) best = {&end, high ? end.snips() + 0.5 : -0.5, high}, least = over;
    }
    if (least == 0) break;
  }
  return best.end ? best : Beside{&work.ends.front(), work.ends.front().snips() + 0.5, true};
}

/// The new thread: over one, under one, as the plain weave goes; hidden where stitches lie over it.
void draw_new_thread(CutCloth& cloth, const Beside& beside, int from, int to) {
  for (int along = from; along < to; ++along) {
    if ((along % 2 + 2) % 2 != 0) continue;
    draw_woven_piece(cloth.list(), cloth.at(*beside.end, beside.side, along + 0.12), cloth.at(*beside.end, beside.side, along + 0.88),
                     cloth.view().scale);
  }
  cloth.use(Mark::new_thread);
}

/// What is left of the thread that was cut: drawn back to the block.
void draw_old_end(CutCloth& cloth, const Beside& beside, int from) {
  const double side = beside.side + (beside.high ? -0.36 : 0.36);
  draw_woven_under(cloth.list(), cloth.at(*beside.end, side, from), cloth.at(*beside.end, side, -0.5), cloth.view().scale);
  cloth.use(Mark::old_end);
}

}  // namespace

MendPicture mend_picture(const Sheet& sheet, const CutWork& work, const CutRoom& room) {
  constexpr int behind_it = 12, before_it = 10;
  const Beside beside = free_thread(sheet, work);
  const CutEnd& end = *beside.end;
  const cloth::Box window = end.around(aside, behind_it, std::min(before_it, end.length() + behind_it));
  CutCloth cloth(sheet, work, window, scale_for(sheet, window, room), end.number);
  cloth.draw_ground();
  const Rect band = CutCloth::rect(cloth.at(end, 0, 0), cloth.at(end, end.snips(), end.length()));
  draw_hatch(cloth.list(), band, cloth.view().scale);
  cloth.use(Mark::cut_thread);
  draw_new_thread(cloth, beside, -behind_it + 2, before_it + 1);
  draw_old_end(cloth, beside, -behind_it);
  cloth.draw_stitches();
  const list::TypeStyle number{sheet.styles.number.size_pt * 1.2, list::Weight::bold};
  draw_cut_number(cloth.list(), cloth.at(end, end.middle(), number_in), std::to_string(end.number), number, sheet.measure);
  cloth.use(Mark::cut_number);
  cloth.close("");
  return {cloth.take(), end.number};
}

}  // namespace picture
