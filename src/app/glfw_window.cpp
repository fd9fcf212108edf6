#include "app/glfw_window.h"

#include <backends/imgui_impl_glfw.h>
#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>

namespace app {

bool GlfwWindow::open(int width, int height) {
  if (glfwInit() == 0) return false;
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 2);
  glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
  glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);
  window_ = glfwCreateWindow(width, height, "Tellekant", nullptr, nullptr);
  if (!window_) return false;
  glfwSetWindowSizeLimits(window_, 1024, 700, GLFW_DONT_CARE, GLFW_DONT_CARE);
  glfwMakeContextCurrent(window_);
  glfwSwapInterval(1);
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;
  ImGui::GetIO().ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
  ImGui_ImplGlfw_InitForOpenGL(window_, true);
  ImGui_ImplOpenGL3_Init("#version 150");
  return true;
}

GlfwWindow::~GlfwWindow() {
  if (window_ && ImGui::GetCurrentContext()) {
    ImGui_ImplOpenGL3_Shutdown();
    ImGui_ImplGlfw_Shutdown();
    ImGui::DestroyContext();
  }
  if (window_) glfwDestroyWindow(window_);
  glfwTerminate();
}

float GlfwWindow::scale() const {
  float x = 1, y = 1;
  glfwGetWindowContentScale(window_, &x, &y);
  return x;
}

void GlfwWindow::begin() {
  ImGui_ImplOpenGL3_NewFrame();
  ImGui_ImplGlfw_NewFrame();
}

void GlfwWindow::show(GLFWwindow* window) {
  int width = 0, height = 0;
  glfwGetFramebufferSize(window, &width, &height);
  glViewport(0, 0, width, height);
  glClear(GL_COLOR_BUFFER_BIT);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  glfwSwapBuffers(window);
}

}  // namespace app
