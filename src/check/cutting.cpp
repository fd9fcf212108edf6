// What forbids a cutting, both places of each.
#include "check/rules.h"

namespace check {
namespace {

constexpr std::size_t told = 20;  // problems of one part; further ones have the same causes

std::string rule_of(cutwork::Trouble what) {
  switch (what) {
    case cutwork::Trouble::no_area: return "cut-nothing-enclosed";
    case cutwork::Trouble::ring_open: return "cut-ring-open";
    case cutwork::Trouble::zone_outside: return "cut-zone-outside";
    case cutwork::Trouble::no_partner: return "cut-no-partner";
    case cutwork::Trouble::off_partner: return "cut-partner-aside";
    case cutwork::Trouble::along_side: return "cut-along-side";
    case cutwork::Trouble::one_end: return "cut-held-at-one-end";
    case cutwork::Trouble::row_uneven: return "cut-row-uneven";
    case cutwork::Trouble::surface_over: return "cut-under-stitches";
    case cutwork::Trouble::bar_width: return "cut-bar-width";
    case cutwork::Trouble::bar_alone: return "cut-bar-alone";
    case cutwork::Trouble::crossing_hangs: return "cut-crossing-hangs";
    case cutwork::Trouble::cut_twice: return "cut-twice";
    case cutwork::Trouble::methods_differ: return "cut-proofs-differ";
  }
  return {};
}

Snag snag_of(const course::Course& course, const plan::PartCutting& cut, const cutwork::Problem& problem) {
  const course::Part& part = course.parts[cut.part];
  const auto name = [&](int p) { return p < 0 ? part.name : course.parts[p].name; };
  Snag snag{.rule = rule_of(problem.what), .severity = Severity::stop, .place = place_of(part, "within"), .lesson = cut.lesson, .part = cut.part,
            .at = problem.at, .also_at = problem.also_at,
            .words = {{"part", part.name}, {"block", name(problem.part)}, {"other", name(problem.other_part)}},
            .numbers = {{"n", problem.n}, {"x", problem.at.x}, {"y", problem.at.y}}};
  const cloth::Hole also = problem.also_at.value_or(problem.at);
  snag.numbers["x2"] = also.x;
  snag.numbers["y2"] = also.y;
  return snag;
}

}  // namespace

void cutting(const course::Course& course, const plan::Plan& plan, Snags& snags) {
  for (const plan::PartCutting& cut : plan.cuttings)
    for (std::size_t i = 0; i < cut.cutting.problems.size() && i < told; ++i) snags.push_back(snag_of(course, cut, cut.cutting.problems[i]));
}

}  // namespace check
