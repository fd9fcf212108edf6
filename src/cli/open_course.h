// A course from the command line: loaded, read, planned and checked, faults said on standard error.
#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "check/check.h"
#include "cli/options.h"
#include "course/course.h"
#include "plan/plan.h"
#include "words/phrases.h"

namespace cli {

/// The name a file is called in messages; standard input is "standard input".
std::string shown_name(const std::string& file);

/// The course, or nothing when it cannot be read as one: then every fault has been said.
std::optional<course::Course> open_course(const std::string& file, const Options& options);

struct Checked {
  plan::Plan plan;
  std::vector<check::Snag> snags;
};
std::optional<Checked> plan_and_check(const course::Course& course, const Options& options, std::stop_token stop = {});

/// The phrases of the course's language, from the program's own tables.
const words::Phrases& phrases(const course::Course& course);

/// A line for each snag, in the form FILE:LINE:COLUMN: SEVERITY: WHAT (DO) [RULE].
std::string snag_lines(const std::string& file, const course::Course& course, const std::vector<check::Snag>& snags);

}  // namespace cli
