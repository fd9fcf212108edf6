// tellekant supplies FILE
#include <cstdio>

#include "cli/open_course.h"
#include "cli/output.h"
#include "publish/publish.h"

namespace cli {

int run_supplies(const Options& options) {
  const auto course = open_course(options.files[0], options);
  if (!course) return bad_call;
  const auto checked = plan_and_check(*course, options);
  if (!checked) return not_written;
  const say::Voice voice{phrases(*course), say::Hand::right, *course};
  const bool csv = options.list_form == "csv";
  if (csv && options.stage_pieces) {
    std::fputs("tellekant: --stage-pieces is text: leave --as csv out\n", stderr);
    return bad_call;
  }
  const std::string text = options.stage_pieces ? publish::stage_text(voice, checked->plan)
                           : csv                ? publish::supplies_csv(voice, checked->plan)
                                                : publish::supplies_text(voice, checked->plan);
  if (!print_out(text)) return not_written;
  return check::stops(checked->snags) ? stopped : fine;
}

}  // namespace cli
