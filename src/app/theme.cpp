#include "app/theme.h"

#include <filesystem>

namespace app {
namespace {

constexpr list::Colour rgb(unsigned v) {
  return {static_cast<std::uint8_t>(v >> 16), static_cast<std::uint8_t>(v >> 8 & 0xFF), static_cast<std::uint8_t>(v & 0xFF)};
}

constexpr const char* font_folder = "/usr/share/fonts/opentype/inter/";

ImFont* font(const char* file, float size) {
  static const ImWchar letters[] = {0x20, 0x24F, 0x2010, 0x2026, 0x2190, 0x2193, 0x25A0, 0x25FF, 0};
  const std::filesystem::path path = std::filesystem::path(font_folder) / file;
  if (!std::filesystem::exists(path)) return nullptr;
  return ImGui::GetIO().Fonts->AddFontFromFileTTF(path.c_str(), size, nullptr, letters);
}

}  // namespace

Theme theme(Light light) {
  if (light == Light::light)
    return {rgb(0xF4F6FA), rgb(0xFFFFFF), rgb(0x16233A), rgb(0x55627A), rgb(0xDCE2EB), rgb(0x1E3A6B), rgb(0xFFFFFF), rgb(0xB84A1A), rgb(0xFCEFE8),
            rgb(0xE8EDF5), {rgb(0xFFFFFF), rgb(0xE6EAF1), rgb(0xC9D2DF), rgb(0x1E3A6B), rgb(0x7F93B0), rgb(0xC3CEDD), rgb(0x16233A), rgb(0xC04E1C), rgb(0xA9B6CB), rgb(0xFFFFFF)}};
  return {rgb(0x10161F), rgb(0x18212D), rgb(0xE8EDF5), rgb(0xA3B0C4), rgb(0x2C394B), rgb(0x9DBCF2), rgb(0x10161F), rgb(0xF2905F), rgb(0x3A2419),
          rgb(0x243144), {rgb(0x18212D), rgb(0x222D3C), rgb(0x33425A), rgb(0x9DBCF2), rgb(0x5E7596), rgb(0x3A4A62), rgb(0xE8EDF5), rgb(0xF2905F), rgb(0x05080D), rgb(0x46566F)}};
}

ImU32 paint(list::Colour c) { return IM_COL32(c.r, c.g, c.b, 255); }
ImVec4 paint4(list::Colour c) { return ImGui::ColorConvertU32ToFloat4(paint(c)); }

base::Result<Fonts> load_fonts(float scale) {
  ImGui::GetIO().Fonts->Clear();
  Fonts fonts{font("Inter-Regular.otf", 16 * scale), font("Inter-SemiBold.otf", 16 * scale), font("Inter-Regular.otf", 14 * scale), font("Inter-Bold.otf", 20 * scale)};
  if (fonts.text && fonts.bold && fonts.small && fonts.title) return fonts;
  return base::trouble(base::TroubleKind::input, "the letters of the window are missing: install the Debian package fonts-inter");
}

void set_style(const Theme& t, float scale) {
  ImGuiStyle style;
  style.WindowRounding = style.FrameRounding = style.PopupRounding = 6;
  style.GrabRounding = 8;
  style.WindowPadding = {16, 14};
  style.FramePadding = {10, 6};
  style.ItemSpacing = {10, 8};
  style.WindowBorderSize = 1;
  style.ScrollbarSize = 10;
  style.ScaleAllSizes(scale);
  const auto set = [&](ImGuiCol at, list::Colour c) { style.Colors[at] = paint4(c); };
  for (const ImGuiCol at : {ImGuiCol_WindowBg, ImGuiCol_PopupBg, ImGuiCol_MenuBarBg, ImGuiCol_ChildBg, ImGuiCol_ScrollbarBg}) set(at, t.panel);
  for (const ImGuiCol at : {ImGuiCol_Border, ImGuiCol_Separator, ImGuiCol_ScrollbarGrab, ImGuiCol_TableBorderStrong, ImGuiCol_TableBorderLight}) set(at, t.line);
  for (const ImGuiCol at : {ImGuiCol_Button, ImGuiCol_FrameBg, ImGuiCol_Header, ImGuiCol_TableHeaderBg}) set(at, t.hover);
  for (const ImGuiCol at : {ImGuiCol_ButtonHovered, ImGuiCol_FrameBgHovered, ImGuiCol_HeaderHovered, ImGuiCol_ButtonActive, ImGuiCol_HeaderActive, ImGuiCol_FrameBgActive})
    set(at, t.line);
  set(ImGuiCol_Text, t.ink);
  set(ImGuiCol_TextDisabled, t.quiet);
  set(ImGuiCol_SliderGrab, t.deep);
  set(ImGuiCol_SliderGrabActive, t.deep);
  set(ImGuiCol_CheckMark, t.deep);
  set(ImGuiCol_NavHighlight, t.deep);
  set(ImGuiCol_TitleBgActive, t.panel);
  set(ImGuiCol_TitleBg, t.panel);
  style.Colors[ImGuiCol_ModalWindowDimBg] = {0, 0, 0, 0.35F};
  ImGui::GetStyle() = style;
}

}  // namespace app
