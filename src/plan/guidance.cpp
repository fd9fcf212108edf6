#include "plan/guidance.h"

#include <algorithm>

namespace plan {
namespace {

void count_in(const course::Course& course, const guide::OnCloth& on_cloth, int t, int s, Plan& plan) {
  const guide::PlacedTrail& trail = plan.trails[t];
  const guide::Section& section = trail.sections[s];
  const course::Part& part = course.parts[trail.part];
  const cloth::Hole hole = trail.trail.stitches[section.first].up;
  const bool very_first = trail.pass == 1 && trail.place == 0 && section.first == 0;
  auto found = on_cloth.find(hole, {section.lesson, section.item, section.first}, very_first ? part.count_from : std::nullopt);
  if (found.own_landmark_missing)
    plan.findings.push_back({.rule = "count-from-missing",
                             .stops = false,
                             .part = trail.part,
                             .lesson = section.lesson,
                             .at = part.count_from,
                             .also_at = hole,
                             .words = {{"part", part.name}},
                             .numbers = {{"x", part.count_from->x}, {"y", part.count_from->y}},
                             .place = place_of(part, "count_from")});
  plan.count_ins.push_back(
      {t, s, section.lesson, section.first, hole, std::move(found.count), std::move(found.proof), std::move(found.others)});
}

void mark_corners(const course::Course& course, const guide::OnCloth& on_cloth, const guide::PlacedTrail& trail, Plan& plan) {
  if (trail.sections.empty()) return;
  const guide::Section& section = trail.sections[0];
  for (const stitch::Corner& corner : course.parts[trail.part].work.corners) {
    if (corner.place != trail.place) continue;
    auto found = on_cloth.find(corner.hole, {section.lesson, section.item, 0});
    plan.marks.push_back({trail.part, trail.place, section.lesson, corner.hole, std::move(found.count)});
  }
}

}  // namespace

void count_in_all(const course::Course& course, const guide::OnCloth& on_cloth, const std::stop_token& stop, Plan& plan) {
  // A tail is run under three or four blocks (common practice, no source): 16 threads, or as long as it is.
  constexpr double four_blocks = 16;
  const double tail = std::min(four_blocks, 10 * course.choices.habits.tail_cm / cloth::mm_a_thread(course.cloth.count));
  plan.anchors = guide::all_anchors(course, plan.trails, tail);
  for (std::size_t t = 0; t < plan.trails.size() && !stop.stop_requested(); ++t) {
    for (std::size_t s = 0; s < plan.trails[t].sections.size(); ++s)
      count_in(course, on_cloth, static_cast<int>(t), static_cast<int>(s), plan);
    if (plan.trails[t].pass == 1) mark_corners(course, on_cloth, plan.trails[t], plan);
  }
  if (!stop.stop_requested()) plan.tell_tales = guide::tell_tales(plan.trails, plan.count_ins);
}

void close_up_all(const course::Course& course, const std::stop_token& stop, Plan& plan) {
  for (std::size_t n = 1; n <= plan.lessons.size() && !stop.stop_requested(); ++n) {
    auto windows = guide::close_ups(course, plan.trails, static_cast<int>(n), plan.close_ups);
    for (auto& window : windows) plan.close_ups.push_back(std::move(window));
  }
}

}  // namespace plan
