// For --verbose: says on standard error how long a step took.
#pragma once

#include <fmt/format.h>

#include <chrono>
#include <cstdio>

#include "cli/options.h"

namespace cli {

class Stopwatch {
 public:
  Stopwatch(const Options& options, const char* step) : step_(options.verbose ? step : nullptr), from_(std::chrono::steady_clock::now()) {}
  Stopwatch(const Stopwatch&) = delete;
  Stopwatch& operator=(const Stopwatch&) = delete;
  ~Stopwatch() {
    if (!step_) return;
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - from_;
    fmt::print(stderr, "{:<8} {:8.1f} ms\n", step_, took.count());
  }

 private:
  const char* step_;
  std::chrono::steady_clock::time_point from_;
};

}  // namespace cli
