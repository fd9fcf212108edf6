#include "app/bare.h"

namespace app {

Bare::Bare(float width, float height) {
  ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.DisplaySize = {width, height};
  io.DeltaTime = 1.0F / 60;
  io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
  constexpr int beyond_letters = 400;  // where the toolkit's own keys are numbered when there is no window to do it
  for (int k = 0; k < ImGuiKey_COUNT; ++k) io.KeyMap[k] = beyond_letters + k;
}

Bare::~Bare() { ImGui::DestroyContext(); }

base::Result<Fonts> Bare::fonts(float scale) {
  auto loaded = load_fonts(scale);
  if (!loaded) return loaded;
  unsigned char* pixels = nullptr;
  int w = 0, h = 0;
  ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&pixels, &w, &h);
  return loaded;
}

}  // namespace app
