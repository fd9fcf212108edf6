// tellekant tidy FILE
#include <fmt/format.h>

#include <cstdio>

#include "base/whole_file.h"
#include "cli/interrupt.h"
#include "cli/open_course.h"
#include "cli/output.h"
#include "file/course_file.h"

namespace cli {

int run_tidy(const Options& options) {
  const std::string& name = options.files[0];
  if (options.write && name == "-") {
    fmt::print(stderr, "tellekant: --write needs a file to replace, not standard input\n");
    return bad_call;
  }
  const auto text = file::load(name);
  if (!text) {
    fmt::print(stderr, "tellekant: {}\n", text.error().what);
    return bad_call;
  }
  const file::Read read = file::read(*text);
  for (const base::Fault& fault : read.faults) std::fputs(base::render(shown_name(name), *text, fault).c_str(), stderr);
  if (!read.faults.empty()) return bad_call;
  const std::string tidied = file::tidy(*text);
  if (!options.write) return print_out(tidied) ? fine : not_written;
  if (tidied == *text) return fine;
  const Interrupt interrupt;
  const auto written = base::write_whole(std::filesystem::canonical(name), tidied);
  if (written) return fine;
  fmt::print(stderr, "tellekant: {}\n", written.error().what);
  return not_written;
}

}  // namespace cli
