// How pages are to be written: hand, paper, size of type, kinds of file.
#include <algorithm>

#include "app/flow.h"
#include "app/panels.h"
#include "file/edit.h"

namespace app {
namespace {

bool one_of(const Desk& desk, const char* id, float wide, int& at, std::initializer_list<const char*> keys) {
  const char* const* key = keys.begin();
  ImGui::SetNextItemWidth(wide);
  bool changed = false;
  if (ImGui::BeginCombo(id, desk.say(key[at]).c_str())) {
    for (int i = 0; i < static_cast<int>(keys.size()); ++i)
      if (ImGui::Selectable(desk.say(key[i]).c_str(), i == at)) at = i, changed = true;
    ImGui::EndCombo();
  }
  return changed;
}

constexpr std::pair<publish::Form, const char*> forms[] = {{publish::Form::png, "desk.form.png"}, {publish::Form::pdf, "desk.form.pdf"}, {publish::Form::svg, "desk.form.svg"}, {publish::Form::web, "desk.form.web"}, {publish::Form::stills, "desk.form.stills"}, {publish::Form::packet, "desk.form.packet"}};

bool chosen(const PrintChoice& print, publish::Form form) {
  return std::find(print.forms.begin(), print.forms.end(), form) != print.forms.end();
}

std::string names_of_chosen(const Desk& desk) {
  std::string names;
  for (const auto& [form, key] : forms)
    if (chosen(desk.print, form))
      names = names.empty() ? desk.say(key) : desk.say("list.comma", {{"first", names}, {"second", desk.say(key)}});
  return names;
}

/// Several may be chosen, one at the least.
void some_of(Desk& desk, float wide) {
  PrintChoice& print = desk.print;
  ImGui::SetNextItemWidth(wide);
  if (!ImGui::BeginCombo("##forms", names_of_chosen(desk).c_str(), ImGuiComboFlags_HeightLargest)) return;
  for (const auto& [form, key] : forms) {
    bool on = chosen(print, form);
    if (!ImGui::Checkbox(desk.say(key).c_str(), &on)) continue;
    if (on)
      print.forms.push_back(form);
    else if (print.forms.size() > 1)
      std::erase(print.forms, form);
  }
  ImGui::EndCombo();
}

/// What only some forms ask.
void form_choices(Desk& desk, float wide) {
  PrintChoice& print = desk.print;
  const bool packet = chosen(print, publish::Form::packet);
  int sheets = static_cast<int>(print.sheets), as = static_cast<int>(print.packet), ground = static_cast<int>(print.ground);
  const auto ask = [&](const char* id, int& at, std::initializer_list<const char*> keys) {
    beside_width(wide);
    one_of(desk, id, wide, at, keys);
  };
  if (packet || chosen(print, publish::Form::pdf)) ask("##sheets", sheets, {"desk.sheets.single", "desk.sheets.fold", "desk.sheets.booklet"});
  if (packet || chosen(print, publish::Form::stills)) ask("##ground", ground, {"desk.ground.white", "desk.ground.clear"});
  if (packet) ask("##packet", as, {"desk.packet.folder", "desk.packet.zip"});
  print.sheets = static_cast<publish::Sheets>(sheets);
  print.ground = static_cast<paint::Ground>(ground);
  print.packet = static_cast<publish::Packet>(as);
}

/// Of the course: all that is written for the class.
void course_language(Desk& desk, float wide) {
  const std::string now = desk.course()->choices.language;
  ImGui::SetNextItemWidth(wide);
  if (!ImGui::BeginCombo("##language", publish::phrases_in(now).say("language.name").c_str())) return;
  for (const std::string_view language : publish::languages())
    if (ImGui::Selectable(publish::phrases_in(language).say("language.name").c_str(), language == now) && language != now)
      desk.apply(session::change_course("language", file::in_toml(std::string(language)), "change language"));
  ImGui::EndCombo();
}

}  // namespace

bool page_choices(Desk& desk) {
  PrintChoice& print = desk.print;
  const float wide = 150 * desk.scale;
  int hand = static_cast<int>(print.hand), paper = static_cast<int>(print.paper);
  bool changed = one_of(desk, "##hand", wide, hand, {"desk.hand.right", "desk.hand.left", "desk.hand.both"});
  beside_width(wide);
  changed = one_of(desk, "##paper", wide, paper, {"desk.paper.a4", "desk.paper.letter"}) || changed;
  print.hand = static_cast<course::Hand>(hand);
  print.paper = static_cast<course::Paper>(paper);
  beside_width(ImGui::CalcTextSize(desk.say("desk.large-print").c_str()).x + 50 * desk.scale);
  changed = ImGui::Checkbox(desk.say("desk.large-print").c_str(), &print.large) || changed;
  bool black = print.ink == publish::Ink::black;
  beside_width(ImGui::CalcTextSize(desk.say("desk.black-and-white").c_str()).x + 50 * desk.scale);
  changed = ImGui::Checkbox(desk.say("desk.black-and-white").c_str(), &black) || changed;
  print.ink = black ? publish::Ink::black : publish::Ink::colours;
  beside_width(wide);
  course_language(desk, wide);
  beside_width(wide);
  ImGui::SetNextItemWidth(90 * desk.scale);
  if (ImGui::InputInt("dpi", &print.dpi, 0)) print.dpi = std::clamp(print.dpi, 72, 1200);
  beside_width(1.5F * wide);
  some_of(desk, 1.5F * wide);
  form_choices(desk, 1.5F * wide);
  return changed;
}

}  // namespace app
