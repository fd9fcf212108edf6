#include "app/typed_field.h"

#include "app/panels.h"

namespace app {
namespace {

int grow(ImGuiInputTextCallbackData* data) {
  if (data->EventFlag != ImGuiInputTextFlags_CallbackResize) return 0;
  auto& text = *static_cast<std::string*>(data->UserData);
  text.resize(static_cast<std::size_t>(data->BufTextLen));
  data->Buf = text.data();
  return 0;
}

/// `draw` shows the field with what it is given and changes that as it is typed; it is kept with the desk until the field is left.
template <class Value, class Draw>
bool until_left(Desk& desk, const char* label, Value& value, Draw draw) {
  const ImGuiID id = ImGui::GetID((std::string(label) + "/typed").c_str());  // not the field's own, which asking for would keep alive
  Typing& typing = desk.typing;
  const bool its_own = typing.id == id && typing.frame + 1 >= ImGui::GetFrameCount() && std::holds_alternative<Value>(typing.value);
  Value now = its_own ? std::get<Value>(typing.value) : value;
  draw(now);
  if (ImGui::IsItemActive()) {
    typing = {id, ImGui::GetFrameCount(), std::move(now)};
    return false;
  }
  if (typing.id == id) typing = {};
  if (now == value) return false;
  value = std::move(now);
  return true;
}

}  // namespace

bool text_field(Desk& desk, const char* label, std::string& value, const std::string& hint) {
  return until_left(desk, label, value, [&](std::string& now) {
    ImGui::InputTextWithHint(label, hint.c_str(), now.data(), now.capacity() + 1, ImGuiInputTextFlags_CallbackResize, grow, &now);
  });
}

bool whole_field(Desk& desk, const char* label, int& value, int step, int big_step) {
  return until_left(desk, label, value, [&](int& now) { ImGui::InputInt(label, &now, step, big_step); });
}

bool speed_field(Desk& desk, const char* label, double& value) {
  return until_left(desk, label, value, [&](double& now) { ImGui::InputDouble(label, &now, 0.5, 1, "%.1f"); });
}

bool hole_field(Desk& desk, const char* label, std::array<int, 2>& value) {
  return until_left(desk, label, value, [&](std::array<int, 2>& now) { ImGui::InputInt2(label, now.data()); });
}

bool middle_field(Desk& desk, const char* label, std::array<float, 2>& value) {
  return until_left(desk, label, value, [&](std::array<float, 2>& now) { ImGui::InputFloat2(label, now.data(), "%.1f"); });
}

void leave_field() { ImGui::SetWindowFocus(nullptr); }

bool input_text(const char* id, std::string& text) {
  return ImGui::InputText(id, text.data(), text.capacity() + 1, ImGuiInputTextFlags_CallbackResize | ImGuiInputTextFlags_EnterReturnsTrue, grow, &text);
}

void input_lines(const char* id, std::string& text, int lines) {
  ImGui::InputTextMultiline(id, text.data(), text.capacity() + 1, {-1, static_cast<float>(lines) * ImGui::GetTextLineHeight()},
                            ImGuiInputTextFlags_CallbackResize, grow, &text);
}

}  // namespace app
