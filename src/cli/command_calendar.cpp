// tellekant calendar FILE
#include <fmt/format.h>

#include <chrono>
#include <cstdio>

#include "cli/open_course.h"
#include "cli/output.h"
#include "publish/publish.h"

namespace cli {

int run_calendar(const Options& options) {
  const auto course = open_course(options.files[0], options);
  if (!course) return bad_call;
  const auto checked = plan_and_check(*course, options);
  if (!checked) return not_written;
  const say::Voice voice{phrases(*course), course->choices.hand == course::Hand::left ? say::Hand::left : say::Hand::right, *course};
  const auto text = publish::calendar(voice, checked->plan, publish::stamp_of(std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now())));
  if (!text) {
    fmt::print(stderr, "tellekant: {}\n", text.error().what);
    return bad_call;
  }
  if (!print_out(*text)) return not_written;
  return check::stops(checked->snags) ? stopped : fine;
}

}  // namespace cli
