// What the panels of the course have in common: as high as the window, a title, whole numbers of the course to be typed.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"
#include "app/typed_field.h"

namespace app {

bool begin_tall_panel(const Desk& desk, const char* name, const char* title, ImVec2 window, float most) {
  ImGui::SetNextWindowPos({window.x / 2, window.y / 2}, ImGuiCond_Always, {0.5F, 0.5F});
  ImGui::SetNextWindowSize({std::min(window.x - 20, most * desk.scale), window.y - 20});
  ImGui::OpenPopup(name);
  if (!ImGui::BeginPopupModal(name, nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings))
    return false;
  ImGui::PushFont(desk.fonts.title);
  ImGui::TextUnformatted(desk.say(title).c_str());
  ImGui::PopFont();
  return true;
}

void course_number(Desk& desk, const char* label, const char* key, int now, const char* edit) {
  int n = now;
  ImGui::SetNextItemWidth(110 * desk.scale);
  if (whole_field(desk, fmt::format("{}##{}", desk.say(label), key).c_str(), n, 1, 10))
    desk.apply(session::change_course(key, std::to_string(n), edit));
}

}  // namespace app
