// tellekant split FILE
#include <fmt/format.h>

#include <cstdio>
#include <filesystem>

#include "base/whole_file.h"
#include "cli/interrupt.h"
#include "cli/open_course.h"
#include "cli/output.h"
#include "cli/stopwatch.h"
#include "file/course_file.h"
#include "file/edit.h"

namespace cli {
namespace {

std::vector<std::vector<std::string>> work_of(const plan::Plan& plan) {
  std::vector<std::vector<std::string>> work;
  for (const plan::LessonPlan& lesson : plan.lessons) work.push_back(lesson.work);
  return work;
}

int give(const Options& options, const std::string& text) {
  if (!options.write) return print_out(text) ? fine : not_written;
  const Interrupt interrupt;
  const auto written = base::write_whole(std::filesystem::canonical(options.files[0]), text);
  if (written) return fine;
  fmt::print(stderr, "tellekant: {}\n", written.error().what);
  return not_written;
}

}  // namespace

int run_split(const Options& options) {
  const std::string& name = options.files[0];
  if (name == "-" && options.write) {
    fmt::print(stderr, "tellekant: --write needs a file to replace, not standard input\n");
    return bad_call;
  }
  const auto text = file::load(name);
  if (!text) {
    fmt::print(stderr, "tellekant: {}\n", text.error().what);
    return bad_call;
  }
  file::Read read = file::read(*text);
  for (const base::Fault& fault : read.faults) std::fputs(base::render(shown_name(name), *text, fault).c_str(), stderr);
  if (!read.faults.empty()) return bad_call;
  if (options.lessons) read.course.lessons_wanted = options.lessons;
  if (options.language) read.course.choices.language = *options.language;
  const Stopwatch watch(options, "split");
  const auto plan = plan::make_plan(read.course, {}, plan::Lessons::split_again);
  if (!plan) {
    fmt::print(stderr, "tellekant: {}\n", plan.error().what);
    return not_written;
  }
  const auto snags = check::look(read.course, *plan);
  if (!options.quiet) std::fputs(snag_lines(name, read.course, snags).c_str(), stderr);
  const auto parted = file::with_lessons(*text, read.course, work_of(*plan));
  if (!parted) {
    fmt::print(stderr, "tellekant: the lessons could not be written into this file\n");
    return not_written;
  }
  const int given = give(options, *parted);
  return given == fine && check::stops(snags) ? stopped : given;
}

}  // namespace cli
