// The course parted into lessons again, looked at before it is taken.
#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "check/check.h"
#include "plan/plan.h"

namespace session {

struct SplitPreview {
  struct Row {
    std::vector<std::string> now, then;  ///< work of the lesson with this number, as the course file names it
    double minutes_now = 0, minutes_then = 0;
    bool locked = false;
    bool moves() const { return now != then; }
  };
  std::vector<Row> lessons;                    ///< as many as there are on either side
  std::vector<std::vector<std::string>> work;  ///< to be taken
  std::vector<check::Snag> snags;              ///< what the split itself is to say: that it cannot be done, and what would make it possible
};

/// `plan`: of the course as it is. Locked lessons keep their work. Takes as long as planning does. Trouble when it was stopped.
base::Result<SplitPreview> split_again(const course::Course& course, const plan::Plan& plan, std::stop_token stop = {});

}  // namespace session
