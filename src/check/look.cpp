// Runs every rule and puts what they say in the order of the file.
#include <algorithm>
#include <tuple>

#include "check/rules.h"

namespace check {

std::vector<Snag> look(const course::Course& course, const plan::Plan& plan) {
  std::vector<Snag> snags;
  for (const Rule& rule : rules()) rule.look(course, plan, snags);
  std::stable_sort(snags.begin(), snags.end(), [](const Snag& a, const Snag& b) {
    return std::tie(a.place.line, a.place.column, a.rule, a.lesson) < std::tie(b.place.line, b.place.column, b.rule, b.lesson);
  });
  return snags;
}

bool stops(const std::vector<Snag>& snags) {
  return std::any_of(snags.begin(), snags.end(), [](const Snag& s) { return s.severity == Severity::stop; });
}

}  // namespace check
