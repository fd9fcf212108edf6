// Findings of the planning, as they are.
#include "check/rules.h"

namespace check {

void findings(const course::Course&, const plan::Plan& plan, Snags& snags) {
  for (const plan::Finding& f : plan.findings)
    snags.push_back({.rule = f.rule, .severity = f.stops ? Severity::stop : Severity::ask, .place = f.place, .lesson = f.lesson, .part = f.part,
                     .at = f.at, .also_at = f.also_at, .words = f.words, .numbers = f.numbers});
}

}  // namespace check
