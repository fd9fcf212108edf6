// The class list against what the course says of the class: more listed than students, or pages for the wrong hand.
#include <algorithm>

#include "check/rules.h"

namespace check {

void class_list(const course::Course& course, const plan::Plan&, Snags& snags) {
  const auto& listed = course.class_list;
  const int all = static_cast<int>(listed.size());
  if (all > course.students)
    snags.push_back({.rule = "class-larger", .severity = Severity::ask, .place = listed[static_cast<std::size_t>(course.students)].place, .lesson = 0, .part = -1,
                     .at = {}, .also_at = {}, .words = {}, .numbers = {{"n", all}, {"students", course.students}}});
  using course::Hand;
  if (course.choices.hand == Hand::both) return;
  const bool pages_left = course.choices.hand == Hand::left;
  const auto other = [&](const course::Student& s) { return (s.hand == Hand::left) != pages_left; };
  const auto first = std::find_if(listed.begin(), listed.end(), other);
  if (first == listed.end()) return;
  snags.push_back({.rule = pages_left ? "class-right-hand" : "class-left-hand", .severity = Severity::ask, .place = first->place, .lesson = 0, .part = -1,
                   .at = {}, .also_at = {}, .words = {}, .numbers = {{"n", std::count_if(listed.begin(), listed.end(), other)}}});
}

}  // namespace check
