#include "cli/open_course.h"

#include <fmt/format.h>

#include <cstdio>

#include "cli/stopwatch.h"
#include "file/course_file.h"
#include "paint/cairo/paint.h"
#include "publish/languages.h"
#include "publish/publish.h"
#include "say/say.h"

namespace cli {

std::string shown_name(const std::string& file) { return file == "-" ? "standard input" : file; }

std::optional<course::Course> open_course(const std::string& file, const Options& options) {
  const Stopwatch watch(options, "read");
  const auto text = file::load(file);
  if (!text) {
    fmt::print(stderr, "tellekant: {}\n", text.error().what);
    return std::nullopt;
  }
  file::Read read = file::read(*text);
  if (options.language) read.course.choices.language = *options.language;
  if (read.faults.empty()) return std::move(read.course);
  for (const base::Fault& fault : read.faults) std::fputs(base::render(shown_name(file), *text, fault).c_str(), stderr);
  return std::nullopt;
}

std::optional<Checked> plan_and_check(const course::Course& course, const Options& options, std::stop_token stop) {
  Checked checked;
  {
    const Stopwatch watch(options, "plan");
    auto plan = plan::make_plan(course, stop);
    if (!plan) {
      fmt::print(stderr, "tellekant: {}\n", plan.error().what);
      return std::nullopt;
    }
    checked.plan = std::move(*plan);
  }
  const Stopwatch watch(options, "check");
  checked.snags = check::look(course, checked.plan);
  for (check::Snag& snag : publish::zone_unknown(course)) checked.snags.push_back(std::move(snag));
  const auto type = paint::Type::open();
  if (!type) {
    fmt::print(stderr, "tellekant: {}\n", type.error().what);
    return std::nullopt;
  }
  for (check::Snag& snag : publish::letters_missing(course, **type)) checked.snags.push_back(std::move(snag));
  return checked;
}

const words::Phrases& phrases(const course::Course& course) { return publish::phrases_in(course.choices.language); }

std::string snag_lines(const std::string& file, const course::Course& course, const std::vector<check::Snag>& snags) {
  constexpr std::string_view severities[] = {"stop", "ask", "note"};
  const say::Voice voice{phrases(course), course.choices.hand == course::Hand::left ? say::Hand::left : say::Hand::right, course};
  std::string lines;
  for (const check::Snag& snag : snags) {
    const say::SaidSnag said = say::snag(voice, snag);
    const std::string place = snag.place.line > 0 ? fmt::format("{}:{}:{}", shown_name(file), snag.place.line, snag.place.column) : shown_name(file);
    lines += fmt::format("{}: {}: {} ({}) [{}]\n", place, severities[static_cast<int>(snag.severity)], said.says, said.does, snag.rule);
  }
  return lines;
}

}  // namespace cli
