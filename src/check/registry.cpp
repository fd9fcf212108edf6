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
      {"finish", finish},
      {"lesson-minutes", lesson_minutes},
      {"lesson-empty", lesson_empty},
      {"lesson-days", lesson_days},
      {"nothing-to-show", nothing_to_show},
      {"new-techniques", new_techniques},
      {"cloth-size", cloth_size},
      {"class-list", class_list},
      {"thread-parted", thread_parted},
      {"back-over-cut", back_over_cut},
      {"cutting", cutting},
      {"cutting-order", cutting_order},
      {"edge-order", edge_order},
      {"edge-cuts-off", edge_cuts_off},
      {"bars-order", bars_order},
  };
  return all;
}

}  // namespace check
