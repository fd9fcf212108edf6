// What is picked, with every key of its kind to be typed or chosen; while drawing, what the next part will be. The keys come from the kind
// itself.
#include <fmt/format.h>

#include <algorithm>

#include "app/panels.h"
#include "app/teach.h"
#include "app/typed_field.h"
#include "file/edit.h"
#include "session/value_words.h"

namespace app {
namespace {

/// A key set to a value, or taken out.
using Change = std::function<void(const std::string& key, const std::optional<stitch::Value>& value)>;

std::string label_of(const stitch::KeySpec& spec) {
  std::string label(spec.name);
  std::replace(label.begin(), label.end(), '_', ' ');
  return fmt::format("{}##key {}", label, spec.name);
}

void word_field(const stitch::KeySpec& spec, const std::string& value, const Change& change) {
  if (!ImGui::BeginCombo(label_of(spec).c_str(), value.c_str())) return;
  for (const std::string_view word : spec.words)
    if (ImGui::Selectable(std::string(word).c_str(), word == value)) change(std::string(spec.name), std::string(word));
  ImGui::EndCombo();
}

/// Other parts, each to be chosen or left out; the last one stays.
void names_field(const Desk& desk, const stitch::KeySpec& spec, const std::vector<std::string>& names, const Change& change) {
  if (!ImGui::BeginCombo(label_of(spec).c_str(), session::in_words(names).c_str())) return;
  for (const course::Part& part : desk.course()->parts) {
    if (part.work.cut) continue;
    const bool has = std::find(names.begin(), names.end(), part.name) != names.end();
    if (!ImGui::Selectable(part.name.c_str(), has, ImGuiSelectableFlags_DontClosePopups) || (has && names.size() == 1)) continue;
    std::vector<std::string> next = names;
    has ? void(std::erase(next, part.name)) : next.push_back(part.name);
    change(std::string(spec.name), next);
  }
  ImGui::EndCombo();
}

/// Anything that is typed; left empty, a key that need not be there is taken out.
void typed_field(Desk& desk, const stitch::KeySpec& spec, const std::optional<stitch::Value>& value, const Change& change) {
  std::string typed = value ? session::in_words(*value) : std::string();
  if (!text_field(desk, label_of(spec).c_str(), typed)) return;
  const bool none = typed.find_first_not_of(' ') == std::string::npos;
  const auto meant = none ? std::nullopt : session::from_words(spec, typed);
  if (meant)
    change(std::string(spec.name), *meant);
  else if (none && !spec.required && !spec.fallback)
    change(std::string(spec.name), std::nullopt);
  else
    desk.message = desk.say("desk.value-wrong", {{"key", std::string(spec.name)}, {"value", typed}});
}

void field(Desk& desk, const stitch::KeySpec& spec, const std::optional<stitch::Value>& value, const Change& change) {
  const std::string key(spec.name);
  switch (spec.type) {
    case stitch::KeyType::word:
      return word_field(spec, std::get<std::string>(*value), change);
    case stitch::KeyType::parts:
      return names_field(desk, spec, std::get<std::vector<std::string>>(*value), change);
    case stitch::KeyType::flag: {
      bool on = std::get<bool>(*value);
      if (ImGui::Checkbox(label_of(spec).c_str(), &on)) change(key, on);
      return;
    }
    case stitch::KeyType::hole:
      if (value) {
        const auto hole = std::get<cloth::Hole>(*value);
        std::array xy{hole.x, hole.y};
        if (spec.required && hole_field(desk, label_of(spec).c_str(), xy))
          change(key, cloth::Hole{xy[0], xy[1]});
        if (spec.required) return;
      }
      return typed_field(desk, spec, value, change);
    case stitch::KeyType::whole: {
      if (!value) return typed_field(desk, spec, value, change);
      int n = std::get<int>(*value);
      if (!whole_field(desk, label_of(spec).c_str(), n, 1, 1)) return;
      if (n >= spec.least && n <= spec.most)
        change(key, n);
      else
        desk.message = desk.say("desk.value-wrong", {{"key", key}, {"value", std::to_string(n)}});
      return;
    }
    case stitch::KeyType::path:
    case stitch::KeyType::whole_or_word:
    case stitch::KeyType::holes:
    case stitch::KeyType::fillings:
    case stitch::KeyType::wholes:
      return typed_field(desk, spec, value, change);
  }
}

std::optional<stitch::Value> value_of(const stitch::Values& values, const stitch::KeySpec& spec) {
  const auto found = values.find(spec.name);
  return found == values.end() ? std::nullopt : std::optional(found->second);
}

void thread_field(Desk& desk, const std::string& now, const std::function<void(const std::string&)>& change) {
  if (!ImGui::BeginCombo(fmt::format("{}##thread", desk.say("desk.part-thread")).c_str(), now.c_str())) return;
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
  ImGui::PushID(number);  // what is typed belongs to this part
  const session::Seen still = desk.session.seen();  // an edit may put another course in its place
  const course::Part& part = still->course.parts[static_cast<std::size_t>(number)];
  title(desk, fmt::format("{} · {}", part.name, say::kind_name(desk.phrases, part.kind)));
  ImGui::PushItemWidth(ImGui::GetContentRegionAvail().x * 0.7F);
  std::string name = part.name;
  if (text_field(desk, fmt::format("{}##name", desk.say("desk.name")).c_str(), name) && !name.empty()) {
    desk.apply(session::rename_part(*desk.course(), number, name));
    if (desk.message.empty()) desk.picked = name;
  }
  thread_field(desk, part.thread, [&](const std::string& thread) {
    desk.apply(session::change_key(number, "thread", file::in_toml(thread), "change thread"));
  });
  const Change change = [&](const std::string& key, const std::optional<stitch::Value>& value) {
    desk.apply(value ? session::change_key(number, key, session::value_in_toml(*value), "change " + key)
                     : session::remove_key(number, key, "change " + key));
  };
  if (const stitch::Kind* kind = stitch::find_kind(part.kind))
    for (const stitch::KeySpec& spec : kind->keys) {
      const auto value = value_of(part.values, spec);
      if (!value && spec.type != stitch::KeyType::hole) continue;
      field(desk, spec, value, change);
      teach(desk, word_of_key(*kind, spec));
    }
  repeat_fields(desk, number);
  ImGui::PopItemWidth();
  if (ImGui::Button(desk.say("desk.copy").c_str())) copy_picked(desk);
  ImGui::SameLine();
  if (ImGui::Button(desk.say("desk.delete").c_str())) remove_picked(desk);
  ImGui::PopID();
}

void drawing_fields(Desk& desk) {
  title(desk, desk.say("desk.next-part"));
  ImGui::PushItemWidth(ImGui::GetContentRegionAvail().x * 0.7F);
  Drawing& drawing = desk.drawing;
  thread_field(desk, thread_for(desk), [&](const std::string& thread) { drawing.thread = thread; });
  if (const auto next = next_shape(desk, {}))
    for (const stitch::KeySpec& spec : next->kind->keys) {
      const bool by_hand = spec.type == stitch::KeyType::hole || spec.type == stitch::KeyType::holes ||
                           spec.type == stitch::KeyType::path || spec.type == stitch::KeyType::parts;
      if (by_hand) continue;
      field(desk, spec, value_of(next->values, spec),
            [&](const std::string& key, const std::optional<stitch::Value>& value) { drawing.chosen[key] = *value; });
      teach(desk, word_of_key(*next->kind, spec));
    }
  ImGui::PopItemWidth();
  ImGui::PushTextWrapPos(0);
  ImGui::TextDisabled("%s", how_to_draw(desk).c_str());
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
