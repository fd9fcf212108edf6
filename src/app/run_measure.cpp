// tellekant-desk --measure FILE
#include <fmt/format.h>

#include <filesystem>

#include "app/bare.h"
#include "app/glfw_window.h"
#include "app/measure.h"
#include "app/window.h"
#include "file/course_file.h"

namespace app {
namespace {

constexpr int wide = 1440, high = 900;

/// The course planned, or what is wrong with it said; then false.
bool show_course(Desk& desk, const std::string& text, const std::string& name) {
  desk.session.begin(text);
  desk.session.wait();
  for (const base::Fault& fault : desk.session.faults()) fmt::print(stderr, "{}", base::render(name, text, fault));
  return desk.plan() != nullptr && desk.session.faults().empty();
}

bool measure_in(Desk& desk, const base::Result<Fonts>& fonts, const Stage& stage) {
  if (!fonts) {
    fmt::print(stderr, "tellekant-desk: {}\n", fonts.error().what);
    return false;
  }
  desk.fonts = *fonts;
  set_style(desk.theme, desk.scale);
  fmt::print("{}\n", table_of(measure_frames(desk, stage, wide, high)));
  return true;
}

bool measure_in_window(Desk& desk) {
  GlfwWindow window;
  if (!window.open(wide, high)) {
    fmt::print("In a window: not measured, there is no screen with OpenGL 3.2 here\n\n");
    return true;
  }
  glfwSwapInterval(0);
  const auto* by = reinterpret_cast<const char*>(glGetString(GL_RENDERER));
  const Stage stage{fmt::format("in a window drawn by {}, wall clock", by ? by : "OpenGL"), Timed::wall, GlfwWindow::begin, [&] {
                      GlfwWindow::show(window.handle());
                      glFinish();
                    }};
  return measure_in(desk, load_fonts(1), stage);
}

}  // namespace

int run_measure(const std::string& file) {
  const auto text = file::load(file);
  if (!text) {
    fmt::print(stderr, "tellekant-desk: {}\n", text.error().what);
    return 2;
  }
  Desk desk(publish::phrases_in("en"), std::filesystem::temp_directory_path(), [] {});
  if (!show_course(desk, *text, file)) return 2;
  std::size_t stitches = 0;
  for (const course::Part& part : desk.course()->parts) stitches += part.work.stitches.size();
  fmt::print("{}: {} stitches, window of {} by {}\n\n", file, stitches, wide, high);
  {
    Bare bare(wide, high);
    if (!measure_in(desk, bare.fonts(1), {"without a window, processor time", Timed::processor, [] {}, [] {}})) return 3;
  }
  if (!measure_in_window(desk)) return 3;
  fmt::print("{}", table_of_edits(measure_edits(desk.session), stitches));
  return 0;
}

}  // namespace app
