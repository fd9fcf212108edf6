// tellekant new FILE
#include <fmt/format.h>

#include <cstdio>
#include <filesystem>

#include "assets/assets.h"
#include "base/whole_file.h"
#include "cli/interrupt.h"
#include "cli/options.h"

namespace cli {

int run_new(const Options& options) {
  const std::filesystem::path path = options.files[0];
  if (path == "-") {
    fmt::print(stderr, "tellekant: new needs the name of a file to make\n");
    return bad_call;
  }
  const Interrupt interrupt;
  const auto written = base::write_new(path, assets::table("new.course.toml"));
  if (written) return fine;
  fmt::print(stderr, "tellekant: {}\n", written.error().what);
  return not_written;
}

}  // namespace cli
