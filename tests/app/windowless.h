// The toolkit without a window: frames are made, keys and clicks go in, nothing is shown.
#pragma once

#include <doctest/doctest.h>

#include "app/sight.h"
#include "assets/assets.h"
#include "folder.h"
#include "pretend/make_pretend.h"

enum class Language { english, pretend };

inline words::Phrases phrases_in(Language language) {
  words::Phrases english = *words::Phrases::read(assets::table("phrases/en.toml"), "en.toml");
  return language == Language::english ? std::move(english) : pretend::make_pretend(english);
}

struct Windowless {
  ImVec2 size{1440, 900};
  TestFolder folder;
  words::Phrases phrases;
  std::unique_ptr<app::Desk> desk;

  explicit Windowless(const std::string& course_file, Language language = Language::english) : phrases(phrases_in(language)) {
    ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = {1440, 900};
    io.DeltaTime = 1.0F / 60;
    for (int k = 0; k < ImGuiKey_COUNT; ++k) io.KeyMap[k] = 400 + k;
    desk = std::make_unique<app::Desk>(phrases, folder.path, [] {});
    desk->fonts = *app::load_fonts(1);
    unsigned char* pixels = nullptr;
    int w = 0, h = 0;
    io.Fonts->GetTexDataAsAlpha8(&pixels, &w, &h);
    app::set_style(desk->theme, 1);
    desk->folder = folder.path;
    std::filesystem::copy_file(course_file, folder / "a.course.toml");
    REQUIRE(desk->session.open(folder / "a.course.toml"));
    settle();
  }
  ~Windowless() {
    desk.reset();
    ImGui::DestroyContext();
  }
  Windowless(const Windowless&) = delete;
  Windowless& operator=(const Windowless&) = delete;

  void frames(int n) {
    for (int i = 0; i < n; ++i) {
      ImGui::GetIO().DisplaySize = size;
      ImGui::NewFrame();
      app::frame(*desk, size.x, size.y, 1.0 / 60);
      ImGui::Render();
    }
  }
  void rescale(float scale) {
    desk->scale = scale;
    desk->fonts = *app::load_fonts(scale);
    unsigned char* pixels = nullptr;
    int w = 0, h = 0;
    ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&pixels, &w, &h);
    app::set_style(desk->theme, scale);
  }
  void settle() {
    desk->session.wait();
    frames(3);
  }
  void key(int code, bool control = false) {
    ImGuiIO& io = ImGui::GetIO();
    io.KeyCtrl = control;
    io.KeysDown[code] = true;
    frames(1);
    io.KeysDown[code] = false;
    io.KeyCtrl = false;
    settle();
  }
  void mapped(ImGuiKey which) { key(400 + which); }
  /// Press at one point, go to another in steps, let go.
  void drag(ImVec2 from, ImVec2 to, int button = 0) {
    ImGuiIO& io = ImGui::GetIO();
    io.MousePos = from;
    frames(2);
    io.MouseDown[button] = true;
    frames(2);
    for (int i = 1; i <= 8; ++i) {
      io.MousePos = {from.x + (to.x - from.x) * static_cast<float>(i) / 8, from.y + (to.y - from.y) * static_cast<float>(i) / 8};
      frames(1);
    }
    frames(2);
    io.MouseDown[button] = false;
    frames(1);
    settle();
  }
  /// The pixel of a hole in the cloth view of the window.
  ImVec2 at(cloth::Hole hole) const { return app::pixel_of(*desk, app::cloth_area(*desk, size.x, size.y), hole); }
  void click(float x, float y, int button = 0) {
    ImGuiIO& io = ImGui::GetIO();
    io.MousePos = {x, y};
    frames(2);
    io.MouseDown[button] = true;
    frames(1);
    io.MouseDown[button] = false;
    settle();
  }
};
