#include "app/window.h"

#include <backends/imgui_impl_opengl3.h>
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <utility>

#include "app/glfw_window.h"
#include "app/panels.h"
#include "app/settings.h"
#include "assets/assets.h"

namespace app {
namespace {

std::filesystem::path state_folder() {
  const char* state = std::getenv("XDG_STATE_HOME");
  const char* home = std::getenv("HOME");
  const std::filesystem::path base = state && *state ? std::filesystem::path(state) : std::filesystem::path(home ? home : ".") / ".local/state";
  std::error_code ignored;
  std::filesystem::create_directories(base / "tellekant", ignored);
  return base / "tellekant";
}

void* make_texture(const paint::Pixels& pixels) {
  GLuint texture = 0;
  glGenTextures(1, &texture);
  glBindTexture(GL_TEXTURE_2D, texture);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
  std::vector<std::uint8_t> rgb;
  if (pixels.grey)
    for (const std::uint8_t v : pixels.bytes) rgb.insert(rgb.end(), {v, v, v});
  const std::vector<std::uint8_t>& bytes = pixels.grey ? rgb : pixels.bytes;
  glTexImage2D(GL_TEXTURE_2D, 0, GL_RGB, pixels.width, pixels.height, 0, GL_RGB, GL_UNSIGNED_BYTE, bytes.data());
  return reinterpret_cast<void*>(static_cast<std::uintptr_t>(texture));
}

void drop_texture(void* texture) {
  const auto name = static_cast<GLuint>(reinterpret_cast<std::uintptr_t>(texture));
  glDeleteTextures(1, &name);
}

void draw(Desk& desk, GLFWwindow* window, double seconds) {
  GlfwWindow::begin();
  ImGui::NewFrame();
  frame(desk, ImGui::GetIO().DisplaySize.x, ImGui::GetIO().DisplaySize.y, seconds);
  ImGui::Render();
  GlfwWindow::show(window);
}

/// Hands the folder to the desktop's own viewer; nothing happens where there is none.
void show_folder(const std::filesystem::path& folder) {
  const pid_t child = fork();
  if (child != 0) {
    if (child > 0) waitpid(child, nullptr, 0);
    return;
  }
  if (fork() == 0) execlp("xdg-open", "xdg-open", folder.c_str(), nullptr);  // a grandchild, so that nobody has to wait for it
  _exit(0);
}

void open_dropped(GLFWwindow* window, int n, const char** paths) {
  auto& desk = *static_cast<Desk*>(glfwGetWindowUserPointer(window));
  if (n < 1) return;
  if (!desk.session.saved()) {
    desk.message = desk.say("desk.save-first");
    return;
  }
  open_course(desk, paths[0]);
}

/// Fonts and controls at the scale that was asked for.
void scale_now(Desk& desk) {
  if (desk.wanted_scale <= 0 || desk.wanted_scale == desk.scale) return;
  auto fonts = load_fonts(desk.wanted_scale);
  if (!fonts) return desk.report(tl::make_unexpected(fonts.error()));
  desk.scale = std::exchange(desk.wanted_scale, 0);
  desk.fonts = *fonts;
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
  set_style(desk.theme, desk.scale);
}

void run(Desk& desk, GLFWwindow* window) {
  constexpr double keep_every = 3, rest = 0.25;  // seconds
  double before = glfwGetTime(), kept = before;
  int settle = 3;  // frames drawn after each event, so that what moves comes to rest
  while (!desk.quit) {
    desk.walk.playing || settle-- > 0 ? glfwPollEvents() : glfwWaitEventsTimeout(rest);
    const double now = glfwGetTime();
    if (now - before > rest / 2) settle = 3;
    scale_now(desk);
    draw(desk, window, now - before);
    before = now;
    if (now - kept > keep_every) {
      desk.report(desk.session.keep());
      kept = now;
    }
    if (glfwWindowShouldClose(window) != 0) {
      glfwSetWindowShouldClose(window, GLFW_FALSE);
      desk.saved_or_ask();
    }
  }
}

}  // namespace

int run_window(const std::optional<std::string>& file) {
  GlfwWindow window;
  if (!window.open(1440, 900)) {
    fmt::print(stderr, "tellekant-desk: no window can be opened here: is there a screen, and OpenGL 3.2?\n");
    return 3;
  }
  Desk desk(publish::phrases_in("en"), state_folder(), [] { glfwPostEmptyEvent(); });
  const std::filesystem::path set = state_folder() / "settings";
  Settings settings = read_settings(set);
  desk.speak(settings.language);
  desk.scale = std::clamp(window.scale() * settings.scale, least_scale, most_scale);
  auto fonts = load_fonts(desk.scale);
  if (!fonts) {
    fmt::print(stderr, "tellekant-desk: {}\n", fonts.error().what);
    return 3;
  }
  desk.fonts = *fonts;
  desk.set_light(settings.light);
  desk.recent = settings.recent;
  std::vector<std::string_view> courses;
  for (const std::string_view path : assets::samples()) courses.push_back(assets::table(path));
  desk.samples = samples(courses);
  desk.samples.push_back({"", std::string(assets::table("new.course.toml"))});
  desk.textures = {make_texture, drop_texture};
  desk.show_folder = show_folder;
  desk.folder = std::filesystem::current_path();
  glfwSetWindowUserPointer(window.handle(), &desk);
  glfwSetDropCallback(window.handle(), open_dropped);
  if (file) open_course(desk, *file);
  else desk.session.begin(std::string(assets::table("new.course.toml"))), desk.asking = Asking::begin;
  run(desk, window.handle());
  if (auto kept = write_settings(set, {desk.light, desk.language, desk.scale / window.scale(), desk.recent}); !kept) fmt::print(stderr, "tellekant-desk: {}\n", kept.error().what);
  if (desk.session.saved()) desk.session.leave_unsaved_work();
  return 0;
}

}  // namespace app
