#include "app/flow.h"

#include <imgui.h>

namespace app {
namespace {

float button_width(const std::string& label) { return ImGui::CalcTextSize(label.c_str(), nullptr, true).x + 2 * ImGui::GetStyle().FramePadding.x; }

}  // namespace

void beside_width(float width) {
  const float end = ImGui::GetItemRectMax().x, right = ImGui::GetWindowPos().x + ImGui::GetWindowContentRegionMax().x;
  if (end + ImGui::GetStyle().ItemSpacing.x + width <= right) ImGui::SameLine();
}

void beside(const std::string& label) { beside_width(button_width(label)); }

int rows_of(const std::vector<std::string>& labels, float width) {
  int rows = 1;
  float at = 0;
  for (const std::string& label : labels) {
    const float w = button_width(label);
    if (at > 0 && at + ImGui::GetStyle().ItemSpacing.x + w > width) ++rows, at = 0;
    at += (at > 0 ? ImGui::GetStyle().ItemSpacing.x : 0) + w;
  }
  return rows;
}

float height_of(int rows, int lines) {
  const ImGuiStyle& style = ImGui::GetStyle();
  return 2 * style.WindowPadding.y + static_cast<float>(rows) * ImGui::GetFrameHeightWithSpacing() + static_cast<float>(lines) * ImGui::GetTextLineHeightWithSpacing() - style.ItemSpacing.y + 2;
}

}  // namespace app
