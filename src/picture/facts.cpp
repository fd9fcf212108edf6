#include "picture/facts.h"

#include <algorithm>

namespace picture {
namespace {

/// Middles of the pieces that follow each other: holes of the first row, or of each block.
std::vector<cloth::Hole> course_of_trail(const trail::Trail& trail, bool rows, int from) {
  std::vector<cloth::Hole> holes;  // twice the middle, to stay in whole numbers
  int run = -1;
  for (std::size_t k = static_cast<std::size_t>(from); k < trail.stitches.size(); ++k) {
    const trail::Worked& w = trail.stitches[k];
    if (rows ? w.run == trail.stitches[from].run : w.run != run) holes.push_back(w.up + w.down);
    run = w.run;
  }
  return holes;
}

bool slants(const trail::Worked& w) { return w.up.x != w.down.x && w.up.y != w.down.y; }

}  // namespace

bool clockwise_on_page(const Sheet& sheet, int trail) {
  const std::vector<cloth::Hole> holes = course_of_trail(sheet.trail(trail).trail, sheet.by_rows(trail) || sheet.looped(trail), 0);
  std::int64_t twice_area = 0;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    const cloth::Hole a = holes[i], b = holes[(i + 1) % holes.size()];
    twice_area += static_cast<std::int64_t>(a.x) * b.y - static_cast<std::int64_t>(b.x) * a.y;
  }
  return (twice_area > 0) != (sheet.voice.hand == say::Hand::left);  // y runs down: positive is clockwise
}

std::optional<cloth::Way> sets_out(const Sheet& sheet, int trail, int stitch) {
  const bool rows = sheet.by_rows(trail) || sheet.looped(trail) || stitch::stitch_by_stitch(sheet.pass(trail));
  const trail::Trail& t = sheet.trail(trail).trail;
  std::vector<cloth::Hole> holes = course_of_trail(t, rows, stitch);
  const bool one_bundle = holes.size() < 2 && sheet.pass(trail).runs.front().freedom == stitch::Freedom::all_alike;
  if (holes.size() < 2) holes = {t.stitches[stitch].up, t.stitches.back().down};
  cloth::Hole way = holes[1] - holes[0];
  if (one_bundle) (t.stitches[stitch].up.x == t.stitches[stitch].down.x ? way.y : way.x) = 0;  // square to its stitches
  const auto sign = [](int n) { return n > 0 ? 1 : n < 0 ? -1 : 0; };
  const auto found = cloth::way_between({0, 0}, {sign(way.x), sign(way.y)});
  return found && sheet.voice.hand == say::Hand::left ? std::optional(cloth::mirrored(*found)) : found;
}

std::vector<CornerSort> corner_sorts(const trail::Trail& trail, const guide::Section& section) {
  std::vector<CornerSort> sorts;
  for (const trail::Turning& turning : trail::turnings(trail)) {
    if (turning.before < section.first || turning.after > section.last) continue;
    const bool from = slants(trail.stitches[turning.before]), to = slants(trail.stitches[turning.after]);
    auto sort = std::find_if(sorts.begin(), sorts.end(), [&](const CornerSort& s) { return s.from_slant == from && s.to_slant == to; });
    if (sort == sorts.end()) sort = sorts.insert(sorts.end(), {from, to, 0, 0});
    ++sort->corners;
    if (!turning.steps_back.empty()) ++sort->with_back;
  }
  return sorts;
}

std::vector<int> corner_numbers(const trail::Trail& trail, const guide::Section& section, const std::vector<cloth::Hole>& holes) {
  std::vector<int> numbers;
  int number = 0;
  for (const trail::Turning& turning : trail::turnings(trail)) {
    if (turning.before < section.first || turning.after > section.last) continue;
    ++number;
    const int leg = trail.stitches[turning.before].leg;
    int k = turning.after - 1;
    while (k > section.first && (trail.stitches[k].run != 0 || trail.stitches[k].leg != leg)) --k;
    const cloth::Hole corner = trail.stitches[k].backward ? trail.stitches[k].up : trail.stitches[k].down;
    if (std::find(holes.begin(), holes.end(), corner) != holes.end()) numbers.push_back(number);
  }
  return numbers.size() == holes.size() ? numbers : std::vector<int>{};
}

int corners_in(const std::vector<CornerSort>& sorts) {
  int all = 0;
  for (const CornerSort& sort : sorts) all += sort.corners;
  return all;
}

const guide::Section& section_of(const Sheet& sheet, const guide::CloseUp& close_up) {
  const auto& sections = sheet.trail(close_up.trail).sections;
  for (const guide::Section& section : sections)
    if (section.lesson == close_up.lesson && section.first <= close_up.last && close_up.first <= section.last) return section;
  return sections.front();
}

bool whole(const guide::PlacedTrail& trail, const guide::Section& section) {
  return section.first == 0 && section.last == static_cast<int>(trail.trail.stitches.size()) - 1;
}

bool row_is_there(const Sheet& sheet, int trail, int run) {
  const guide::PlacedTrail& own = sheet.trail(trail);
  const auto first =
      std::find_if(own.trail.stitches.begin(), own.trail.stitches.end(), [&](const trail::Worked& w) { return w.run == run; });
  if (first == own.trail.stitches.end()) return false;
  const cloth::Stitch stitch = cloth::Stitch{first->up, first->down}.normal();
  for (const guide::PlacedTrail& other : sheet.plan.trails) {
    if (other.part != own.part || other.pass >= own.pass) continue;
    for (const trail::Worked& w : other.trail.stitches)
      if (cloth::Stitch{w.up, w.down}.normal() == stitch) return true;
  }
  return false;
}

double length_cm(const course::Course& course, const course::Part& part) {
  const course::Habits& habits = course.choices.habits;
  const auto own = habits.length_cm.find(part.kind);
  return own == habits.length_cm.end() ? habits.working_length_cm : own->second;
}

bool new_thread_at(const trail::Trail& trail, int stitch) { return std::binary_search(trail.ends.begin(), trail.ends.end(), stitch); }

std::vector<int> stitches_a_thread(const trail::Trail& trail, const guide::Section& section) {
  std::vector<int> all;
  int from = -1;
  for (const int k : trail.ends) {
    if (k < section.first || k > section.last) continue;
    if (from >= 0) all.push_back(k - from);
    from = k;
  }
  return all;
}

const guide::Anchor* anchor_at(const plan::Plan& plan, int trail, int stitch, bool start) {
  if (trail >= static_cast<int>(plan.anchors.size())) return nullptr;
  for (const guide::Anchor& anchor : plan.anchors[trail])
    if (anchor.stitch == stitch && anchor.start == start) return &anchor;
  return nullptr;
}

}  // namespace picture
