// The pointer on the cloth: the mouse, or a hole that is moved with the arrow keys until the mouse moves again.
#include "app/sight.h"

namespace app {

cloth::Hole pointed_hole(Desk& desk, Area area) {
  const ImGuiIO& io = ImGui::GetIO();
  if (io.MouseDelta.x != 0 || io.MouseDelta.y != 0) desk.key_pointer.reset();
  return desk.key_pointer ? *desk.key_pointer : hole_at(desk, area, io.MousePos);
}

void move_pointer(Desk& desk, Area area, cloth::Hole by) {
  const cloth::Hole from = pointed_hole(desk, area);
  desk.key_pointer = from + cloth::Hole{mirrored(desk) ? -by.x : by.x, by.y};
}

bool pointer_pressed(const Desk& desk) {
  const bool key = ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Enter), false);
  return (ImGui::IsItemHovered() && ImGui::IsMouseClicked(ImGuiMouseButton_Left)) || (key && desk.key_pointer && !desk.drawing.pulling);
}

bool pointer_let_go(const Desk& desk) {
  if (desk.key_pointer) {
    const bool has_leg = desk.drawing.pulled || (desk.drawing.shape && !session::has_path(*desk.drawing.shape));
    return ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Enter), false) && desk.drawing.asked == desk.key_pointer && has_leg;
  }
  return !ImGui::IsMouseDown(ImGuiMouseButton_Left);
}

}  // namespace app
