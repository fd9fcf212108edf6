// What the window's program was called with.
#pragma once

#include <optional>
#include <string>

namespace app {

enum class Job { window, measure };

struct Call {
  Job job = Job::window;
  std::optional<std::string> file;
  std::optional<int> exit;  ///< nothing is left to do: help, version or a wrong call, said already; 0 or 2
};
/// Help and version go to standard output, what is wrong with the call to standard error.
[[nodiscard]] Call read_call(int count, const char* const* arguments);

}  // namespace app
