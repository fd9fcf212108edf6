// tellekant plan FILE
#include <cstdio>
#include <fmt/format.h>
#include <iostream>

#include "cli/open_course.h"
#include "cli/stopwatch.h"
#include "publish/publish.h"

namespace cli {
namespace {

say::Hand hand_of(const Options& options, const course::Course& course) {
  if (options.hand) return *options.hand == "left" ? say::Hand::left : say::Hand::right;
  return course.choices.hand == course::Hand::left ? say::Hand::left : say::Hand::right;
}

}  // namespace

int run_plan(const Options& options) {
  const auto course = open_course(options.files[0], options);
  if (!course) return bad_call;
  const auto checked = plan_and_check(*course, options);
  if (!checked) return not_written;
  const Stopwatch watch(options, "print");
  std::ios::sync_with_stdio(false);
  publish::write_plan(std::cout, *course, checked->plan, checked->snags, {phrases(*course), hand_of(options, *course), *course});
  std::cout.flush();
  if (!std::cout) {
    fmt::print(stderr, "tellekant: cannot write the plan to standard output\n");
    return not_written;
  }
  return check::stops(checked->snags) ? stopped : fine;
}

}  // namespace cli
