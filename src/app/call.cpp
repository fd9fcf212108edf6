#include "app/call.h"

#include <CLI/CLI.hpp>
#include <iostream>

#include "file/course_file.h"

namespace app {
namespace {

constexpr const char* about =
    "The window in which a course in counted whitework is drawn, planned and printed.\n"
    "Without FILE it begins with a small course. What was not saved is offered again after a crash.";
constexpr const char* end =
    "Keys: F1 in the window shows them all.\n\n"
    "Examples:\n  tellekant-desk frost.course.toml\n  tellekant-desk --measure frost.course.toml\n\n"
    "Exit: 0 fine; 2 the file or the call is wrong; 3 there is no screen, or something could not be written.";

}  // namespace

Call read_call(int count, const char* const* arguments) {
  Call call;
  CLI::App options(about, "tellekant-desk");
  std::string file;
  bool measure = false;
  options.add_option("FILE", file, "a course file");
  options.add_flag("--measure", measure, "measure the time of frames and edits with FILE, print a table, and end; needs no screen");
  options.set_version_flag("--version",
                           std::string("tellekant-desk " TELLEKANT_VERSION ", course file format ") + std::to_string(file::format_version));
  options.footer(end);
  try {
    options.parse(count, arguments);
    if (measure && file.empty()) throw CLI::RequiredError("--measure: FILE");
  } catch (const CLI::ParseError& error) {
    call.exit = options.exit(error, std::cout, std::cerr) == 0 ? 0 : 2;
  }
  call.job = measure ? Job::measure : Job::window;
  if (!file.empty()) call.file = file;
  return call;
}

}  // namespace app
