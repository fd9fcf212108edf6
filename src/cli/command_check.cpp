// tellekant check FILE...
#include <algorithm>

#include "cli/open_course.h"
#include "cli/output.h"

namespace cli {

int run_check(const Options& options) {
  int worst = fine;
  for (const std::string& file : options.files) {
    const auto course = open_course(file, options);
    if (!course) {
      worst = bad_call;
      continue;
    }
    const auto checked = plan_and_check(*course, options);
    if (!checked) return not_written;
    if (!print_out(snag_lines(file, *course, checked->snags))) return not_written;
    if (check::stops(checked->snags)) worst = std::max<int>(worst, stopped);
  }
  return worst;
}

}  // namespace cli
