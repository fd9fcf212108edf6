// tellekant-desk [FILE]
#include <cstdio>
#include <exception>

#include "app/call.h"
#include "app/window.h"

int main(int count, char** arguments) {
  try {
    const app::Call call = app::read_call(count, arguments);
    if (call.exit) return *call.exit;
    return call.job == app::Job::measure ? app::run_measure(*call.file) : app::run_window(call.file);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "tellekant-desk: a mistake of the program itself: %s\n", error.what());
    return 3;
  }
}
