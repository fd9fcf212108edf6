// Colours and type of the window, light and dark. Text keeps at least 4.5 to 1 on its ground, lines that carry meaning 3 to 1 (WCAG 2.2).
#pragma once

#include <imgui.h>

#include "base/result.h"
#include "picture/chart.h"

namespace app {

enum class Light { light, dark };

struct Theme {
  list::Colour desk, panel, ink, quiet, line, deep, on_deep, accent, accent_ground, hover;
  picture::ChartColours chart;
};
Theme theme(Light light);
ImU32 paint(list::Colour colour);
ImVec4 paint4(list::Colour colour);

struct Fonts {
  ImFont* text = nullptr;
  ImFont* bold = nullptr;
  ImFont* small = nullptr;
  ImFont* title = nullptr;
};
/// Loads the fonts at the interface scale (1 = 100 %); the context's atlas is made anew. Trouble names the package that is missing.
base::Result<Fonts> load_fonts(float scale);
/// Spacing, rounding and colours of all controls.
void set_style(const Theme& theme, float scale);

}  // namespace app
