#include "check_course.h"

#include <algorithm>
#include <string>

#include "base/require.h"
#include "file/describe.h"
#include "file/course_file.h"

namespace fuzz {
namespace {

void check_faults(std::string_view bytes, const base::Faults& faults) {
  const auto lines = 1 + std::count(bytes.begin(), bytes.end(), '\n');
  base::TextPlace before;
  for (const base::Fault& fault : faults) {
    base::require(before <= fault.place, "faults come in order of place");
    base::require(fault.place.line <= lines, "a fault stands within the text");
    base::require((fault.place.line > 0) == (fault.place.column > 0), "a fault has a line and a column or neither");
    base::require(fault.length >= 1 && !fault.found.empty() && !fault.expected.empty(),
                  "a fault says what was found and what was expected");
    base::require(base::render("x", bytes, fault).back() == '\n', "a fault is shown in whole lines");
    before = fault.place;
  }
}

}  // namespace

void check_course(std::string_view bytes) {
  const file::Read read = file::read(bytes);
  check_faults(bytes, read.faults);
  const std::string tidied = file::tidy(bytes);
  if (!read.faults.empty()) return base::require(tidied == bytes, "a text with faults is left as it is");
  const file::Read again = file::read(tidied);
  base::require(again.faults.empty(), "the canonical form has no faults");
  base::require(describe::course(again.course) == describe::course(read.course), "the canonical form is the same course");
  base::require(file::tidy(tidied) == tidied, "the canonical form of a canonical form is itself");
}

}  // namespace fuzz
