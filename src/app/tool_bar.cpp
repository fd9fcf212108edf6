// What the mouse does on the cloth: picking, or drawing one of the kinds.
#include <fmt/format.h>

#include "app/flow.h"
#include "app/panels.h"
#include "app/teach.h"

namespace app {
namespace {

/// The choice of the kind is as wide as its longest name with the arrow behind it.
std::string room_for_kinds(const Desk& desk) {
  std::string longest;
  const auto width = [](const std::string& text) { return ImGui::CalcTextSize(text.c_str()).x; };
  for (const stitch::Kind* kind : stitch::kinds())
    if (const std::string name = say::kind_name(desk.phrases, kind->name); width(name) > width(longest)) longest = name;
  return longest + "MMM";
}

std::vector<std::string> labels_of(const Desk& desk) { return {desk.say("desk.pick"), desk.say("desk.draw"), room_for_kinds(desk), desk.say("desk.mistake.mark")}; }

bool tool(const Desk& desk, const std::string& label, bool chosen, const std::string& what_it_does) {
  const bool pressed = chosen ? strong_button(desk, label) : ImGui::Button(label.c_str());
  hint(what_it_does);
  return pressed;
}

void kind_choice(Desk& desk) {
  beside(room_for_kinds(desk));
  ImGui::SetNextItemWidth(ImGui::CalcTextSize(room_for_kinds(desk).c_str()).x + 2 * ImGui::GetStyle().FramePadding.x);
  const bool opened = ImGui::BeginCombo("##kind", say::kind_name(desk.phrases, desk.drawing.kind).c_str(), ImGuiComboFlags_HeightLargest);
  if (!opened) return teach(desk, "desk.kind." + desk.drawing.kind);
  int number = 0;
  for (const stitch::Kind* kind : stitch::kinds()) {
    const std::string name(kind->name);
    if (ImGui::Selectable(fmt::format("{}  {}", key_of_kind(number++), say::kind_name(desk.phrases, name)).c_str(), name == desk.drawing.kind)) choose_kind(desk, name);
    teach(desk, "desk.kind." + name);
  }
  ImGui::EndCombo();
}

}  // namespace

float tools_height(const Desk& desk, float width) {
  return height_of(rows_of(labels_of(desk), width - 2 * ImGui::GetStyle().WindowPadding.x), 0);
}

void tool_bar(Desk& desk, Area area) {
  begin_area("tools", area, paint(desk.theme.panel));
  if (tool(desk, desk.say("desk.pick"), desk.tool == Tool::pick, desk.say("desk.pick.hint"))) {
    finish_drawing(desk);
    desk.tool = Tool::pick;
  }
  beside(desk.say("desk.draw"));
  if (tool(desk, desk.say("desk.draw"), desk.tool == Tool::draw, how_to_draw(desk))) choose_kind(desk, desk.drawing.kind);
  kind_choice(desk);
  beside(desk.say("desk.mistake.mark"));
  if (tool(desk, desk.say("desk.mistake.mark"), desk.tool == Tool::mark, desk.say("desk.mistake.mark.how"))) begin_marking(desk);
  ImGui::End();
}

}  // namespace app
