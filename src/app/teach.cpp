#include "app/teach.h"

#include <fmt/format.h>

#include <algorithm>

namespace app {

std::string word_of_key(const stitch::Kind& kind, const stitch::KeySpec& spec) {
  std::string key = fmt::format("desk.key.{}.{}", kind.name, spec.name);
  std::replace(key.begin(), key.end(), '_', '-');  // as phrases' keys are written
  return key;
}

void hint(const std::string& text) {
  constexpr float wide = 26;  // letters of a line, about half as wide as the type is high
  if (!ImGui::IsItemHovered() || ImGui::IsItemActive()) return;  // while something is typed the lines below must be seen
  ImGui::BeginTooltip();
  ImGui::PushTextWrapPos(wide * ImGui::GetFontSize());
  ImGui::TextUnformatted(text.c_str());
  ImGui::PopTextWrapPos();
  ImGui::EndTooltip();
}

void teach(const Desk& desk, std::string_view phrase) {
  if (desk.phrases.get().has(phrase)) hint(desk.say(phrase));
}

}  // namespace app
