// A lesson that the teacher wrote with more new techniques than a class takes in of an evening: more than two kinds of work that neither an
// earlier lesson nor seen_before has (an assumption, no source).
#include <algorithm>

#include "check/rules.h"

namespace check {
namespace {

constexpr std::size_t most_new = 2;

/// Bars and fillings are techniques of their own.
std::string technique(const course::Part& part, const course::WorkItem& work) {
  if (work.stage == course::Stage::bars) return "bars";
  return work.stage == course::Stage::fillings ? "fillings" : part.kind;
}

std::string joined(const std::vector<std::string>& names) {
  std::string all;
  for (const std::string& name : names) all += (all.empty() ? "" : ", ") + name;
  return all;
}

}  // namespace

void new_techniques(const course::Course& course, const plan::Plan&, Snags& snags) {
  std::vector<std::string> seen = course.seen_before;
  for (std::size_t i = 0; i < course.lessons.size(); ++i) {
    std::vector<std::string> fresh;
    for (const course::WorkItem& work : course.lessons[i].work) {
      if (work.part < 0) continue;
      const std::string kind = technique(course.parts[work.part], work);
      if (std::find(seen.begin(), seen.end(), kind) != seen.end()) continue;
      seen.push_back(kind);
      fresh.push_back(kind);
    }
    if (fresh.size() <= most_new) continue;
    const int lesson = static_cast<int>(i) + 1;
    snags.push_back({.rule = "new-techniques",
                     .severity = Severity::ask,
                     .place = course.lessons[i].place,
                     .lesson = lesson,
                     .part = -1,
                     .at = {},
                     .also_at = {},
                     .words = {{"kinds", joined(fresh)}},
                     .numbers = {{"lesson", lesson}, {"n", static_cast<std::int64_t>(fresh.size())}}});
  }
}

}  // namespace check
