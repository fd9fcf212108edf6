#include "plan/lay_out.h"

#include <algorithm>
#include <numeric>

namespace plan {

LayOut::LayOut(const course::Course& course, double total_minutes) : room_(course.minutes), last_lesson_(course::lesson_limit) {
  if (!course.lessons_wanted) return;
  last_lesson_ = *course.lessons_wanted;
  room_ = std::max(1.0, total_minutes / *course.lessons_wanted);
}

void LayOut::next_lesson() {
  ++lesson_;
  item_ = 0;
  used_ = 0;
}

guide::When LayOut::place_whole(double minutes) {
  if (used_ > 0 && used_ + minutes > room_ * 1.02 && lesson_ < last_lesson_) next_lesson();
  used_ += minutes;
  return {lesson_, item_++, 0};
}

std::vector<guide::Section> LayOut::place(const trail::Trail& trail, const stitch::Pass& pass, double stitches_a_minute) {
  constexpr double worth_beginning = 0.12;  // of a lesson: less is not begun at its end
  const int n = static_cast<int>(trail.stitches.size());
  std::vector<guide::Section> sections;
  for (int first = 0; first < n;) {
    const bool last_one = lesson_ >= last_lesson_;
    const double left = room_ - used_;
    const double needed = (n - first) / stitches_a_minute;
    int last = n - 1;
    if (needed > left * 1.02 && !last_one) {
      last = first + static_cast<int>(left * stitches_a_minute) - 1;
      while (last > first && !can_stop_after(trail, pass, last)) --last;
      const bool too_little = last <= first || (last - first + 1) / stitches_a_minute < worth_beginning * room_;
      if (too_little && used_ > 0) {
        next_lesson();
        continue;
      }
      if (last <= first) {  // nothing fits even a fresh lesson: go on to the first place where one can stop
        last = first;
        while (last < n - 1 && !can_stop_after(trail, pass, last)) ++last;
      }
    }
    sections.push_back({lesson_, item_++, first, last});
    used_ += (last - first + 1) / stitches_a_minute;
    overflowed_ = overflowed_ || (last_one && used_ > room_ * 1.02 && last_lesson_ == course::lesson_limit);
    first = last + 1;
    if (first < n) next_lesson();
  }
  return sections;
}

std::vector<int> craft_order(const course::Course& course) {
  std::vector<int> order(course.parts.size());
  std::iota(order.begin(), order.end(), 0);
  const bool before_cutting = course.choices.habits.edge == course::EdgeWhen::before_cutting;
  const auto rank = [&](int part) {
    const stitch::Kind* kind = stitch::find_kind(course.parts[part].kind);
    if (kind && kind->by_edge_habit) return before_cutting ? 1.5 : 2.5;
    return kind ? double(kind->craft_rank) : 0.0;
  };
  std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return rank(a) < rank(b); });
  return order;
}

bool can_stop_after(const trail::Trail& trail, const stitch::Pass& pass, int k) {
  const bool turn_about = pass.order == stitch::Order::turn_about, row = turn_about || pass.order == stitch::Order::looped || stitch::stitch_by_stitch(pass);
  const auto& stitches = trail.stitches;
  const int n = static_cast<int>(stitches.size());
  if (k >= n - 1) return true;
  if (!row || turn_about) {
    if (stitches[k].run == stitches[k + 1].run) return false;
    if (!row) return true;
  }
  constexpr int clear = 3;  // stitches on either side without a corner
  for (int i = std::max(0, k - clear); i <= std::min(n - 1, k + clear); ++i)
    if (stitches[i].over || stitches[i].backward || stitches[i].leg != stitches[k].leg) return false;
  return !turn_about || stitches[k + 1].run == 0;
}

}  // namespace plan
