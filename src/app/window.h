// The real window: GLFW and OpenGL 3 round the frame.
#pragma once

#include <optional>
#include <string>

namespace app {

/// Opens the window, runs until it is closed; the exit code. `file`: a course to open, or none.
int run_window(const std::optional<std::string>& file);

}  // namespace app
