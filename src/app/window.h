// The real window: GLFW and OpenGL 3 round the frame.
#pragma once

#include <optional>
#include <string>

namespace app {

/// Opens the window, runs until it is closed; the exit code. `file`: a course to open, or none.
int run_window(const std::optional<std::string>& file);
/// Measures frames without a window, in one where there is a screen, and edits; prints a table; the exit code.
int run_measure(const std::string& file);

}  // namespace app
