#include "plan/lay_out.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace plan {
namespace {

// How bad a place to stop is, in minutes: weights of our own.
constexpr double after_pass = 1, after_leg = 2, within_leg = 4;
// Within a leg a place to stop is looked at every so many minutes; more of them would not be felt. It does not hang on the class's time, so
// that what would help in a lesson that is too short is told of the same work.
constexpr double grain = 2;

bool ends_leg(const trail::Trail& trail, int k) { return trail.stitches[k].leg != trail.stitches[k + 1].leg; }

bool has_locked(const course::Course& course) {
  return std::any_of(course.lessons.begin(), course.lessons.end(), [](const course::Lesson& lesson) { return lesson.locked; });
}

/// The lessons that take work; where their number is free, none yet.
std::vector<SplitLesson> open_lessons(const course::Course& course) {
  std::vector<SplitLesson> open;
  const int written = static_cast<int>(course.lessons.size()), wanted = course.lessons_wanted.value_or(0);
  for (int n = 1; n <= std::max(written, wanted); ++n) {
    if (n > written) {
      open.push_back({n, room(course, course.minutes)});
      continue;
    }
    const course::Lesson& lesson = course.lessons[n - 1];
    if (!lesson.locked) open.push_back({n, room(course, lesson.minutes.value_or(course.minutes))});
  }
  return open;
}

}  // namespace

double room(const course::Course& course, int minutes) { return minutes * course.choices.habits.class_share + course.home_minutes; }

LayOut::LayOut(const course::Course& course) : course_(course), techniques_(course.seen_before) {
  task_.known.assign(course.seen_before.size(), true);
  task_.lessons = open_lessons(course);
}

int LayOut::technique(const std::string& name) {
  const auto found = std::find(techniques_.begin(), techniques_.end(), name);
  if (found == techniques_.end()) techniques_.push_back(name);
  return static_cast<int>(std::find(techniques_.begin(), techniques_.end(), name) - techniques_.begin());
}

void LayOut::between(int earliest, int latest) {
  earliest_ = earliest;
  latest_ = latest;
}

void LayOut::remember(int lot, std::vector<int> lesson_of_stitch) {
  if (before_.size() <= static_cast<std::size_t>(lot)) before_.resize(static_cast<std::size_t>(lot) + 1);
  before_[lot] = std::move(lesson_of_stitch);
}

void LayOut::add_unit(Unit unit, double minutes, int technique, double stop_cost) {
  const bool known = static_cast<std::size_t>(unit.lot) < before_.size() && static_cast<std::size_t>(unit.first) < before_[unit.lot].size();
  const int was = known ? before_[unit.lot][unit.first] : 0;
  if (of_lot_.size() <= static_cast<std::size_t>(unit.lot)) of_lot_.resize(static_cast<std::size_t>(unit.lot) + 1);
  of_lot_[unit.lot].push_back(static_cast<int>(units_.size()));
  units_.push_back(unit);
  task_.units.push_back({minutes, technique, true, stop_cost, earliest_, latest_, was});
}

void LayOut::add(int lot, const trail::Trail& trail, const stitch::Pass& pass, const std::string& kind, std::pair<int, int> stitches) {
  const double a_stitch = 1 / speed(course_, kind);
  const int known = technique(kind), end = static_cast<int>(trail.stitches.size()) - 1;
  double left_out = 0;  // minutes since the last place to stop that is left out
  for (int first = stitches.first, k = first; k <= stitches.second; ++k) {
    const bool last = k == stitches.second;
    if (!last && !can_stop_after(trail, pass, k)) continue;
    const double minutes = (k + 1 - first) * a_stitch;
    const bool leg = k < end && ends_leg(trail, k);
    if (!last && !leg && minutes < grain) {
      left_out = minutes;
      continue;
    }
    if (left_out > 0) coarse_ = std::max(coarse_, minutes);
    left_out = 0;
    add_unit({lot, first, k}, minutes, known, k == end ? after_pass : leg ? after_leg : within_leg);
    first = k + 1;
  }
}

void LayOut::add_whole(int lot, double minutes, const std::string& name) { add_unit({lot, 0, 0}, minutes, technique(name), 0); }

void LayOut::add_step(int lot, double minutes) { add_unit({lot, 0, 0}, minutes, -1, 0); }

void LayOut::add_steps(int lot, std::pair<int, int> items, double minutes, const std::string& name, Stop stop) {
  if (items.first < items.second) coarse_ = std::max(coarse_, minutes);
  add_unit({lot, items.first, items.second}, minutes, technique(name), stop == Stop::pass ? after_pass : stop == Stop::leg ? after_leg : within_leg);
}

void LayOut::split() {
  if (units_.empty()) return;
  const double usual = room(course_, course_.minutes);
  if (task_.lessons.empty() && !has_locked(course_)) {
    const int fewest = std::min(lessons_needed(task_.units, usual), course::lesson_limit);
    for (int n = 1; n <= fewest; ++n) task_.lessons.push_back({n, usual});
  }
  if (task_.lessons.empty()) task_.lessons.push_back({static_cast<int>(course_.lessons.size()) + 1, usual});  // all are locked
  const Split best = plan::split(task_);
  std::size_t lesson = 0;
  int item = 0;
  for (std::size_t u = 0; u < units_.size(); ++u) {
    while (static_cast<int>(u) >= best.ends[lesson]) ++lesson, item = 0;
    units_[u].when = {task_.lessons[lesson].number, item++, 0};
  }
  report_on(static_cast<int>(task_.lessons.size()), best.cost, best.over);
}

void LayOut::report_on(int lessons, double cost, double over) {
  report_.lessons = lessons;
  report_.cost = cost;
  // An end that lies best within a stretch can be moved to one of its ends: two lessons change by at most its minutes.
  report_.bound = 2 * (lessons - 1) * coarse_ * task_.weights.uneven;
  report_.over = over;
  if (over <= 0) return;
  double least = task_.lessons[0].room;
  for (const SplitLesson& l : task_.lessons) least = std::min(least, l.room);
  const double lacking = std::max(0.0, room_needed(task_.units, lessons) - least);
  report_.more_lessons = std::max(0, lessons_needed(task_.units, least) - lessons);
  report_.more_minutes = static_cast<int>(std::ceil(lacking / course_.choices.habits.class_share - 1e-9));
  report_.more_home = static_cast<int>(std::ceil(lacking - 1e-9));
}

std::vector<guide::Section> LayOut::sections(int lot) const {
  std::vector<guide::Section> sections;
  if (static_cast<std::size_t>(lot) >= of_lot_.size()) return sections;
  for (const int u : of_lot_[lot]) {
    const Unit& unit = units_[u];
    const bool goes_on = !sections.empty() && sections.back().lesson == unit.when.lesson && sections.back().last + 1 == unit.first;
    if (goes_on)
      sections.back().last = unit.last;
    else
      sections.push_back({unit.when.lesson, unit.when.item, unit.first, unit.last});
  }
  return sections;
}

guide::When LayOut::when(int lot) const {
  const bool there = static_cast<std::size_t>(lot) < of_lot_.size() && !of_lot_[lot].empty();
  return there ? units_[of_lot_[lot][0]].when : guide::When{};
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
