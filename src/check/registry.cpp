// The rules, one line each.
#include "check/rules.h"

namespace check {

const std::vector<Rule>& rules() {
  static const std::vector<Rule> all{
      {"doubts", doubts},
      {"findings", findings},
      {"lies-over", lies_over},
      {"work-forgotten", work_forgotten},
      {"work-order", work_order},
      {"cut-out", cut_out},
      {"lesson-minutes", lesson_minutes},
      {"lesson-empty", lesson_empty},
      {"lesson-days", lesson_days},
      {"cloth-size", cloth_size},
      {"thread-parted", thread_parted},
      {"cutting", cutting},
      {"cutting-order", cutting_order},
  };
  return all;
}

}  // namespace check
