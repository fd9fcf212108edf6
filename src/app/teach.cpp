#include "app/teach.h"

#include <fmt/format.h>

#include <algorithm>

namespace app {

std::string word_of_key(const stitch::Kind& kind, const stitch::KeySpec& spec) {
  std::string key = fmt::format("desk.key.{}.{}", kind.name, spec.name);
  std::replace(key.begin(), key.end(), '_', '-');  // as phrases' keys are written
  return key;
}

void teach(const Desk& desk, std::string_view phrase) {
  constexpr float wide = 26;  // letters of a line, about half as wide as the type is high
  if (!ImGui::IsItemHovered() || !desk.phrases.has(phrase)) return;
  ImGui::BeginTooltip();
  ImGui::PushTextWrapPos(wide * ImGui::GetFontSize());
  ImGui::TextUnformatted(desk.say(phrase).c_str());
  ImGui::PopTextWrapPos();
  ImGui::EndTooltip();
}

}  // namespace app
