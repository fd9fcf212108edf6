// Rules over a course and its plan. Each rule is one file and one line in the registry; a snag carries rule and arguments, not sentences.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "course/course.h"
#include "plan/plan.h"

namespace check {

enum class Severity { stop, ask, note };

struct Snag {
  std::string rule;  ///< permanent id; its sentences are the phrases snag.RULE.says and snag.RULE.do
  Severity severity = Severity::ask;
  course::Place place;
  int lesson = 0;  ///< 0: none
  int part = -1;
  std::optional<cloth::Hole> at, also_at;
  std::map<std::string, std::string> words;
  std::map<std::string, std::int64_t> numbers;
};

struct Rule {
  std::string_view id;  ///< of the file; a rule may give snags of several ids that begin with it
  void (*look)(const course::Course&, const plan::Plan&, std::vector<Snag>&);
};
const std::vector<Rule>& rules();

/// All snags in order of file place, then rule.
std::vector<Snag> look(const course::Course& course, const plan::Plan& plan);
bool stops(const std::vector<Snag>& snags);

}  // namespace check
