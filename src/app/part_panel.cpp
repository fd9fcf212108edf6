// What is picked, with every key of its kind to be typed or chosen; while drawing, what the next part will be. The keys come from the kind
// itself.
#include <fmt/format.h>

#include "app/panels.h"
#include "app/teach.h"
#include "file/edit.h"

namespace app {
namespace {

using Change = std::function<void(const std::string& key, const stitch::Value& value)>;

void word_field(const stitch::KeySpec& spec, const std::string& value, const Change& change) {
  if (!ImGui::BeginCombo(fmt::format("{}##key", spec.name).c_str(), value.c_str())) return;
  for (const std::string_view word : spec.words)
    if (ImGui::Selectable(std::string(word).c_str(), word == value)) change(std::string(spec.name), std::string(word));
  ImGui::EndCombo();
}

void field(const stitch::KeySpec& spec, const stitch::Value& value, const Change& change) {
  const std::string id = fmt::format("{}##key", spec.name), key(spec.name);
  constexpr ImGuiInputTextFlags entered = ImGuiInputTextFlags_EnterReturnsTrue;
  if (const auto* hole = std::get_if<cloth::Hole>(&value)) {
    int xy[2] = {hole->x, hole->y};
    if (ImGui::InputInt2(id.c_str(), xy, entered)) change(key, cloth::Hole{xy[0], xy[1]});
  } else if (const auto* number = std::get_if<int>(&value)) {
    int n = *number;
    if (ImGui::InputInt(id.c_str(), &n, 1, 1, entered) && n >= spec.least && n <= spec.most) change(key, n);
  } else if (const auto* flag = std::get_if<bool>(&value)) {
    bool on = *flag;
    if (ImGui::Checkbox(id.c_str(), &on)) change(key, on);
  } else if (const auto* text = std::get_if<std::string>(&value)) {
    if (!spec.words.empty()) return word_field(spec, *text, change);
    std::string typed = *text;
    if (input_text(id.c_str(), typed)) change(key, typed);
  }
}

void thread_field(Desk& desk, const std::string& now, const std::function<void(const std::string&)>& change) {
  if (!ImGui::BeginCombo(fmt::format("{}##thread", desk.say("desk.thread")).c_str(), now.c_str())) return;
  for (const course::Thread& thread : desk.course()->threads)
    if (ImGui::Selectable(thread.name.c_str(), thread.name == now)) change(thread.name);
  ImGui::EndCombo();
}

void title(const Desk& desk, const std::string& text) {
  ImGui::PushFont(desk.fonts.bold);
  ImGui::TextUnformatted(text.c_str());
  ImGui::PopFont();
}

void picked_fields(Desk& desk, int number) {
  const course::Part& part = desk.course()->parts[static_cast<std::size_t>(number)];
  title(desk, fmt::format("{} · {}", part.name, part.kind));
  ImGui::PushItemWidth(ImGui::GetContentRegionAvail().x * 0.7F);
  std::string name = part.name;
  if (input_text(fmt::format("{}##name", desk.say("desk.name")).c_str(), name) && !name.empty()) {
    desk.apply(session::rename_part(*desk.course(), number, name));
    if (desk.message.empty()) desk.picked = name;
  }
  thread_field(desk, part.thread, [&](const std::string& thread) {
    desk.apply(session::change_key(number, "thread", file::in_toml(thread), "change thread"));
  });
  if (const stitch::Kind* kind = stitch::find_kind(part.kind))
    for (const stitch::KeySpec& spec : kind->keys)
      if (const auto found = part.values.find(spec.name); found != part.values.end()) {
        field(spec, found->second, [&](const std::string& key, const stitch::Value& value) {
          desk.apply(session::change_key(number, key, session::value_in_toml(value), "change " + key));
        });
        teach(desk, word_of_key(*kind, spec));
      }
  repeat_fields(desk, number);
  ImGui::PopItemWidth();
  if (ImGui::Button(desk.say("desk.copy").c_str())) copy_picked(desk);
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.delete").c_str())) remove_picked(desk);
}

void drawing_fields(Desk& desk) {
  title(desk, desk.say("desk.next-part"));
  ImGui::PushItemWidth(ImGui::GetContentRegionAvail().x * 0.7F);
  Drawing& drawing = desk.drawing;
  thread_field(desk, thread_for(desk), [&](const std::string& thread) { drawing.thread = thread; });
  if (const stitch::Kind* kind = stitch::find_kind(drawing.kind))
    for (const stitch::KeySpec& spec : kind->keys) {
      if (spec.type == stitch::KeyType::hole || spec.type == stitch::KeyType::path || !spec.fallback) continue;
      const auto found = drawing.chosen.find(spec.name);
      field(spec, found == drawing.chosen.end() ? *spec.fallback : found->second,
            [&](const std::string& key, const stitch::Value& value) { drawing.chosen[key] = value; });
      teach(desk, word_of_key(*kind, spec));
    }
  ImGui::PopItemWidth();
  ImGui::PushTextWrapPos(0);
  ImGui::TextDisabled("%s", desk.say("desk.how-to-draw").c_str());
  ImGui::PopTextWrapPos();
}

}  // namespace

void part_panel(Desk& desk) {
  if (!desk.course()) return;
  const int part = picked_part(desk);
  if (desk.tool == Tool::draw && !desk.drawing.shape)
    drawing_fields(desk);
  else if (part >= 0)
    picked_fields(desk, part);
  else
    return;
  ImGui::Separator();
}

}  // namespace app
