// tellekant-desk [FILE]
#include <cstdio>
#include <cstring>
#include <exception>

#include "app/window.h"

int main(int count, char** arguments) {
  if (count > 1 && std::strcmp(arguments[1], "--version") == 0) {
    std::puts("tellekant-desk " TELLEKANT_VERSION);
    return 0;
  }
  if (count > 2 || (count > 1 && arguments[1][0] == '-')) {
    std::fputs("tellekant-desk [FILE]: the window in which a course is looked at, planned and printed\nExample:\n  tellekant-desk frost.course.toml\n", stderr);
    return count > 1 && std::strcmp(arguments[1], "--help") == 0 ? 0 : 2;
  }
  try {
    return app::run_window(count > 1 ? std::optional<std::string>(arguments[1]) : std::nullopt);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "tellekant-desk: a mistake of the program itself: %s\n", error.what());
    return 3;
  }
}
