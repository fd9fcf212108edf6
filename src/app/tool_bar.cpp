// What the mouse does on the cloth: picking, or drawing one of the kinds.
#include <utility>

#include "app/flow.h"
#include "app/panels.h"

namespace app {
namespace {

/// The tools: picking, then every kind that can be drawn.
struct ToolChoice {
  std::string label, hint, kind;  ///< kind: empty for picking
};
/// What the craft's word means, and how it is drawn.
std::string hint_of(const Desk& desk, std::string_view kind) {
  const std::string key = "desk.kind." + std::string(kind);
  return desk.phrases.has(key) ? desk.say(key) + "\n" + desk.say("desk.draw.hint") : desk.say("desk.draw.hint");
}

std::vector<ToolChoice> tools_of(const Desk& desk) {
  std::vector<ToolChoice> tools{{desk.say("desk.pick"), desk.say("desk.pick.hint"), {}}};
  for (const stitch::Kind* kind : stitch::kinds())
    if (session::begin_shape(kind->name, {})) tools.push_back({desk.say("desk.draw-kind", {{"kind", std::string(kind->name)}}), hint_of(desk, kind->name), std::string(kind->name)});
  return tools;
}

void choose_tool(Desk& desk, const ToolChoice& tool) {
  finish_drawing(desk);
  desk.tool = tool.kind.empty() ? Tool::pick : Tool::draw;
  if (tool.kind.empty()) return;
  if (desk.drawing.kind != tool.kind) desk.drawing.chosen.clear();
  desk.drawing.kind = tool.kind;
  desk.picked.clear();
}

}  // namespace

float tools_height(const Desk& desk, float width) {
  std::vector<std::string> labels;
  for (const ToolChoice& tool : tools_of(desk)) labels.push_back(tool.label);
  return height_of(rows_of(labels, width - 2 * ImGui::GetStyle().WindowPadding.x), 0);
}

void tool_bar(Desk& desk, Area area) {
  begin_area("tools", area, paint(desk.theme.panel));
  bool first = true;
  for (const ToolChoice& tool : tools_of(desk)) {
    if (!std::exchange(first, false)) beside(tool.label);
    const bool chosen = tool.kind.empty() ? desk.tool == Tool::pick : desk.tool == Tool::draw && desk.drawing.kind == tool.kind;
    const bool pressed = chosen ? strong_button(desk, tool.label) : ImGui::Button(tool.label.c_str());
    if (ImGui::IsItemHovered()) ImGui::SetTooltip("%s", tool.hint.c_str());
    if (pressed) choose_tool(desk, tool);
  }
  ImGui::End();
}

}  // namespace app
