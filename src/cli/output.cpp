#include "cli/output.h"

#include <fmt/format.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace cli {

bool print_out(std::string_view bytes) {
  if (std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size() && std::fflush(stdout) == 0) return true;
  fmt::print(stderr, "tellekant: cannot write to standard output: {}\n", std::strerror(errno));
  return false;
}

}  // namespace cli
