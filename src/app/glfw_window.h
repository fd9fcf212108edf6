// GLFW and OpenGL 3 with the toolkit on top, opened and let go of in the right order.
#pragma once

#include <GLFW/glfw3.h>

namespace app {

class GlfwWindow {
 public:
  GlfwWindow() = default;
  ~GlfwWindow();
  GlfwWindow(const GlfwWindow&) = delete;
  GlfwWindow& operator=(const GlfwWindow&) = delete;
  /// False where there is no screen or no OpenGL 3.2.
  [[nodiscard]] bool open(int width, int height);
  GLFWwindow* handle() const { return window_; }
  /// Of the screen: 1 is 96 dots an inch.
  float scale() const;
  /// Before the toolkit's new frame.
  static void begin();
  /// After its Render: what was listed is drawn and brought to the screen.
  static void show(GLFWwindow* window);

 private:
  GLFWwindow* window_ = nullptr;
};

}  // namespace app
